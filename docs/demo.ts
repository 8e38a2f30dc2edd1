// A tank planned, judged, changed and judged again. Place, tank and animals are invented; the species are real.
import { remedies, turningPoints } from "vivary/advice";
import { allSpecies } from "vivary/catalog";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { assessPair, assessPlan } from "vivary/compatibility";
import type { Plan, PlannedTank } from "vivary/plan";
import { describe, speciesPage } from "vivary/report";
import { officialRequirements } from "vivary/standards";
import { tankGeometry } from "vivary/tank";
import { convert } from "vivary/units";

const heading = (text: string) => console.log(`\n${text}\n${"=".repeat(text.length)}\n`);

const tank: PlannedTank & { readonly height: number } = {
  base: { shape: "rectangle", length: 100, width: 40 },
  height: 45,
  measured: "outer",
  glass: 0.8,
  waterBelowRim: 3,
  lid: true,
  flow: { calmest: "still", strongest: "gentle" },
  cover: 0.2,
  openWater: 0.5,
  plants: "planted",
};
const water = { temperature: 25, pH: 6.8, generalHardness: 8 };

const { waterVolume, filledMass } = tankGeometry(tank);
const litres = Math.round(waterVolume);
const gallons = Math.round(convert(waterVolume, "L", "gal-us"));

heading("A tank for the reading room of Fernholm library");
console.log(`It measures 100 × 40 × 45 cm outside and holds ${litres} L (${gallons} US gal) of water.`);
console.log(`Filled it weighs ${Math.round(filledMass)} kg without gravel and stand.`);

heading("The first plan");
const firstPlan: Plan = {
  tank,
  water,
  groups: [
    { species: puntigrusTetrazona, unsexed: 5 },
    { species: pterophyllumScalare, unsexed: 2 },
    { species: trichogasterChuna, males: 1, females: 2 },
    { species: osteogasterAenea, unsexed: 6 },
  ],
};
console.log(describe(assessPlan(firstPlan), { remedies: remedies(firstPlan, { most: 2 }) }));

heading("The plan changed");
const changedPlan: Plan = {
  tank: { ...tank, cover: 0.35, plants: "grown-in", openSurface: 0.6, filter: { mediaArea: 3, age: 70 } },
  water: { ...water, temperature: 24.5, generalHardness: 7 },
  groups: [
    { species: paracheirodonInnesi, unsexed: 15 },
    { species: trichogasterChuna, males: 1, females: 2 },
    { species: osteogasterAenea, unsexed: 6 },
    { species: ancistrusCirrhosus, males: 1 },
  ],
};
console.log(describe(assessPlan(changedPlan)));

heading("Changed by the first remedy, and how far its temperature may go");
const [remedy] = remedies(changedPlan, { most: 1 }).remedies;
const followed = { on: "water.temperature", span: { min: 18, max: 32 } } as const;
for (const { from, to, outcome } of remedy ? turningPoints(remedy.plan, followed) : [])
  console.log(`${Number(from).toFixed(1)} to ${Number(to).toFixed(1)} °C: ${outcome}`);

heading("What laws and official guidance ask of ten small fish in 60 × 30 × 35 cm");
const rows = officialRequirements({
  tank: { base: { shape: "rectangle", length: 60, width: 30 }, height: 35, measured: "outer" },
  water,
  groups: [{ species: paracheirodonInnesi, unsexed: 10, length: 3 }],
});
for (const { jurisdiction, force, asks, asked, has, answer } of rows) {
  if (asked?.unit !== "L" || !has || "value" in has) continue;
  const least = asked.max === asked.min ? asked.min : `${asked.min} to ${asked.max ?? "more"}`;
  console.log(`${jurisdiction} (${force}): ${asks}`);
  console.log(`  Here at least ${least} L; the plan has ${has.min} L: ${answer.replace("-", " ")}.`);
}
console.log(`\n${rows[0]?.caution}`);

heading("A pair that can never be");
console.log(describe(assessPair({ species: astronotusOcellatus }, { species: paracheirodonInnesi })));

heading("The page of a species");
console.log(speciesPage(trichogasterChuna, { candidates: allSpecies }));
