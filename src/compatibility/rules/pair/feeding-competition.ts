import type { TraitValue } from "../../../species";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { shareAny } from "../shared/lists";

type Eater = SeenParty<"diet.pace", "diet.reach" | "diet.light" | "diet.foods">;

const eater = ["diet.reach", "diet.light", "diet.foods"] as const;

/**
 * Does it take the food before the other gets to it?
 *
 * Slow beside fast at one place and hour: what reaches only the slower one, or is given to it apart, mends it. Food does so
 * where it grows or rots: of what swims or falls in, the quicker one takes all that it finds, told or not. A snail that lives
 * on what grows and rots is always at table.
 */
export const feedingCompetition = /* @__PURE__ */ ownRule({
  id: "feeding-competition",
  way: "each-way",
  needs: { from: ["diet.pace"], to: ["diet.pace"] },
  uses: { from: eater, to: ["diet.reach", "diet.light", "diet.foods", "diet.type"] },
  mayYield: ["restricting"],
  judge: ({ from, to }) => {
    if (from["diet.pace"] !== "fast" || to["diet.pace"] !== "slow" || !feedTogether(from, to)) return [];
    if (livesOnGrowth(to)) return [];
    const wanted = { oneOf: [...onlyFor(to, from), "apart"] };
    return [
      {
        weight: "restricting",
        watchFor: "thin",
        condition: { on: "group.offerings", of: "to", wanted },
      },
    ];
  },
});

const livesOnGrowth = ({ party, "diet.type": type }: SeenParty<never, "diet.type">): boolean =>
  party.kind === "snail" && (type === "herbivore" || type === "detritivore");

function feedTogether(a: Eater, b: Eater): boolean {
  return eater.every((trait) => shareAny<string>(a[trait], b[trait]));
}

/** Foods that a hunter passes over. */
const growths: readonly string[] = ["algae", "plants", "wood", "detritus"] satisfies TraitValue<"diet.foods">;

/** The places, hours and growths that one uses and the other does not. */
function onlyFor(one: Eater, other: Eater): readonly string[] {
  return eater.flatMap((trait) => {
    const taken: readonly string[] | undefined = other[trait];
    const own: readonly string[] = one[trait] ?? [];
    const reached = trait === "diet.foods" ? own.filter((food) => growths.includes(food)) : own;
    return taken ? reached.filter((word) => !taken.includes(word)) : [];
  });
}
