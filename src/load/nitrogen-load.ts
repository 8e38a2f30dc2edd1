import { atLeastZero, inDomain } from "../errors";

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
 * @param eaten - `food`: dry food, g a day. `proteinShare`: of the food, 0 to 1; default 0.4.
 * @throws InvalidInputError if a number is not finite; OutsideDomainError for food below 0 or a share outside 0 to 1.
 *
 * @example
 * ```ts
 * import { nitrogenLoad } from "vivary/load";
 *
 * nitrogenLoad({ food: 0.5, proteinShare: 0.45 }); // => 20.7
 * ```
 */
export function nitrogenLoad({
  food,
  proteinShare = usualProtein,
}: {
  readonly food: number;
  readonly proteinShare?: number | undefined;
}): number {
  const grams = atLeastZero(food, "food", "g/d");
  const share = inDomain(proteinShare, "proteinShare", { min: 0, max: 1 });
  return grams * share * excreted * 1000;
}
