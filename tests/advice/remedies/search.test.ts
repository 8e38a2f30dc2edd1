import { expect, test } from "vitest";
import { rulesById } from "../../../src/advice/remedies/bars";
import { possibleSteps } from "../../../src/advice/remedies/possible-step";
import { search } from "../../../src/advice/remedies/search";
import { planner as plannerOf } from "../../../src/compatibility";
import { byTryingAll, keysOf } from "./by-trying-all";
import { spoiledPlans } from "./spoiled";

test("every set of steps is found that trying all of them finds", () => {
  const small = spoiledPlans(24, 8)
    .filter(({ groups }) => groups.length === 2)
    .slice(0, 3);
  for (const plan of small) {
    const planner = plannerOf(plan);
    const steps = possibleSteps(plan, planner.verdict, [], {});
    const sought = { want: "suitable", rules: rulesById({}), steps } as const;
    const { found } = search(planner, sought, 50);
    expect(found.map(({ steps: done }) => keysOf(done)).sort()).toEqual(byTryingAll(plan));
  }
  expect(small.length).toBe(3);
});
