import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { lineOf, pairName } from "../../data/judge.mjs";
import { assessPair, assessPlan } from "../../src/compatibility";
import { plans } from "./plans";

// What the library answers today, a line a pair and a line a plan, so that a change of a rule or a record shows which
// answers it flips. A changed line is not wrong in itself: read it as a keeper would, then `npm run pages`.

test("every pair of the catalog", async () => {
  const lines = allSpecies.flatMap((a, index) =>
    allSpecies.slice(index).map((b) => lineOf(pairName(a, b), assessPair({ species: a }, { species: b }))),
  );
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("pairs.txt");
});

test("plans of all sorts", async () => {
  const lines = Object.entries(plans).map(([name, plan]) => lineOf(name, assessPlan(plan)));
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("plans.txt");
});
