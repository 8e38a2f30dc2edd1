import type { Contradiction } from "./contradiction";

/** Above so many g/kg water is more than a little brackish: the mesohaline class of the Venice System of 1958 (from memory). */
const freshest = 5;

/** The water it lives in. */
export const ofWater: readonly Contradiction[] = [
  {
    trait: "water.coolSeason",
    found: "a cool season outside of the water it is kept in",
    expected: "a season within water.temperature as kept",
    holds: ({ water }) => {
      const season = water?.coolSeason?.value ?? "none";
      const kept = water?.temperature?.value.kept;
      if (season === "none" || kept === undefined) return false;
      return (
        (season.max ?? -Infinity) > (kept.max ?? Infinity) ||
        (season.min ?? Infinity) < (kept.min ?? -Infinity)
      );
    },
    mend: "Correct water.coolSeason or water.temperature.",
  },
  {
    trait: "water.flow",
    found: "an air breather in a strong current",
    expected: "an animal that must reach the surface in calmer water",
    holds: ({ water }) =>
      water?.airBreathing?.value.kind === "obligate" && water.flow?.value.max === "strong",
    mend: "Correct water.flow or water.airBreathing.",
  },
  {
    trait: "water.flow",
    found: "a nest of bubbles in moving water",
    expected: "still or gentle water among the currents it is kept in",
    holds: ({ water, reproduction }) =>
      reproduction?.mode?.value === "bubble-nest" &&
      ["moderate", "strong"].includes(water?.flow?.value.min ?? "still"),
    mend: "Correct water.flow or reproduction.mode.",
  },
  {
    trait: "water.flow",
    found: "much oxygen needed in water that only stands still",
    expected: "some current where water.oxygenNeed is high",
    holds: ({ water }) => water?.oxygenNeed?.value === "high" && water.flow?.value.max === "still",
    mend: "Correct water.flow or water.oxygenNeed.",
  },
  {
    trait: "water.generalHardness",
    found: "water of more than 35 °dH",
    expected: "degrees; ppm and mg/L are other units",
    holds: ({ water }) => (water?.generalHardness?.value.kept.max ?? 0) > 35,
    mend: 'Add "unit": "mg/L-CaCO3" where the source says ppm or mg/L.',
  },
  {
    trait: "water.coolSeason",
    found: "a cool season that is no cooler",
    expected: "a season that ends below the warmest of water.temperature as kept",
    holds: ({ water }) => {
      const season = water?.coolSeason?.value ?? "none";
      const warmest = water?.temperature?.value.kept.max;
      return season !== "none" && warmest !== undefined && season.max === warmest;
    },
    mend: "Correct water.coolSeason or water.temperature.",
  },
  {
    trait: "water.salinity",
    found: "brackish water for an animal of fresh water alone",
    expected: `brackish among origin.waters where it is kept in more than ${freshest} g/kg`,
    holds: ({ origin, water }) =>
      (water?.salinity?.value.kept.max ?? 0) > freshest &&
      origin?.waters?.value.every((one) => one === "fresh"),
    mend: "Correct water.salinity or its unit, or origin.waters.",
  },
];
