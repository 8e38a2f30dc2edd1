import type { TraitPath } from "../species";
import { gravity, type Weight } from "./finding";
import type { Rule } from "./rule";
import type { Reading, Side } from "./scenarios";
import type { Standing } from "./standing";
import type { OpenQuestion } from "./verdict";

/** Whether anything is known of a trait. */
export const known = ({ subject }: Side, trait: TraitPath) => subject.facts.has(trait);

/** The traits without which a rule cannot be run. */
export function missing(rule: Rule, sides: readonly Side[]): readonly OpenQuestion[] {
  return sides.flatMap((side) =>
    side.needs
      .filter((trait) => !known(side, trait))
      .map((trait) => openTrait(rule, side, trait, "missing", gravest(rule))),
  );
}

/** A trait or an input of the plan on which the bounds of a judgement hang. */
export function openQuestions(
  rule: Rule,
  read: readonly Reading[],
  standing: readonly Standing[],
  greatest: number,
): readonly OpenQuestion[] {
  const couldBe = greatest === gravity.blocking ? "blocking" : "restricting";
  const traits = read.flatMap(({ side, trait }) => {
    if (!known(side, trait)) return [openTrait(rule, side, trait, "missing", couldBe)];
    return side.subject.disputed.has(trait) ? [openTrait(rule, side, trait, "disputed", couldBe)] : [];
  });
  const inputs = standing.flatMap(({ answer, state }): readonly OpenQuestion[] => {
    if (state !== "not-given" || answer.weight !== "restricting") return [];
    const { on, of } = answer.condition;
    return [
      {
        rule: rule.id,
        ...(of !== undefined && { of }),
        input: on,
        reason: "not-given",
        couldBe: "restricting",
      },
    ];
  });
  return [...traits, ...inputs];
}

function openTrait(
  rule: Rule,
  side: Side,
  trait: TraitPath,
  reason: "missing" | "disputed",
  couldBe: Weight,
): OpenQuestion {
  return { rule: rule.id, of: side.subject.index, trait, reason, couldBe };
}

/** The gravest weight a rule may yield. */
export function gravest({ mayYield }: Rule): Weight {
  return mayYield.reduce<Weight>(
    (worst, weight) => (gravity[weight] > gravity[worst] ? weight : worst),
    "advisory",
  );
}
