/**
 * What water holds and weighs: oxygen, carbon dioxide, the toxic share of ammonia, and density, by published equations;
 * and what mixed waters hold.
 * Each exports the range in which it holds; outside it there is no answer but an `OutsideDomainError` that names the
 * range.
 *
 * @packageDocumentation
 */
export { InvalidInputError, OutsideDomainError } from "../errors";
export { type CarbonDioxideConditions, carbonDioxide, carbonDioxideDomain } from "./carbon-dioxide";
export { type Dissolved, mixture, type PartOfMixture } from "./mixture";
export { type OxygenConditions, oxygenDomain, oxygenSaturation } from "./oxygen-saturation";
export {
  type AmmoniaConditions,
  ammoniaDomain,
  unionizedAmmoniaFraction,
} from "./unionized-ammonia-fraction";
export { type DensityConditions, densityDomain, waterDensity } from "./water-density";
