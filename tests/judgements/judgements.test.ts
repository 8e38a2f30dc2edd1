import { expect, test } from "vitest";
import { judgementOf, lineOf, pairName } from "../../data/flips/judge";
import { speciesById } from "../../src/catalog";
import { assessPair, assessPlan } from "../../src/compatibility";
import { pairs } from "./pairs";
import { plans } from "./plans";

// What the library answers today of some pairs and plans, a line each, so that a change of a rule shows at a glance.
// A changed line is not wrong in itself: read it as a keeper would, then `npm run pages`. All pairs: `npm run flips`.

function profileOf(id: string) {
  const profile = speciesById(id);
  if (!profile) throw new Error(`No species has the id ${id}.`);
  return profile;
}

test("pairs of all sorts", async () => {
  const lines = pairs.map((ids) => {
    const [a, b] = [profileOf(ids[0]), profileOf(ids[1])];
    return lineOf(judgementOf(pairName(a, b), assessPair({ species: a }, { species: b })));
  });
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("pairs.txt");
});

test("plans of all sorts", async () => {
  const lines = Object.entries(plans).map(([name, plan]) => lineOf(judgementOf(name, assessPlan(plan))));
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("plans.txt");
});
