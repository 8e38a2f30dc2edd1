import type { Animals } from "../../plan";
import type { TraitPath } from "../../species";
import type { PartyRole } from "./rule/finding";
import type { Rule, SeenParty } from "./rule/rule";
import type { Subject } from "./subject";
import type { ReadTrait } from "./worlds";

/** A party as some rule sees it. */
export type View = SeenParty<TraitPath, TraitPath>;

/** Thrown where a rule reads a trait it needs and nobody knows. Made once: a stack for each would cost more than the rule. */
export const unknownTrait = /* @__PURE__ */ new Error("a trait that is needed is not known");

/** The traits that only tell more: what they are changes no weight, and so no bound. */
const isTold = ({ tells }: Rule, role: PartyRole, trait: TraitPath) =>
  tells?.[role]?.includes(trait) ?? false;

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
  const { animals: party } = subject;
  const readTrait = (trait: TraitPath) => (isTold(rule, role, trait) ? tell : read)(subject, trait);
  return Object.assign(Object.create(frameOf(rule)[role]), { party, [reader]: readTrait });
}

const reader = Symbol("reads a trait");

interface Framed {
  readonly party: Animals;
  readonly [reader]: (trait: TraitPath) => unknown;
}

/** For each side of a rule an object with a property a trait. */
type Frames = Readonly<Record<PartyRole, object>>;

const frames = /* @__PURE__ */ new WeakMap<Rule, Frames>();

function frameOf(rule: Rule): Frames {
  const made = frames.get(rule) ?? { from: frame(rule, "from"), to: frame(rule, "to") };
  frames.set(rule, made);
  return made;
}

function frame({ needs, uses, tells }: Rule, role: PartyRole): object {
  const optional = [...(uses?.[role] ?? []), ...(tells?.[role] ?? [])].map((trait) => [
    trait,
    {
      get(this: Framed) {
        return this[reader](trait);
      },
    },
  ]);
  const needed = (needs?.[role] ?? []).map((trait) => [
    trait,
    {
      get(this: Framed) {
        const value = this[reader](trait);
        if (value === undefined) throw unknownTrait;
        return value;
      },
    },
  ]);
  return Object.defineProperties({}, Object.fromEntries([...optional, ...needed]));
}
