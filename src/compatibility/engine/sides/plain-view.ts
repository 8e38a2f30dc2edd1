import type { PartyRole } from "../rule/finding";
import type { Rule } from "../rule/rule";
import type { ReadTrait } from "../worlds";
import type { Subject } from "./subject";
import { traitsOf, type View, viewOf } from "./view";

/** Reads the value that resolving adopted. */
export const adopted: ReadTrait = ({ possible }) => possible[0]?.value;

/** A party as a rule sees it on the adopted values, held in it, so that nothing is looked up again. */
export function plainView(rule: Rule, role: PartyRole, subject: Subject): View {
  const view = viewOf(rule, role, subject, adopted, adopted);
  for (const trait of traitsOf(view)) {
    const value = adopted(subject.reading(trait));
    if (value !== undefined) Object.defineProperty(view, trait, { value });
  }
  return view;
}
