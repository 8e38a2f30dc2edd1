import { inDomain, objectOf, refuseOthers } from "../checks";
import { frozen } from "../frozen";
import type { Range } from "../ranges";

/** What the capacity of a biological filter is reckoned from. */
export interface FilterCapacityInput {
  /** Surface of the media, m². */
  readonly mediaArea: number;
  /** Days since it first ran with animals or ammonia. */
  readonly age: number;
}

/** Where {@link filterCapacity} answers: up to a square kilometre of media and a century. */
export const filterCapacityDomain = /* @__PURE__ */ frozen({
  /** m². */
  mediaArea: { min: 0, max: 1_000_000 },
  /** Days. */
  age: { min: 0, max: 36_525 },
} as const);

/**
 * Ammonia nitrogen that ripe media take up, mg/(m² d). Design tables give 200 to 1000 at 1 to 2 mg/L in warm fresh water
 * (SRAC 453; Timmons & Ebeling, from memory), and about a tenth at the 0.1 mg/L of an aquarium, where the rate follows
 * the concentration.
 */
const rate = { min: 20, max: 100 } as const;

/** Days after which the first media can be ripe (FAO glossary), and the last are (Kentucky State University 2021). */
export const ripening = { min: 7, max: 56 } as const;

/**
 * Total ammonia nitrogen that a biological filter takes up while the water holds about 0.1 mg/L of it, in mg a day: the
 * least and the most. Until the shortest ripening time on record nothing, until the longest perhaps nothing.
 *
 * Source: the rate by SRAC Publication 453 (Losordo et al. 1999; Malone 2013) and Timmons & Ebeling, from memory;
 * ripening of one to six weeks (FAO) and six to eight (Hager et al. 2021, Kentucky State University). The rates were
 * found in warm, moved, fresh water and are not corrected for temperature: in cold water count on less. Chlorine,
 * medicines, very soft water and lack of oxygen undo it, and much waste on the media slows it.
 *
 * @throws OutsideDomainError outside {@link filterCapacityDomain}.
 * @throws InvalidInputError if a number is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { filterCapacity } from "vivary/load";
 *
 * filterCapacity({ mediaArea: 2, age: 60 }); // => { min: 40, max: 200 }
 * filterCapacity({ mediaArea: 2, age: 30 }).min; // => 0
 * ```
 */
export function filterCapacity(filter: FilterCapacityInput): Range {
  const { mediaArea, age, ...others } = objectOf(filter, "");
  refuseOthers(others, "");
  const area = inDomain(mediaArea, "mediaArea", filterCapacityDomain.mediaArea, "m2");
  const days = inDomain(age, "age", filterCapacityDomain.age, "d");
  return {
    min: days >= ripening.max ? area * rate.min : 0,
    max: days >= ripening.min ? area * rate.max : 0,
  };
}
