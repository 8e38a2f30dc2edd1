import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { assessPair, assessPlan, type Finding, type Verdict } from "../../src/compatibility";
import { plans } from "./plans";

// What the library answers today, a line a pair and a line a plan, so that a change of a rule or a record shows which
// answers it flips. A changed line is not wrong in itself: read it as a keeper would, then `npx vitest run -u tests/judgements`.

/** `neon tetra and guppy: conditional. conditional: ph, predation` */
function line(name: string, { outcome, bounds, findings }: Verdict): string {
  const against = (weight: Finding["weight"]) => {
    const rules = findings.filter((finding) => finding.weight === weight).map(({ rule }) => rule);
    return rules.length > 0 ? ` ${weight}: ${[...new Set(rules)].join(", ")}.` : "";
  };
  const certain = bounds.atBest === bounds.atWorst && bounds.atBest === outcome;
  const span = certain ? "" : ` (${bounds.atBest} to ${bounds.atWorst})`;
  return `${name}: ${outcome}${span}.${against("blocking")}${against("restricting")}`;
}

test("every pair of the catalog", async () => {
  const name = (index: number) => allSpecies[index]?.names.en?.[0] ?? "";
  const lines = allSpecies.flatMap((a, first) =>
    allSpecies.slice(first).map((b, further) => {
      const pair = `${name(first)} and ${further === 0 ? "its own kind" : name(first + further)}`;
      return line(pair, assessPair({ species: a }, { species: b }));
    }),
  );
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("pairs.txt");
});

test("plans of all sorts", async () => {
  const lines = Object.entries(plans).map(([name, plan]) => line(name, assessPlan(plan)));
  await expect(`${lines.join("\n")}\n`).toMatchFileSnapshot("plans.txt");
});
