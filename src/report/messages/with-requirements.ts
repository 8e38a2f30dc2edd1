import { frozen } from "../../frozen";
import type { Messages } from "./messages";
import type { RequirementMessages, RequirementWords } from "./requirement-messages";

/** What reports say, with what is said of official requirements. A call, so that bundlers can leave out a language that nobody names. */
export const withRequirements = (reports: Messages, requirements: RequirementWords): RequirementMessages =>
  frozen({ ...reports, requirements });
