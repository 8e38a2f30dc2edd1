import { speciesById } from "vivary/catalog";
import { assessPair, assessPlan, type Verdict } from "../../src/compatibility";
import type { Group } from "../../src/plan";
import { plans } from "../judgements/plans";

const species = (id: string) => {
  const found = speciesById(id);
  if (!found) throw new Error(`No species has the id ${id}.`);
  return found;
};

/** Pairs of which rules speak that are silent on those plans, and prey on whose spines a hunter may choke. */
const pairs = [
  ["amatitlania-nigrofasciata", "carassius-auratus"], // season
  ["amatitlania-nigrofasciata", "gyrinocheilus-aymonieri"], // mucus-grazing
  ["amatitlania-nigrofasciata", "ancistrus-cirrhosus"], // territory-contest
  ["amatitlania-nigrofasciata", "betta-splendens"], // feeding-competition
  ["balantiocheilos-melanopterus", "hypancistrus-zebra"], // furnishing
  ["carassius-auratus", "trichogaster-lalius"], // planting
  ["amatitlania-nigrofasciata", "gastrodermus-hastatus"], // spines
] as const;

const tank = { base: { shape: "rectangle", length: 120, width: 40 }, height: 40 } as const;
const alone = (id: string, counts: Omit<Group, "species">): readonly Group[] => [
  { species: species(id), ...counts },
];

/** Verdicts in which each rule has something to say, of species that are named: whatever else the catalog holds. */
export const onEachRule: readonly Verdict[] = [
  ...Object.values(plans).map((plan) => assessPlan(plan)),
  ...pairs.map(([a, b]) => assessPair({ species: species(a) }, { species: species(b) })),
  assessPlan({ tank, groups: alone("amatitlania-nigrofasciata", { females: 2, raises: true }) }), // both-sexes
  assessPlan({ tank, groups: alone("dario-dario", { males: 2, females: 3 }) }), // plants
  assessPlan({
    tank,
    water: { temperature: 25, pH: 6, carbonateHardness: 8 },
    groups: alone("paracheirodon-innesi", { unsexed: 12 }),
  }), // carbon-dioxide
];
