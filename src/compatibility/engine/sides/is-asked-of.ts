import type { Rule } from "../rule/rule";
import type { Subject } from "./subject";

/** Whether a rule is asked of some sides: of pairs those of one species, or of two, where it says so. */
export function isAskedOf(
  { between }: Pick<Rule, "between">,
  [from, to]: readonly Pick<Subject, "animals">[],
): boolean {
  if (!between || !from || !to) return true;
  return (from.animals.id === to.animals.id) === (between === "one-species");
}
