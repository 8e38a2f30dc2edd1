import type { TraitPath } from "../../species";
import type { PartyRole } from "./rule/finding";
import type { Rule } from "./rule/rule";
import type { Subject } from "./subject";
import { traitsOf, type View, viewOf } from "./view";
import type { ReadTrait } from "./worlds";

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

const known = /* @__PURE__ */ new WeakMap<Subject, Map<Rule, Partial<Record<PartyRole, View | "open">>>>();

/** The plain view of a party of which one thing alone can be true in all that the rule looks at; undefined of others. */
export function settledView(rule: Rule, role: PartyRole, subject: Subject): View | undefined {
  const ofSubject = known.get(subject) ?? new Map<Rule, Partial<Record<PartyRole, View | "open">>>();
  known.set(subject, ofSubject);
  const ofRule = ofSubject.get(rule) ?? {};
  ofSubject.set(rule, ofRule);
  ofRule[role] ??= isSettled(rule, role, subject) ? plainView(rule, role, subject) : "open";
  const view = ofRule[role];
  return view === "open" ? undefined : view;
}

const isSettled = ({ needs, uses }: Rule, role: PartyRole, { reading }: Subject): boolean => {
  const isOne = (trait: TraitPath) => reading(trait).possible.length === 1;
  return (needs?.[role] ?? []).every(isOne) && (uses?.[role] ?? []).every(isOne);
};
