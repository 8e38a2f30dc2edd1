/**
 * What laws and official guidance of some countries ask of a tank and its animals, beside what a plan has.
 *
 * @packageDocumentation
 */

export { InvalidInputError } from "../errors";
export type { LengthName } from "./fishes/lengths";
export type { Force } from "./jurisdiction";
export type { Asked, Comparison, Has, OfficialRequirement, Untold } from "./official-requirement";
export { officialRequirements } from "./official-requirements";
export type { TankMeasureName, TankSideName, VolumeName } from "./tank-measures";
