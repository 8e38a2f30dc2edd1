/**
 * What animals weigh, breathe, eat and give off, what a filter takes up, and the surface of foam in it: estimates for a
 * typical fish from published equations, in g, mg and days. Each exports the range in which it holds; species and
 * individuals differ from the typical by the factors its page names.
 *
 * @packageDocumentation
 */
export { InvalidInputError, OutsideDomainError } from "../errors";
export { type BodyMass, type BodyMassInput, bodyMass, bodyMassDomain } from "./body-mass";
export {
  coarseFoamDomain,
  type FoamAreaInput,
  type FoamVolumeInput,
  foamArea,
  foamVolume,
} from "./coarse-foam";
export { type FilterCapacityInput, filterCapacity, filterCapacityDomain } from "./filter-capacity";
export { type NitrogenLoadInput, nitrogenLoad, nitrogenLoadDomain } from "./nitrogen-load";
export { type OxygenDemand, type OxygenDemandInput, oxygenDemand, oxygenDemandDomain } from "./oxygen-demand";
export { type RationInput, ration } from "./ration";
