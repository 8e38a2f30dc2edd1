export { type Body, bodyMass, bodyMassDomain } from "./body-mass";
export { filterCapacity } from "./filter-capacity";
export { nitrogenLoad } from "./nitrogen-load";
export { type Breathing, oxygenDemand, oxygenDemandDomain } from "./oxygen-demand";
export { type Eater, ration } from "./ration";
