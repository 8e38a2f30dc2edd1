import { allSpecies } from "vivary/catalog";
import { assessPair, assessPlan, type Verdict } from "../../src/compatibility";
import type { Party, Plan } from "../../src/plan";
import { applyForm } from "../../src/species";
import { samplePlans } from "../plan/arbitrary";
import { someOf } from "../runs";

/** Every species and every form of one. */
export const everyKind = allSpecies.flatMap((species) => [
  species,
  ...Object.keys(species.forms ?? {}).map((form) => applyForm(species, form)),
]);

const at = (index: number) => everyKind[index % everyKind.length] ?? everyKind[0];

/** What may be known of one of a pair beside its species. */
const parties: readonly Omit<Party, "species">[] = [
  {},
  { sex: "male" },
  { sex: "female", count: 2 },
  { stage: "juvenile", length: 2 },
];

/** How many kinds further on another one stands. */
const others = [0, 1, 23, 61, 97, 131, 167, 211];

/** Every kind beside itself or some others, adults and young, of one sex and of both. */
export const pairVerdicts: readonly Verdict[] = everyKind.flatMap((a, index) =>
  someOf(others, 4, index).flatMap((further) => {
    const b = at(index + further);
    if (!b) return [];
    const given = parties[(index + further) % parties.length];
    return [assessPair({ species: a, ...given }, { species: b })];
  }),
);

/** Plans of every sort, and one of each kind that says next to nothing, some of heated water. */
const plansToTell: readonly Plan[] = [
  ...samplePlans(150),
  ...everyKind.map(
    (species, index): Plan => ({
      tank: { base: { shape: "rectangle", length: 40 + (index % 5) * 40, width: 20 + (index % 3) * 20 } },
      ...(index % 3 === 0 && { water: { temperature: 26 } }),
      groups: [{ species, ...(index % 2 ? { males: 2, females: 3 } : { unsexed: 6 }) }],
    }),
  ),
];

export const planVerdicts: readonly Verdict[] = plansToTell.map((plan) => assessPlan(plan));
