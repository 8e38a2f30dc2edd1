/**
 * Exact conversion between the units that keepers, shops and papers use, each by its legal or standard definition:
 * lengths, volumes, temperatures, hardness and others. A unit is an id such as `cm`, `gal-us` or `degC`, and units of
 * one measure convert into each other.
 *
 * @packageDocumentation
 */
export { InvalidInputError } from "../errors";
export { convert } from "./convert";
export { convertDifference } from "./convert-difference";
export { measureOf } from "./measure-of";
export type { AreaUnit } from "./measures/area";
export type { ConductivityUnit } from "./measures/conductivity";
export type { FlowRateUnit } from "./measures/flow-rate";
export type { HardnessUnit } from "./measures/hardness";
export type { LengthUnit } from "./measures/length";
export type { MassUnit } from "./measures/mass";
export type { PressureUnit } from "./measures/pressure";
export type { SalinityUnit } from "./measures/salinity";
export type { SpeedUnit } from "./measures/speed";
export type { TemperatureUnit } from "./measures/temperature";
export type { TimeUnit } from "./measures/time";
export type { VolumeUnit } from "./measures/volume";
export type { Measure, Unit, UnitLike, UnitsByMeasure } from "./unit";
export { unitsOf } from "./units-of";
