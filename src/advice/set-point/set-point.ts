import type { SpeciesProfile } from "../../species";
import { animalsOf } from "./animals";
import type { NoSetPoint, SetPoint } from "./answer";
import { sharedOrConflict } from "./conflict";
import { pointOf } from "./point";
import { sharedWaterOf } from "./rooms";
import { stayingOf } from "./staying";
import { type SetPointOptions, termsOf } from "./terms";

/**
 * The temperature, pH, hardness and salinity to keep some animals in: what is best for all, or else what leaves them the
 * widest margin, by the spans with which `assessPlan` judges water, so that the two never disagree; or the two animals that
 * prove that there is none.
 *
 * Each figure is the middle of what is best for all, as far as anybody says what is; where they share no such water, of
 * what all are kept in; where they are kept in nothing in common, of what all can be given (see the rules `temperature`,
 * `ph`, `general-hardness`); and no nearer to the end of that than water can be held. Of intervals all share something if
 * and only if each two do (Helly), so that two animals prove a conflict. Where a span is open at one end, the figure lies
 * half the width that counts as room to spare inside the other end; hardness and salinity begin at 0, and water is fresh
 * where that serves all.
 *
 * With `totalAmmonia` the warm and the alkaline end come down, each by the same share of its room, until un-ionized
 * ammonia (Emerson et al. 1975) and saturated oxygen (Benson & Krause 1984) at the far corner are borne. In water that is
 * not saturated there is less oxygen: this shows only where even the best aeration does not do.
 *
 * The largest company is found exactly, in steps that are at most the product of the numbers of different lower ends:
 * for the whole catalog, whose figures are round, in a fraction of a second. Of equally large ones it is that of the earliest.
 *
 * @param profiles One or more species, with forms applied: grown animals, on the adopted facts.
 * @returns Places (`least`, `between`, `stay`, …) are indices into `profiles`.
 * @throws OutsideDomainError with `totalAmmonia` for water colder than 0 °C or salter than 40 g/kg.
 * @throws InvalidInputError for no profile, a swing below zero, ammonia that is no number above zero, an unknown threshold.
 *
 * @example
 * ```ts
 * import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { setPoint } from "vivary/advice";
 *
 * const found = setPoint([paracheirodonInnesi, danioRerio]);
 * found.conflict ?? found.water.temperature; // => 23
 * ```
 */
export function setPoint(
  profiles: readonly SpeciesProfile[],
  options: SetPointOptions = {},
): SetPoint | NoSetPoint {
  const terms = termsOf(options);
  const animals = animalsOf(profiles, terms);
  const water = sharedOrConflict(animals, terms);
  if ("rooms" in water) return pointOf(animals, water, terms);
  const staying = stayingOf(animals, terms);
  const shared = sharedWaterOf(staying, terms);
  const places = (some: typeof animals) => some.map(({ place }) => place);
  return {
    conflict: water,
    largest: {
      stay: places(staying),
      leave: places(animals.filter((animal) => !staying.includes(animal))),
      ...(staying.length > 0 && shared && { setPoint: pointOf(staying, shared, terms) }),
    },
  };
}
