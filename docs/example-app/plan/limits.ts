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

/** Lengths of a tank: those of `lengthInCm`, whatever the unit, of which the schema says no greatest number. */
const ofSize: Limits = { least: 0.01, most: 100_000, above: false, whole: false };
/** Lengths that may be zero. */
const ofPart: Limits = { ...ofSize, least: 0 };
const ofAngle: Limits = { least: 0, most: 360, above: true, whole: false };

const byName: Readonly<Record<string, Limits>> = {
  height: ofSize,
  glass: ofPart,
  waterBelowRim: ofPart,
  bow: ofPart,
  angle: ofAngle,
};

/** The limits of the number at a path: those of the schema of plans, where it is no measure of the tank. */
export function limitsAt(path: Path): Limits {
  const name = `${path.at(-1)}`;
  if (path[0] === "tank" && (path[1] === "base" || name in byName)) return byName[name] ?? ofSize;
  const steps = path.flatMap((step) => (typeof step === "number" ? ["items"] : ["properties", step]));
  const { type, minimum, exclusiveMinimum, maximum } = Object(valueAt(planJsonSchema, steps));
  const above = minimum === undefined;
  return { least: above ? exclusiveMinimum : minimum, most: maximum, above, whole: type === "integer" };
}
