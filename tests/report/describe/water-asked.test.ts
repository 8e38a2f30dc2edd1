import { expect, test } from "vitest";
import { assessPlan } from "../../../src/compatibility";
import { sentence } from "../../../src/report";
import { convert } from "../../../src/units";
import { someSpecies } from "../../drawn";

test("no end of water to keep is told past which it would not do, in whatever unit", () => {
  const species = someSpecies(24, 0);
  let told = 0;
  for (const [index, one] of species.entries()) {
    const other = species[(index + 1) % species.length] ?? one;
    const verdict = assessPlan({
      tank: { base: { shape: "rectangle", length: 200, width: 80 } },
      water: { temperature: 40, generalHardness: 40, hottest: 42, coolest: 1 },
      groups: [
        { species: one, unsexed: 6 },
        { species: other, unsexed: 6 },
      ],
    });
    for (const condition of verdict.conditions) {
      const { on, wanted } = condition;
      if (!/^water\.(temperature|generalHardness|hottest|coolest)$/.test(on) || "oneOf" in wanted) continue;
      const text = sentence(verdict, condition, { units: "us" });
      const [, least = "", most = least, unit] = /(\d[\d,.]*)(?: to (\d[\d,.]*))? (°F|ppm)/.exec(text) ?? [];
      const figures = [least, most].map((end) => Number(end.replace(",", "")));
      for (const figure of figures) {
        const back = unit === "°F" ? convert(figure, "degF", "degC") : convert(figure, "mg/L-CaCO3", "dH");
        const nearly = wanted.min === wanted.max ? 0.05 : 1e-9; // One figure alone is told as near as can be.
        expect(back, text).toBeGreaterThanOrEqual((wanted.min ?? -Infinity) - nearly);
        expect(back, text).toBeLessThanOrEqual((wanted.max ?? Infinity) + nearly);
        told += 1;
      }
    }
  }
  expect(told).toBeGreaterThan(species.length * 4);
});
