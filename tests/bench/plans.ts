import type { Plan, PlannedTank } from "vivary/plan";
import type { SpeciesProfile, TraitPath } from "vivary/species";
import { speciesOf } from "./species-of";
import { type Figure, inTurns, median, timeOf, urlOf } from "./timing";

const { assessPlan, planner }: typeof import("vivary/compatibility") = await import(urlOf("compatibility"));

const tank: PlannedTank = {
  base: { shape: "rectangle", length: 200, width: 60 },
  height: 60,
  lid: true,
  cover: 0.4,
  sightBreaks: 3,
  flow: { calmest: "still", strongest: "moderate" },
  filter: { mediaArea: 8, age: 200 },
};

const planOf = (species: readonly SpeciesProfile[]): Plan => ({
  tank,
  water: { temperature: 25, pH: 7, generalHardness: 8 },
  groups: species.map((each) => ({ species: each, unsexed: 6 })),
});

/** Small community fish of soft to middling, warm water: a list of its own, so that figures of one day and another compare. */
const company = [
  "paracheirodon-innesi",
  "paracheirodon-axelrodi",
  "hyphessobrycon-amandae",
  "hyphessobrycon-herbertaxelrodi",
  "hyphessobrycon-flammeus",
  "hemigrammus-erythrozonus",
  "petitella-bleheri",
  "petitella-rhodostoma",
  "pristella-maxillaris",
  "thayeria-boehlkei",
  "megalamphodus-megalopterus",
  "nannostomus-beckfordi",
  "nannostomus-marginatus",
  "trigonostigma-heteromorpha",
  "trigonostigma-espei",
  "boraras-urophthalmoides",
  "hoplisoma-panda",
  "hoplisoma-sterbai",
  "gastrodermus-pygmaeus",
  "otocinclus-vittatus",
  "pangio-kuhlii",
];

const unknown: readonly TraitPath[] = [
  "space.zones",
  "diet.reach",
  "diet.light",
  "diet.foods",
  "appearance.longFins",
  "size.bodyDepthShare",
  "social.group",
  "space.territory",
  "predation.eats",
  "diet.pace",
];

/** A species of which some traits are not known. */
function lesserKnown(species: SpeciesProfile): SpeciesProfile {
  const copy = JSON.parse(JSON.stringify(species));
  for (const path of unknown) {
    const [section = "", trait = ""] = path.split(".");
    if (copy[section]) delete copy[section][trait];
  }
  return copy;
}

/** One more each time. */
function countedUp(): () => number {
  let count = 0;
  return () => {
    count += 1;
    return count;
  };
}

/** What is measured of plans, and of planners. */
export function planFigures(): readonly Figure[] {
  const twenty = company.slice(0, 20).map(speciesOf);
  const other = speciesOf(company[20] ?? "");
  const plan = planOf(twenty);
  const lesser = planOf(twenty.map(lesserKnown));
  console.log(`assessPlan of 20 groups, the first: ${timeOf(() => assessPlan(plan)).toPrecision(3)} ms`);
  const before = planner(plan);
  before.verdict;
  const steps = countedUp();
  const warmer = () => before.with({ water: { temperature: 24 + (steps() % 40) / 20 } });
  const denser = () => before.with({ tank: { cover: 0.3 + (steps() % 40) / 200 } });
  const replaced = () => before.with({ groups: { [steps() % 20]: { species: other } } });
  const calls = {
    plan: () => assessPlan(plan),
    lesser: () => assessPlan(lesser),
    water: () => [warmer()].map(({ outcome, bounds }) => [outcome, bounds]),
    tank: () => [denser()].map(({ outcome, bounds }) => [outcome, bounds]),
    group: () => [replaced()].map(({ outcome, bounds }) => [outcome, bounds]),
    verdict: () => warmer().verdict,
  };
  const time = inTurns(7, calls);
  inTurns(30, calls);
  for (const [name, took] of Object.entries(inTurns(15, calls)))
    console.log(`warmed up, ${name}: ${took.toPrecision(3)} ms`);
  for (const size of [1, 3, 10, 30, 100]) {
    const grown = planOf(Array.from({ length: size }, (_, index) => twenty[index % 20] as SpeciesProfile));
    const times = Array.from({ length: size > 20 ? 1 : 3 }, () => timeOf(() => assessPlan(grown)));
    console.log(`assessPlan of ${size} groups: ${median(times).toPrecision(3)} ms`);
  }
  return [
    { figure: "assessPlan of 20 groups, ms", found: time.plan, target: 10 },
    {
      figure: "assessPlan where ten traits are not known, as times the same where they are",
      found: time.lesser / time.plan,
      target: 1.5,
    },
    {
      figure: "planner, other water: share of assessPlan",
      found: time.water / time.plan,
      target: 0.02,
      held: 0.12,
    },
    { figure: "planner, other cover: share of assessPlan", found: time.tank / time.plan, target: 0.02 },
    {
      figure: "planner, one group replaced: share of assessPlan",
      found: time.group / time.plan,
      target: 0.06,
      held: 0.4,
    },
    {
      figure: "planner, verdict in other water: share of assessPlan",
      found: time.verdict / time.plan,
      target: 0.15,
    },
  ];
}
