import { decimal } from "../../decimal";
import { ripening } from "../../load/inner";
import type { FactName, Group, Offering, Plan, PlannedTank, PlannedWater, Wanted } from "../../plan";
import { type CheckedPlan, checkedPlan, mostPlaces, speciesOf } from "../../plan/inner";
import type { PartialRange } from "../../ranges";
import { type FlowClass, factAt, type Sex, type SpeciesProfile } from "../../species";
import { currents } from "../../species/inner";
import { convert } from "../../units";
import { malesAreRivals } from "../animals/males-are-rivals";
import { offeringsTaken } from "../animals/offerings-taken";
import { staplesOf } from "../animals/staples";
import type { ThresholdValues } from "../threshold-values";
import type { JointCondition } from "../verdict/verdict";
import { waterFigure } from "./water-figure";

/** What a plan is changed by, beside the condition. */
interface Choosing {
  /** Of which sex a group has to be, by its place in the plan; undefined where that is free. */
  readonly sexOf?: (of: number) => Sex | undefined;
  /** The species of which a group settles the shy ones. */
  readonly calm?: SpeciesProfile | undefined;
  /** Numbers to decide by, where they are not the library's own. */
  readonly thresholds?: Partial<ThresholdValues> | undefined;
}

/**
 * A plan changed so that it meets a condition, in the facts that the condition names alone; unchanged where this knows no
 * way. The tank grows and never shrinks, groups grow and never lose an animal.
 */
export function meeting(plan: Plan, condition: JointCondition, choosing: Choosing = {}): Plan {
  const { sexOf, calm, thresholds } = choosing;
  const { on, of, wanted } = condition;
  if (isOfTank(on)) return { ...plan, tank: tankWith(plan, on, wanted) };
  if (isOfWater(on)) return { ...plan, water: waterWith(plan, on, condition, thresholds) };
  if (on === "tank.hides") return withHides(plan, of ?? 0, leastOf(wanted));
  if (on === "group.company") return withCompany(plan, calm);
  if (on === "group.offerings") return withOffering(plan, of ?? 0, wanted);
  const groups = plan.groups.map((group, index) =>
    index === of
      ? groupWith(group, on, wanted, checkedPlan(plan).parties[index], () => sexOf?.(index))
      : group,
  );
  return { ...plan, groups };
}

type FactOfTank = Exclude<Extract<FactName, `tank.${string}`>, "tank.hides">;
type FactOfWater = Extract<FactName, `water.${string}`>;
type FactOfAnimals = Exclude<
  FactName,
  FactOfTank | FactOfWater | "tank.hides" | "group.company" | "group.offerings"
>;

const isOfTank = (on: FactName): on is FactOfTank => on.startsWith("tank.") && on !== "tank.hides";
const isOfWater = (on: FactName): on is FactOfWater => on.startsWith("water.");

const leastOf = (wanted: Wanted): number => ("oneOf" in wanted ? 0 : (wanted.min ?? wanted.max ?? 0));
const wordOf = (wanted: Wanted) => ("oneOf" in wanted ? wanted.oneOf[0] : undefined);

function tankWith(plan: Plan, on: FactOfTank, wanted: Wanted): PlannedTank {
  const { tank } = plan;
  const least = leastOf(wanted);
  switch (on) {
    case "tank.longestRun":
      return largerTank(plan, { run: least, area: 0 });
    case "tank.footprint":
      return largerTank(plan, { run: 0, area: least });
    case "tank.height":
      return { ...tank, height: sizedIn(tank, least) };
    case "tank.cover":
      return { ...tank, cover: least, ...leftBeside("openWater", tank.openWater, least) };
    case "tank.openWater":
      return { ...tank, openWater: least, ...leftBeside("cover", tank.cover, least) };
    case "tank.openSurface":
      return { ...tank, openSurface: least };
    case "tank.sightBreaks":
      return { ...tank, sightBreaks: Math.min(least, mostPlaces) };
    case "tank.lid":
      return { ...tank, lid: wordOf(wanted) === true };
    case "tank.substrate":
      return { ...tank, substrate: wordOf(wanted) as PlannedTank["substrate"] };
    case "tank.plants":
      return { ...tank, plants: wordOf(wanted) as PlannedTank["plants"] };
    case "tank.filter.ripeArea":
      return { ...tank, filter: filterWith(tank.filter, least) };
    case "tank.flow.calmest":
      return { ...tank, flow: flowWith(tank.flow, "calmest", wanted) };
    case "tank.flow.strongest":
      return { ...tank, flow: flowWith(tank.flow, "strongest", wanted) };
  }
}

/** What is cover is not free to swim in: what is left of the one share beside the other. */
export const leftBeside = (name: "cover" | "openWater", share: number | undefined, other: number) =>
  share === undefined ? {} : { [name]: Math.min(share, decimal(1 - other)) };

/** A ripe filter with at least so much media. */
const filterWith = (filter: PlannedTank["filter"], least: number): PlannedTank["filter"] => ({
  mediaArea: Math.max(filter?.mediaArea ?? 0, roundedUp(least)),
  age: Math.max(filter?.age ?? 0, ripening.max),
});

/** A rectangle at least as long, as wide and as large as the tank was, with this run and floor. */
function largerTank(plan: Plan, { run, area }: { readonly run: number; readonly area: number }): PlannedTank {
  const { floor } = checkedPlan(plan);
  const wide = Math.max(floor.inner.width, floor.nominal.footprint / floor.nominal.longestRun);
  const length = Math.max(floor.nominal.longestRun, run, Math.sqrt(area));
  const width = Math.max(wide, area / length);
  const base = {
    shape: "rectangle",
    length: sizedIn(plan.tank, length),
    width: sizedIn(plan.tank, width),
  } as const;
  return { ...plan.tank, base };
}

/** A measure of a tank in its unit, of metres to the next hundredth. */
const sizedIn = ({ unit = "cm" }: PlannedTank, cm: number) =>
  roundedUp(convert(cm, "cm", unit), unit === "m" ? 100 : 10);

/** To the next tenth, so that what is asked is there after converting it back. */
const roundedUp = (figure: number, parts = 10) => Math.ceil(decimal(figure * parts)) / parts;

type Flow = NonNullable<PlannedTank["flow"]>;

/** A calmest or a strongest current as wanted, the other one as it was as far as that goes with it. */
function flowWith(flow: PlannedTank["flow"], end: keyof Flow, wanted: Wanted): Flow {
  const words = ("oneOf" in wanted ? wanted.oneOf : []) as readonly FlowClass[];
  const current = (end === "calmest" ? words.at(-1) : words[0]) ?? "gentle";
  const other = end === "calmest" ? flow?.strongest : flow?.calmest;
  const order = (some: FlowClass) => currents.indexOf(some);
  if (end === "calmest") {
    const strongest = other && order(other) >= order(current) ? other : current;
    return { calmest: current, strongest };
  }
  return { calmest: other && order(other) <= order(current) ? other : current, strongest: current };
}

function waterWith(
  plan: Plan,
  on: FactOfWater,
  { wanted, aim }: JointCondition,
  thresholds: Choosing["thresholds"],
): PlannedWater {
  const { water = {} } = plan;
  if ("oneOf" in wanted) return water;
  const { temperature, hottest, coolest } = water;
  if (on === "water.hottest") {
    const figure = nearest(hottest ?? temperature, wanted);
    return { ...water, hottest: Math.max(figure, temperature ?? figure) };
  }
  if (on === "water.coolest") {
    const figure = nearest(coolest ?? temperature, wanted);
    return { ...water, coolest: Math.min(figure, temperature ?? figure) };
  }
  const axis = axisOf[on];
  const figure = waterFigure(axis, plan, { wanted, ...(aim && { aim }) }, thresholds);
  if (axis !== "temperature") return { ...water, [axis]: figure };
  return {
    ...water,
    temperature: figure,
    ...(hottest !== undefined && { hottest: Math.max(hottest, figure) }),
    ...(coolest !== undefined && { coolest: Math.min(coolest, figure) }),
  };
}

const axisOf = {
  "water.temperature": "temperature",
  "water.pH": "pH",
  "water.generalHardness": "generalHardness",
  "water.salinity": "salinity",
} as const;

/** What of a span lies nearest to a figure; without one an end of it. */
const nearest = (figure: number | undefined, { min, max }: PartialRange): number =>
  Math.min(Math.max(figure ?? min ?? max ?? 0, min ?? -Infinity), max ?? Infinity);

type PartyOf = CheckedPlan["parties"][number] | undefined;

function groupWith(
  group: Group,
  on: FactOfAnimals,
  wanted: Wanted,
  party: PartyOf,
  sexAsked: () => Sex | undefined,
): Group {
  const least = leastOf(wanted);
  const { count = 0, males, some } = party?.animals.kin ?? {};
  switch (on) {
    case "group.count":
      return withMore(group, Math.max(least - count, 0), party, sexAsked);
    case "group.femalesPerMale":
      return withMates(group, least, { count, males: males ?? some?.male ?? 0 });
    case "group.length":
      return { ...group, length: least };
    case "group.sex":
      return ofSex(group, wordOf(wanted) === "male" ? "males" : "females");
    case "group.males":
    case "group.females":
    case "group.pairs":
    case "group.form":
    case "group.grown":
    case "group.longFins":
      return group;
  }
}

/**
 * More of its kind: where the sexes are known females, unless they have to be males, or several males that are no rivals
 * live without females, and no young are wanted: that may be by choice (common practice, no source).
 */
function withMore(group: Group, more: number, party: PartyOf, sexAsked: () => Sex | undefined): Group {
  const { males = 0, females = 0, unsexed = 0, juveniles = 0 } = group;
  if (unsexed > 0) return { ...group, unsexed: unsexed + more };
  if (juveniles > 0) return { ...group, juveniles: juveniles + more };
  if (females === 0 && males === 0) return { ...group, unsexed: more };
  const asked = females === 0 ? sexAsked() : "female";
  const isByChoice = males > 1 && !group.raises && party?.animals.kin.mayHave.female === false;
  const staysMale = asked === undefined && isByChoice && !malesAreRivals(speciesOf(group));
  return asked === "male" || staysMale
    ? { ...group, males: males + more }
    : { ...group, females: females + more };
}

/** As many more females as are too few to each male, were all others that are there female. */
function withMates(
  group: Group,
  least: number,
  { count, males }: { readonly count: number; readonly males: number },
): Group {
  const others = count - males;
  return { ...group, females: (group.females ?? 0) + Math.max(Math.ceil(least * males) - others, 0) };
}

/** Animals of which the plan does not say of which sex they are, as animals of one. */
function ofSex({ unsexed = 0, juveniles = 0, ...group }: Group, sex: "males" | "females"): Group {
  return { ...group, [sex]: (group[sex] ?? 0) + unsexed + juveniles };
}

/** Places to hide, of the first kind that serves the group. */
function withHides(plan: Plan, of: number, least: number): Plan {
  const needs = plan.groups[of] && factAt(profileOf(plan, of), "space.hides")?.value;
  const kinds = new Set(needs?.flatMap(({ anyOf }) => anyOf));
  const [first] = kinds;
  if (!first) return plan;
  const { hides = {} } = plan.tank;
  const there = [...kinds].reduce((sum, kind) => sum + (hides[kind] ?? 0), 0);
  const wanted = (hides[first] ?? 0) + Math.max(least - there, 0);
  return { ...plan, tank: { ...plan.tank, hides: { ...hides, [first]: Math.min(wanted, mostPlaces) } } };
}

/** The plainest offering that meets it: of a food that can be the whole diet of the group, where that does. */
function withOffering(plan: Plan, of: number, wanted: Wanted): Plan {
  const profile = profileOf(plan, of);
  const words: readonly unknown[] = "oneOf" in wanted ? wanted.oneOf : [];
  const meets = ({ food, place, light, apart }: Offering) =>
    [food, place, light, apart && "apart"].some((word) => words.includes(word));
  const found = offeringsTaken([profile]).filter(meets);
  const staples = staplesOf(profile) ?? [];
  const plainest = found.find(({ food }) => staples.includes(food)) ?? found[0];
  return plainest ? { ...plan, offerings: [...(plan.offerings ?? []), plainest] } : plan;
}

/** A calm species more, in the number that its kind needs. */
function withCompany(plan: Plan, calm: SpeciesProfile | undefined): Plan {
  if (!calm) return plan;
  const unsexed = factAt(calm, "social.group")?.value.least ?? 1;
  return { ...plan, groups: [...plan.groups, { species: calm, unsexed }] };
}

const profileOf = (plan: Plan, of: number) =>
  checkedPlan(plan).parties[of]?.species ?? (plan.groups[of] as Group).species;
