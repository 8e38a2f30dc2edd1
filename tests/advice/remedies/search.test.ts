import { expect, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { rulesById } from "../../../src/advice/remedies/bars";
import { possibleSteps } from "../../../src/advice/remedies/possible-step";
import { search } from "../../../src/advice/remedies/search";
import { planner as plannerOf } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import { keptTank } from "../kept-tank";
import { byTryingAll, keysOf } from "./by-trying-all";
import { spoiledPlans } from "./spoiled";

/** What the search finds, each set as its keys in order. */
function bySearch(plan: Plan): readonly string[] {
  const planner = plannerOf(plan);
  const steps = possibleSteps(plan, planner.verdict, [], {});
  const { found } = search(planner, { want: "suitable", rules: rulesById({}), steps }, 50);
  return found.map(({ steps: done }) => keysOf(done)).sort();
}

test("every set of steps is found that trying all of them finds", () => {
  const small = spoiledPlans(80, 8)
    .filter(({ groups }) => groups.length === 2)
    .slice(0, 3);
  for (const plan of small) expect(bySearch(plan)).toEqual(byTryingAll(plan));
  expect(small.length).toBe(3);
});

test("and of those in which who leaves spares a large tank", () => {
  const group = (id: string, unsexed: number) => ({
    species: speciesById(id) ?? expect.fail(`no ${id}`),
    unsexed,
  });
  const tank = { ...keptTank, base: { shape: "rectangle", length: 70, width: 30 } } as const;
  const tetras = group("gymnocorymbus-ternetzi", 6);
  const pleco = group("pterygoplichthys-pardalis", 1);
  for (const groups of [
    [pleco, tetras],
    [pleco, group("pterygoplichthys-gibbiceps", 1), tetras],
    [group("carassius-auratus", 2), tetras, pleco],
  ]) {
    const found = bySearch({ tank, groups });
    expect(found).toEqual(byTryingAll({ tank, groups }));
    expect(found.filter((keys) => keys.includes("rehome") && keys.includes("tank")).length).toBeGreaterThan(
      0,
    );
  }
});

test("and of those in which one sex leaves, too", () => {
  const kinds = ["apistogramma-cacatuoides", "dario-dario", "trichogaster-lalius", "poecilia-reticulata"];
  for (const id of kinds) {
    const species = speciesById(id) ?? expect.fail(`no ${id}`);
    const tank = { ...keptTank, base: { shape: "rectangle", length: 80, width: 35 } } as const;
    const plan = { tank, groups: [{ species, males: 3, females: 2 }] };
    const found = bySearch(plan);
    expect([id, ...found]).toEqual([id, ...byTryingAll(plan)]);
    expect(found.length).toBeGreaterThan(0);
  }
});
