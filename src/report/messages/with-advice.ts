import { frozen } from "../../frozen";
import type { AdviceMessages, AdviceWords } from "./advice-messages";
import type { Messages } from "./messages";

/** What reports say, with what advice says. A call, so that bundlers can leave out a language that nobody names. */
export const withAdvice = (reports: Messages, advice: AdviceWords): AdviceMessages =>
  frozen({ ...reports, advice });
