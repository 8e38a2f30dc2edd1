import type { Messages } from "../messages/messages";
import type { VerdictPart } from "./checked-verdict";
import type { Teller } from "./teller";

/** A finding, an open question or a condition as a sentence. */
export function partTold(part: VerdictPart, teller: Teller, { open }: Messages): string {
  if ("wanted" in part) return teller.condition(part);
  if ("reason" in part)
    return teller.capital(open.all(part.reason, [teller.question([part])], part.couldBe, 0));
  return teller.findings([part]);
}
