import { allSpecies } from "vivary/catalog";
import { assessPair, assessPlan, type Verdict } from "../../src/compatibility";
import type { Party, Plan } from "../../src/plan";
import { applyForm, type SpeciesProfile } from "../../src/species";
import { drawing, hashOf, pick } from "../drawn";
import { samplePlans } from "../plan/arbitrary";

/** Every species and every form of one. */
export const everyKind = allSpecies.flatMap((species) => [
  species,
  ...Object.keys(species.forms ?? {}).map((form) => applyForm(species, form)),
]);

const nameOf = ({ id, form = "" }: SpeciesProfile) => `${id} ${form}`;
const draw = drawing(everyKind, nameOf);

/** What may be known of one of a pair beside its species. */
const parties: readonly [Omit<Party, "species">, ...Omit<Party, "species">[]] = [
  {},
  { sex: "male" },
  { sex: "female", count: 2 },
  { stage: "juvenile", length: 2 },
];

/** Every kind beside itself and some that its name draws, adults and young, of one sex and of both. */
export const pairVerdicts: readonly Verdict[] = everyKind.flatMap((a) =>
  [a, ...[1, 2, 3].map((number) => draw(hashOf(`${nameOf(a)} ${number}`)))].map((b) =>
    assessPair({ species: a, ...pick(parties, `${nameOf(a)} beside ${nameOf(b)}`) }, { species: b }),
  ),
);

/** What tells a verdict from most others: who is judged, and how many. */
export const nameOfVerdict = ({ parties }: Verdict): string =>
  JSON.stringify(parties.map(({ names: _, ...party }) => party));

/** Plans of every sort, and one of each kind that says next to nothing, some of heated water. */
const plansToTell: readonly Plan[] = [
  ...samplePlans(150),
  ...everyKind.map((species): Plan => {
    const name = nameOf(species);
    const base = {
      shape: "rectangle",
      length: pick([40, 80, 120, 160, 200], `length for ${name}`),
      width: pick([20, 40, 60], `width for ${name}`),
    } as const;
    const water = pick([{ temperature: 26 }, undefined, undefined], `water for ${name}`);
    const count = pick([{ males: 2, females: 3 }, { unsexed: 6 }], `how many of ${name}`);
    return { tank: { base }, ...(water && { water }), groups: [{ species, ...count }] };
  }),
];

export const planVerdicts: readonly Verdict[] = plansToTell.map((plan) => assessPlan(plan));
