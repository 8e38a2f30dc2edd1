import { frozen } from "../../frozen";
import type { Messages } from "./messages";
import type { PageMessages, PageWords } from "./page-messages";

/** What reports say, with what pages say. A call, so that bundlers can leave out a language that nobody names. */
export const withPage = (reports: Messages, page: PageWords): PageMessages => frozen({ ...reports, page });
