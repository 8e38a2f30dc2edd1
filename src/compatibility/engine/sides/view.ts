import type { Animals } from "../../../plan";
import type { TraitPath } from "../../../species";
import type { PartyRole } from "../rule/finding";
import type { Rule, SeenParty } from "../rule/rule";
import type { ReadTrait } from "../worlds";
import type { Subject } from "./subject";

/** A party as some rule sees it. */
export type View = SeenParty<TraitPath, TraitPath>;

/** Thrown where a rule reads a trait it needs and nobody knows. Made once: a stack for each would cost more than the rule. */
export const unknownTrait = /* @__PURE__ */ new Error("a trait that is needed is not known");

/** Where a side of a rule comes from. */
interface Source {
  readonly subject: Subject;
  readonly read: ReadTrait;
  readonly tell: ReadTrait;
}

/** How the traits of each list of a rule are read: those that only tell more change no weight, and so no bound. */
const readers = {
  uses: ({ subject, read }: Source, trait: TraitPath) => read(subject.reading(trait)),
  tells: ({ subject, tell }: Source, trait: TraitPath) => tell(subject.reading(trait)),
  needs: ({ subject, read }: Source, trait: TraitPath) => {
    const value = read(subject.reading(trait));
    if (value === undefined) throw unknownTrait;
    return value;
  },
} as const;

/**
 * What a rule sees of a party: its animals, and the traits it declares for that side, each read when it is looked at;
 * those that only tell more by `tell`.
 */
export function viewOf(
  rule: Rule,
  role: PartyRole,
  subject: Subject,
  read: ReadTrait,
  tell: ReadTrait,
): View {
  const view = new (sidesOf(rule)[role])(subject.animals, { subject, read, tell });
  return view as unknown as View;
}

/** The traits that a view shows. */
export const traitsOf = (view: View): readonly TraitPath[] =>
  Object.keys(Object.getOwnPropertyDescriptors(Object.getPrototypeOf(view))).filter(
    (name): name is TraitPath => name !== "constructor",
  );

const source = Symbol("where the traits are read");

/** A side of a rule: a party, with a property a trait. */
type Side = new (party: Animals, from: Source) => { readonly party: Animals };

const sides = /* @__PURE__ */ new WeakMap<Rule, Readonly<Record<PartyRole, Side>>>();

function sidesOf(rule: Rule): Readonly<Record<PartyRole, Side>> {
  const made = sides.get(rule) ?? { from: sideOf(rule, "from"), to: sideOf(rule, "to") };
  sides.set(rule, made);
  return made;
}

function sideOf(rule: Rule, role: PartyRole): Side {
  class SideOfRule {
    declare readonly party: Animals;
    declare readonly [source]: Source;

    constructor(party: Animals, from: Source) {
      this.party = party;
      this[source] = from;
    }
  }
  for (const list of ["uses", "tells", "needs"] as const) {
    for (const trait of rule[list]?.[role] ?? []) {
      const read = readers[list];
      Object.defineProperty(SideOfRule.prototype, trait, {
        get(this: SideOfRule) {
          return read(this[source], trait);
        },
      });
    }
  }
  return SideOfRule;
}
