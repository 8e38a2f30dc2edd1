import type { Measure as Definition } from "convert-units";
import { area } from "./measures/area";
import { conductivity } from "./measures/conductivity";
import { flowRate } from "./measures/flow-rate";
import { hardness } from "./measures/hardness";
import { length } from "./measures/length";
import { mass } from "./measures/mass";
import { pressure } from "./measures/pressure";
import { salinity } from "./measures/salinity";
import { speed } from "./measures/speed";
import { temperature } from "./measures/temperature";
import { time } from "./measures/time";
import { volume } from "./measures/volume";
import type { Measure } from "./unit";

/** What makes the definitions of the units of each measure. */
export const definitions: Readonly<Record<Measure, () => Definition<string, string>>> = {
  length,
  area,
  volume,
  mass,
  temperature,
  hardness,
  flowRate,
  speed,
  conductivity,
  salinity,
  pressure,
  time,
};
