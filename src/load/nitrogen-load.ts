import { inDomain, objectOf, refuseOthers } from "../checks";
import { frozen } from "../frozen";

/** What the ammonia of a fish is reckoned from. */
export interface NitrogenLoadInput {
  /** Dry food, g a day. */
  readonly food: number;
  /** Protein in the food as a share of its dry mass, 0 to 1. Default 0.4. */
  readonly proteinShare?: number | undefined;
}

/** Where {@link nitrogenLoad} answers: up to a tonne of food a day, any share of protein. */
export const nitrogenLoadDomain = /* @__PURE__ */ frozen({
  /** g a day. */
  food: { min: 0, max: 1_000_000 },
  /** A share of the food. */
  proteinShare: { min: 0, max: 1 },
} as const);

/** Of a kilogram of protein eaten so many kilograms of nitrogen come out as ammonia. */
const excreted = 0.092;

/** Between 30 and 50 % of the food of growing ornamentals should be protein (Sales & Janssens 2003). */
const usualProtein = 0.4;

/**
 * Total ammonia nitrogen that a fish gives off for the food it eats, in mg a day.
 *
 * Source: Timmons & Ebeling, Recirculating Aquaculture, food × protein share × 0.092 (equation from memory, the
 * coefficient read in a published sizing script).
 *
 * @throws OutsideDomainError outside {@link nitrogenLoadDomain}.
 * @throws InvalidInputError if a number is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { nitrogenLoad } from "vivary/load";
 *
 * nitrogenLoad({ food: 0.5, proteinShare: 0.45 }); // => 20.7
 * ```
 */
export function nitrogenLoad(eaten: NitrogenLoadInput): number {
  const { food, proteinShare = usualProtein, ...others } = objectOf(eaten, "");
  refuseOthers(others, "");
  const grams = inDomain(food, "food", nitrogenLoadDomain.food, "g/d");
  const share = inDomain(proteinShare, "proteinShare", nitrogenLoadDomain.proteinShare);
  return grams * share * excreted * 1000;
}
