import type { AreaUnit } from "./measures/area";
import type { ConductivityUnit } from "./measures/conductivity";
import type { FlowRateUnit } from "./measures/flow-rate";
import type { HardnessUnit } from "./measures/hardness";
import type { LengthUnit } from "./measures/length";
import type { MassUnit } from "./measures/mass";
import type { PressureUnit } from "./measures/pressure";
import type { SalinityUnit } from "./measures/salinity";
import type { SpeedUnit } from "./measures/speed";
import type { TemperatureUnit } from "./measures/temperature";
import type { TimeUnit } from "./measures/time";
import type { VolumeUnit } from "./measures/volume";

/** The units of each measure, by their ids. */
export interface UnitsByMeasure {
  /** Lengths of animals and tanks. */
  readonly length: LengthUnit;
  /** Areas of floors and filter media. */
  readonly area: AreaUnit;
  /** Volumes of tanks and water. */
  readonly volume: VolumeUnit;
  /** Masses of animals and tanks. */
  readonly mass: MassUnit;
  /** Temperatures, or differences of temperature. */
  readonly temperature: TemperatureUnit;
  /** General and carbonate hardness. */
  readonly hardness: HardnessUnit;
  /** What pumps and filters move. */
  readonly flowRate: FlowRateUnit;
  /** Speeds of current and swimming. */
  readonly speed: SpeedUnit;
  /** Electrical conductivity of water. */
  readonly conductivity: ConductivityUnit;
  /** Salt in water, by mass. */
  readonly salinity: SalinityUnit;
  /** Pressure of air. */
  readonly pressure: PressureUnit;
  /** Ages and spans of time. */
  readonly time: TimeUnit;
}

/** What a unit measures. Units of one measure convert into each other. */
export type Measure = keyof UnitsByMeasure;

/** The id of a unit. No id belongs to two measures. */
export type Unit =
  | LengthUnit
  | AreaUnit
  | VolumeUnit
  | MassUnit
  | TemperatureUnit
  | HardnessUnit
  | FlowRateUnit
  | SpeedUnit
  | ConductivityUnit
  | SalinityUnit
  | PressureUnit
  | TimeUnit;

/** The units that `U` converts into: those of the same measure. */
export type UnitLike<U extends Unit> = {
  [M in Measure]: U extends UnitsByMeasure[M] ? UnitsByMeasure[M] : never;
}[Measure];
