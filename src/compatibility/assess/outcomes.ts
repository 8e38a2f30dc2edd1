import { objectOf } from "../../checks";
import { refusal } from "../../errors";
import { checkedPair, profilesOf } from "../../plan/inner";
import type { SpeciesProfile, TraitPath } from "../../species";
import { adoptedAnswers } from "../engine/adopted";
import type { Standing } from "../engine/answers/standing";
import { decisiveTraits } from "../engine/rule/decisive-traits";
import { isKnownBy, type Subject, subjectOf } from "../engine/sides/subject";
import { pairRules } from "../rules";
import { outcomeOf } from "../verdict/outcome-of";
import type { Outcome } from "../verdict/verdict";
import { type AssessOptions, namedRules } from "./assess-options";
import { assessPair } from "./assess-pair";
import { pairRulesOf } from "./assess-pair-by";

/** The outcomes of every two of some species. */
export interface Outcomes {
  /** The ids of the species, in the order given. */
  readonly ids: readonly string[];
  /**
   * What `assessPair` has as outcome for two of them, by their places from 0.
   *
   * @throws InvalidInputError for a place that is none.
   */
  readonly outcome: (i: number, j: number) => Outcome;
}

/**
 * The outcomes of many pairs, without their reasons and bounds: by the same rules as `assessPair`, of adults of both sexes,
 * each species made ready once. A pair is judged when it is asked for, and nothing is kept of it.
 *
 * @throws InvalidInputError for what `assessPair` refuses.
 *
 * @example
 * ```ts
 * import { speciesById } from "vivary/catalog";
 * import { outcomes } from "vivary/compatibility";
 *
 * const ids = ["danio-rerio", "puntigrus-tetrazona", "betta-splendens"];
 * const { outcome } = outcomes(ids.flatMap((id) => speciesById(id) ?? []));
 * outcome(1, 2); // => "unsuitable"
 * ```
 */
export function outcomes(profiles: readonly SpeciesProfile[], options: AssessOptions = {}): Outcomes {
  const { rules: named, ...others } = objectOf(options, "options");
  const { rules, thresholds } = pairRulesOf(namedRules(named, pairRulesOf) ?? pairRules, others);
  const decisive = decisiveTraits(rules);
  const sides = profilesOf(profiles, ["profiles"]).map((species) => asSides(species, decisive));
  const judges = rules.map((rule) => ({ rule, answers: adoptedAnswers(rule, thresholds) }));
  const judged = (a: Subject, b: Subject): Outcome | undefined => {
    const all: Standing[] = [];
    for (const { rule, answers } of judges) {
      for (const found of rule.way === "mutual" ? [answers(a, b)] : [answers(a, b), answers(b, a)]) {
        if (found === undefined) return undefined;
        if (found.some(isBlocking)) return "unsuitable";
        all.push(...found);
      }
    }
    return outcomeOf(all);
  };
  const at = (place: number, name: string) => {
    const found = sides[place];
    if (found) return found;
    throw refusal(name, `a place from 0 to ${sides.length - 1}`, place, "range");
  };
  return {
    ids: profiles.map(({ id }) => id),
    outcome: (i, j) => {
      const [a, b] = [at(i, "i"), at(j, "j")];
      const whole = () => assessPair({ species: a.species }, { species: b.species }, options).outcome;
      if (!a.isComplete || !b.isComplete || a.species.id === b.species.id) return whole();
      return judged(a.first, b.second) ?? whole();
    },
  };
}

/** A species as either side of a pair. */
interface Sides {
  readonly species: SpeciesProfile;
  readonly first: Subject;
  readonly second: Subject;
  /** Whether nothing is unknown of it that leaves an answer undetermined. */
  readonly isComplete: boolean;
}

function asSides(species: SpeciesProfile, decisive: readonly TraitPath[]): Sides {
  const [one, other] = checkedPair({ species }, { species });
  const [first, second] = [subjectOf(one, 0), subjectOf(other, 1)];
  return { species, first, second, isComplete: isKnownBy(first, decisive) };
}

const isBlocking = ({ answer }: Standing): boolean => answer.weight === "blocking";
