/** How much a finding counts, the gravest first; `favourable` stands beside the ladder. */
export type Weight = "blocking" | "restricting" | "advisory" | "favourable";

/** Every weight, the gravest first. */
export const weights: readonly Weight[] = ["blocking", "restricting", "advisory", "favourable"];

/** How much a weight counts towards the outcome. */
export const gravity: Readonly<Record<Weight, number>> = {
  favourable: 0,
  advisory: 0,
  restricting: 1,
  blocking: 2,
};

/** Whether a value is a weight. */
export const isWeight = (value: unknown): value is Weight =>
  typeof value === "string" && Object.hasOwn(gravity, value);

/** The gravest of some weights. */
export function gravest(weights: readonly Weight[]): Weight {
  let worst: Weight = "advisory";
  for (const weight of weights) if (gravity[weight] > gravity[worst]) worst = weight;
  return worst;
}
