import { frozen } from "../../frozen";
import type { Group, Party, Plan } from "../../plan";
import { checkedPair } from "../../plan/inner";
import { type WitnessOptions, witness } from "./witness";

/** A tank in which nothing is short of room, cm. */
export const roomy = /* @__PURE__ */ frozen({
  base: { shape: "rectangle" as const, length: 1000, width: 500 },
  height: 100,
});

/**
 * A plan in which two kinds of animals live together well: the promise of a suitable or a conditional pair. The tank is
 * as large as it need be, water, furnishing and food are as both ask, and there are as many of each as belong together.
 * Undefined where there is none.
 *
 * @throws InvalidInputError for what `assessPair` refuses, and for company that is no list of profiles.
 *
 * @example
 * ```ts
 * import { speciesById } from "vivary/catalog";
 * import { assessPlan, pairPlan } from "vivary/compatibility";
 *
 * const [a, b] = ["paracheirodon-innesi", "hoplisoma-panda"].map((id) => speciesById(id));
 * const plan = a && b && pairPlan({ species: a }, { species: b });
 * plan && assessPlan(plan).outcome; // => "suitable"
 * ```
 */
export function pairPlan(a: Party, b: Party, options: WitnessOptions = {}): Plan | undefined {
  checkedPair(a, b);
  return witness({ tank: roomy, groups: [groupOf(a), groupOf(b)] }, options);
}

/** A party as a group: one animal where its number is not stated. */
function groupOf({ species, form, sex, stage = "adult", length, count = 1, temper }: Party): Group {
  const counted =
    stage !== "adult" ? { juveniles: count } : sex ? { [`${sex}s`]: count } : { unsexed: count };
  return {
    species,
    ...(form !== undefined && { form }),
    ...counted,
    ...(length !== undefined && { length }),
    ...(temper && { temper }),
  };
}
