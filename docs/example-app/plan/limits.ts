import { planJsonSchema } from "vivary/plan";
import { type Path, valueAt } from "./draft";

/** What a number of a plan may be, as the plan holds it; lengths in cm. */
export interface Limits {
  readonly least: number;
  readonly most: number;
  /** Whether it has to be more than the least. */
  readonly above: boolean;
  /** Whether nothing but whole numbers will do. */
  readonly whole: boolean;
}

/** The lengths of a tank, of which the schema says no limits: those of `lengthInCm`. */
const ofTank: Limits = { least: 0.01, most: 100_000, above: false, whole: false };
const ofAngle: Limits = { least: 0, most: 360, above: true, whole: false };

/** The limits of the number at a path: those of the schema of plans, where it says some. */
export function limitsAt(path: Path): Limits {
  const steps = path.flatMap((step) => (typeof step === "number" ? ["items"] : ["properties", step]));
  const { type, minimum, exclusiveMinimum, maximum } = Object(valueAt(planJsonSchema, steps));
  if (maximum === undefined) return path.at(-1) === "angle" ? ofAngle : ofTank;
  const above = minimum === undefined;
  return { least: above ? exclusiveMinimum : minimum, most: maximum, above, whole: type === "integer" };
}
