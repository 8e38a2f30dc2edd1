import type { Range } from "../../ranges";
import type { Asked, Comparison, Has, Untold } from "../official-requirement";
import { compare } from "./compare";

/**
 * What is asked beside what the plan has, which may not be given.
 *
 * @param unknown - Why what is asked is not known to its upper end, if so.
 */
export function compared(asked: Asked, has: (Range & Has) | undefined, unknown?: Untold): Comparison {
  if (!has) return { asked, answer: "undetermined", open: { reason: "not-given" } };
  const answer = compare(asked, has);
  const open = answer === "undetermined" && unknown;
  return { asked, has, answer, ...(open && { open }) };
}
