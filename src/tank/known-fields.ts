import { objectOf, refusal } from "../errors";

/** The measures of a tank. */
const measures = ["base", "height", "unit", "measured", "glass", "waterBelowRim"];

/** What a plan says of its tank besides, and what `leastTank` says of one: both may be measured as they are. */
const besides = [
  "lid",
  "flow",
  "cover",
  "openWater",
  "openSurface",
  "sightBreaks",
  "substrate",
  "hides",
  "plants",
  "filter",
  "litres",
  "filledMass",
  "limitedBy",
  "plan",
  "longer",
  "caution",
];

/** The tank itself, or an InvalidInputError where it has a field that no tank has: a misspelt one would say nothing. */
export function knownTank<Tank extends object>(tank: Tank): Tank {
  const known = [...measures, ...besides];
  for (const [name, value] of Object.entries(objectOf(tank, "")))
    if (value !== undefined && !known.includes(name))
      throw refusal(name, `one of ${measures.join(", ")}`, name, "unknown-key");
  return tank;
}
