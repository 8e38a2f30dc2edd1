import fc from "fast-check";
import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { type LeastTank, leastTank } from "../../../src/advice";
import { assessPlan } from "../../../src/compatibility";
import type { Group } from "../../../src/plan";
import { factAt, type SpeciesProfile } from "../../../src/species";
import { tankGeometry } from "../../../src/tank";
import { anyOf, anySpecies } from "../../drawn";
import { runs, seedOf } from "../../runs";

const company = allSpecies.filter((species) => factAt(species, "social.settles")?.value);
const shy = allSpecies.filter((species) => factAt(species, "social.settledBy")?.value);

/** As many of a species as belong together. */
const groupOf = (species: SpeciesProfile): Group => ({
  species,
  unsexed: factAt(species, "social.group")?.value.least ?? 1,
});

const floorOf = (tank: LeastTank) => tankGeometry(tank).footprint;

test("company that may be added makes no tank larger nor comes in needlessly, and each plan is suitable", () => {
  let tried = 0;
  const property = fc.property(
    anyOf(shy, ({ id }) => id),
    fc.option(anySpecies, { freq: 2 }),
    (first, second) => {
      const groups = [...new Set([first, second ?? first])].map(groupOf);
      const [alone] = leastTank(groups, { most: 1 });
      const [beside] = leastTank(groups, { most: 1, company });
      for (const found of [alone, beside]) if (found) expect(assessPlan(found.plan).outcome).toBe("suitable");
      if (!alone) return;
      tried += 1;
      expect(beside && floorOf(beside)).toBeLessThanOrEqual(floorOf(alone));
      if (beside && floorOf(beside) === floorOf(alone)) expect(beside.plan).toEqual(alone.plan);
    },
  );
  fc.assert(property, { numRuns: runs(12), seed: seedOf(0) });
  expect(tried).toBeGreaterThanOrEqual(runs(6));
});
