export { type CarbonDioxideConditions, carbonDioxide, carbonDioxideDomain } from "./carbon-dioxide";
export { type OxygenConditions, oxygenDomain, oxygenSaturation } from "./oxygen-saturation";
export {
  type AmmoniaConditions,
  ammoniaDomain,
  unionizedAmmoniaFraction,
} from "./unionized-ammonia-fraction";
export { type DensityConditions, densityDomain, waterDensity } from "./water-density";
