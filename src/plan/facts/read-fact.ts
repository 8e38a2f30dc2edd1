import { decimal } from "../../decimal";
import { filterCapacity } from "../../load";
import type { CheckedPlan } from "../checked-plan";
import type { Numbers } from "../kin";
import type { PlannedFilter } from "../plan";
import { hasSettlingCompany, type settlingBy } from "./company";
import { offeringsFor, type takenBy } from "./offerings";
import type { TraitReader } from "./trait-reader";

/**
 * The facts of the tank and its water that a condition may be about, lengths and floor of the tank as they were given.
 * `undefined`: the plan does not say.
 */
export const tankFacts = {
  "tank.longestRun": ({ floor }: CheckedPlan) => floor.nominal.longestRun,
  "tank.footprint": ({ floor }: CheckedPlan) => floor.nominal.footprint,
  "tank.height": ({ height }: CheckedPlan) => height,
  "tank.lid": ({ tank }: CheckedPlan) => tank.lid,
  "tank.cover": ({ tank }: CheckedPlan) => tank.cover,
  "tank.openWater": ({ tank }: CheckedPlan) => tank.openWater ?? leftBy(tank.cover),
  "tank.openSurface": ({ tank }: CheckedPlan) => tank.openSurface,
  "tank.sightBreaks": ({ tank }: CheckedPlan) => tank.sightBreaks,
  "tank.substrate": ({ tank }: CheckedPlan) => tank.substrate,
  "tank.plants": ({ tank }: CheckedPlan) => tank.plants,
  "tank.flow.calmest": ({ tank }: CheckedPlan) => tank.flow?.calmest,
  "tank.flow.strongest": ({ tank }: CheckedPlan) => tank.flow?.strongest,
  "tank.filter.ripeArea": ({ tank }: CheckedPlan) => tank.filter && ripeArea(tank.filter),
  "water.temperature": ({ water }: CheckedPlan) => water.temperature,
  "water.hottest": ({ water }: CheckedPlan) => water.hottest,
  "water.coolest": ({ water }: CheckedPlan) => water.coolest,
  "water.pH": ({ water }: CheckedPlan) => water.pH,
  "water.generalHardness": ({ water }: CheckedPlan) => water.generalHardness,
  "water.salinity": ({ water }: CheckedPlan) => water.salinity ?? 0,
} as const;

/** What else rules may read of a plan. */
export const tankReadings = {
  "tank.width": ({ floor }: CheckedPlan) => floor.inner.width,
  "tank.innerFootprint": ({ floor }: CheckedPlan) => floor.inner.footprint,
  "tank.heightWithoutWater": ({ heightWithoutWater }: CheckedPlan) => heightWithoutWater,
  "tank.waterVolume": ({ geometry }: CheckedPlan) => geometry?.waterVolume,
  "tank.filledMass": ({ geometry }: CheckedPlan) => geometry?.filledMass,
  "tank.filter.age": ({ tank }: CheckedPlan) => tank.filter?.age,
  "water.carbonateHardness": ({ water }: CheckedPlan) => water.carbonateHardness,
  "water.statedSalinity": ({ water }: CheckedPlan) => water.salinity,
  offerings: ({ offerings }: CheckedPlan) => offerings,
  jurisdiction: ({ jurisdiction }: CheckedPlan) => jurisdiction,
} as const;

/** The traits that facts of groups may be read from. */
type ReadOfGroup = TraitReader<
  (typeof settlingBy)[number] | (typeof takenBy)[number] | "appearance.longFins" | "space.hides"
>;

interface OfGroup {
  readonly plan: CheckedPlan;
  /** The group's place among the parties. */
  readonly of: number;
  readonly trait: ReadOfGroup;
}

/** The facts of a group that a condition may be about; numbers are those of its species in the whole plan. */
export const groupFacts = {
  "group.count": (group: OfGroup) => numbersOf(group).count,
  "group.males": (group: OfGroup) => numbersOf(group).males,
  "group.females": (group: OfGroup) => numbersOf(group).females,
  "group.pairs": (group: OfGroup) => {
    const { males, females } = numbersOf(group);
    return males === undefined || females === undefined ? undefined : Math.min(males, females);
  },
  "group.femalesPerMale": (group: OfGroup) => {
    const { males, females } = numbersOf(group);
    return males && females !== undefined ? females / males : undefined;
  },
  "group.length": (group: OfGroup) => animalsOf(group)?.length,
  "group.sex": (group: OfGroup) => animalsOf(group)?.sex,
  "group.form": (group: OfGroup) => animalsOf(group)?.form ?? asSold,
  "group.grown": (group: OfGroup) => (animalsOf(group)?.stage ?? "adult") === "adult",
  "group.longFins": ({ of, trait }: OfGroup) => trait(of, "appearance.longFins"),
  "group.company": ({ plan, of, trait }: OfGroup) => hasSettlingCompany(plan, of, trait),
  "group.offerings": ({ plan, of, trait }: OfGroup) => offeringsFor(plan, of, trait),
  "tank.hides": ({ plan, of, trait }: OfGroup) => hidesFor(plan, of, trait),
} as const;

/** The word for the animal as it is usually sold, of no form. */
const asSold = "as-sold";

/** The name of a fact of a plan that a condition may be about. */
export type FactName = keyof typeof tankFacts | keyof typeof groupFacts;

/** What rules may read of a plan as a whole, by name, with the type of what they find. */
export interface PlanReadings extends TankFacts, TankReadings {}

type TankFacts = {
  readonly [Name in keyof typeof tankFacts]: ReturnType<(typeof tankFacts)[Name]>;
};
type TankReadings = {
  readonly [Name in keyof typeof tankReadings]: ReturnType<(typeof tankReadings)[Name]>;
};

/** Whether there is a fact of that name. */
export const isFact = (name: unknown): name is FactName =>
  typeof name === "string" && (Object.hasOwn(tankFacts, name) || Object.hasOwn(groupFacts, name));

/** Whether rules may read something of that name of a plan as a whole. */
export const isReading = (name: unknown): name is keyof PlanReadings =>
  typeof name === "string" && (Object.hasOwn(tankFacts, name) || Object.hasOwn(tankReadings, name));

/** Whether a fact is about a group. Told by its name, so that what only tells of facts need not ship how they are read. */
export const isOfGroup = (name: FactName): name is keyof typeof groupFacts =>
  name.startsWith("group.") || name === "tank.hides";

type AnswerTo<Name extends FactName> = Name extends keyof typeof tankFacts
  ? ReturnType<(typeof tankFacts)[Name]>
  : Name extends keyof typeof groupFacts
    ? ReturnType<(typeof groupFacts)[Name]>
    : never;

/** The facts that are answered in words or with yes or no; all others are numbers. */
export type WordedFact = {
  [Name in FactName]: AnswerTo<Name> extends number | undefined ? never : Name;
}[FactName];

const worded: Readonly<Record<WordedFact, true>> = {
  "tank.lid": true,
  "tank.substrate": true,
  "tank.plants": true,
  "tank.flow.calmest": true,
  "tank.flow.strongest": true,
  "group.sex": true,
  "group.form": true,
  "group.grown": true,
  "group.longFins": true,
  "group.company": true,
  "group.offerings": true,
};

/** Whether a fact is answered in words or with yes or no rather than with a number. */
export const isWorded = (name: FactName): name is WordedFact => Object.hasOwn(worded, name);

/** The value of a fact of a plan; `undefined` where the plan does not say or a trait is not known. */
export function readFact(
  plan: CheckedPlan,
  on: FactName,
  of: number | undefined,
  trait: TraitReader,
): number | string | boolean | readonly string[] | undefined {
  if (!isOfGroup(on)) return tankFacts[on](plan);
  return of === undefined ? undefined : groupFacts[on]({ plan, of, trait });
}

/** What a rule may read of a plan as a whole. */
export function readPlan<Name extends keyof PlanReadings>(plan: CheckedPlan, name: Name): PlanReadings[Name] {
  const table: Readonly<Record<string, (plan: CheckedPlan) => unknown>> =
    name in tankFacts ? tankFacts : tankReadings;
  return table[name]?.(plan) as PlanReadings[Name];
}

const animalsOf = ({ plan, of }: OfGroup) => plan.parties[of]?.animals;
const numbersOf = (group: OfGroup): Numbers => animalsOf(group)?.kin ?? {};

/** How many of the tank's hiding places serve a party; unknown where the plan names none. */
function hidesFor({ tank: { hides } }: CheckedPlan, of: number, trait: ReadOfGroup): number | undefined {
  const needs = trait(of, "space.hides");
  if (!hides || !needs) return undefined;
  const kinds = new Set(needs.flatMap(({ anyOf }) => anyOf));
  return [...kinds].reduce((sum, kind) => sum + (hides[kind] ?? 0), 0);
}

/** The surface of media that are surely ripe, m². */
const ripeArea = (filter: PlannedFilter) => (filterCapacity(filter).min > 0 ? filter.mediaArea : 0);

/** The share that is surely open where a share is cover. */
const leftBy = (cover: number | undefined) => (cover === undefined ? undefined : decimal(1 - cover));
