import { type EntryOrder, type EntryStep, entryOrder, type NoEntryOrder } from "../../../src/advice";
import type { EntryOrderOptions } from "../../../src/advice/entry-order/entry-order";
import { predation } from "../../../src/compatibility/rules/pair/predation";
import { plants } from "../../../src/compatibility/rules/plan/plants";
import { plantsAtRisk } from "../../../src/compatibility/rules/plan/plants-at-risk";
import { settlingCompany } from "../../../src/compatibility/rules/plan/settling-company";
import type { Group, Plan } from "../../../src/plan";
import { adults, animal, type Stated } from "../../compatibility/animals";
import { type Changes, planOf } from "../../compatibility/judging";

/** Rules by which the order of entry matters. */
export const rules = [predation, settlingCompany, plants, plantsAtRisk];

/** Settles others, is settled by itself, eats nobody, defends nothing and leaves plants alone. */
const calm: Stated = {
  "social.settledBy": false,
  "social.settles": true,
  "social.group": { least: 6 },
  "social.living": "shoal",
  "size.adultLength": adults(5),
  "size.bodyShape": "fusiform",
  "space.zones": ["midwater"],
  "space.territory": "none",
  "space.grownInPlants": false,
  "predation.eats": [],
  "reproduction.mode": "scatters-eggs",
  "effects.digs": false,
  "effects.uproots": false,
  "effects.eatsPlants": false,
};

/** Six calm animals, but for what is stated. */
export const newcomer = (
  id: string,
  stated: Stated = {},
  group: Omit<Group, "species"> = { unsexed: 6 },
) => ({
  species: animal(id, { ...calm, ...stated }),
  ...group,
});

/** Needs calm company. */
export const shy: Stated = { "social.settledBy": true, "social.settles": false };

/** Defends a place. */
export const defender: Stated = { "space.territory": { area: 900, zone: "bottom", holder: "pair" } };

/** Takes fish up to 2 cm. */
export const hunter: Stated = {
  "predation.eats": [{ prey: "fish", greatest: 2 }],
  "size.adultLength": adults(15),
  "space.zones": ["surface"],
};

/** The order by these rules, in a tank whose filter is a year old if nothing else is said. */
export function orderOf(
  groups: readonly Group[],
  { tank, ...changes }: Changes = {},
  options: EntryOrderOptions = {},
): EntryOrder | NoEntryOrder {
  const plan: Plan = planOf(groups, { ...changes, tank: { filter: { mediaArea: 20, age: 365 }, ...tank } });
  return entryOrder(plan, { rules, ...options });
}

/** The groups of each step, or the reason that there is none. */
export const groupsIn = (order: EntryOrder | NoEntryOrder) =>
  order.reason ?? order.steps.map(({ groups }) => groups);

/** The steps; a test fails where there are none. */
export function stepsIn({ steps, reason }: EntryOrder | NoEntryOrder): readonly EntryStep[] {
  if (!steps) throw new Error(`no order: ${reason}`);
  return steps;
}
