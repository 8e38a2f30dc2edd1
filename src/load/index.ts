export { type Body, bodyMass } from "./body-mass";
export { filterCapacity } from "./filter-capacity";
export { nitrogenLoad } from "./nitrogen-load";
export { type Breathing, oxygenDemand, oxygenDemandDomain } from "./oxygen-demand";
export { ration } from "./ration";
