// What an app does with the package, from what somebody types to the words of a verdict: the same in every runtime.
import { findSpecies } from "vivary/catalog";
import bettaSplendens from "vivary/catalog/betta-splendens";
import { assessPair, assessPlan } from "vivary/compatibility";
import { safeParsePlan } from "vivary/plan";
import { describe } from "vivary/report";
import { loadSpecies, suggestSpecies } from "vivary/search";

const saved = {
  format: 1,
  tank: { base: { shape: "rectangle", length: 80, width: 35 }, height: 40 },
  water: { temperature: 24, pH: 7, generalHardness: 8 },
  groups: [{ species: "neon tetra", unsexed: 10 }],
};

export async function answers() {
  const typed = suggestSpecies("neon tet");
  const neon = await loadSpecies(typed[0].id);
  const parsed = safeParsePlan(saved, (name) => findSpecies(name)[0]);
  if (!parsed.success) throw new Error("The plan could not be read.");
  const verdict = assessPlan(parsed.plan);
  return {
    typed,
    loaded: neon.taxonomy.name,
    refused: await loadSpecies("unicorn").catch(({ name }) => name),
    pair: assessPair({ species: neon }, { species: bettaSplendens }),
    verdict,
    said: describe(verdict, { units: "us" }),
  };
}
