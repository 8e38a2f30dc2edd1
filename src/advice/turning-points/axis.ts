import { finite, oneOf } from "../../checks";
import type { PlanChange } from "../../compatibility";
import { leftBeside } from "../../compatibility/inner";
import { refusal } from "../../errors";
import { type FactName, type FactUnit, facts, type Group, type Plan } from "../../plan";
import { checkedPlan, speciesOf } from "../../plan/inner";
import type { Range } from "../../ranges";
import { ends } from "../../ranges/inner";
import { type FlowClass, factAt } from "../../species";
import { currents } from "../../species/inner";
import { counted } from "../counted";
import { leastSize, longer, scaledTo } from "./resized";

/** The facts of a plan along which an outcome can be followed. */
export type TurningFact = Extract<
  FactName,
  | "tank.longestRun"
  | "tank.footprint"
  | "tank.cover"
  | "tank.flow.calmest"
  | "tank.flow.strongest"
  | "water.temperature"
  | "water.pH"
  | "water.generalHardness"
  | "group.count"
  | "group.length"
>;

/** What a caller asks to follow. */
export interface Followed {
  /** The fact that is varied. */
  readonly on: TurningFact;
  /** The group it is about, by its place in the plan; of facts of groups alone. */
  readonly of?: number | undefined;
  /** From where to where, both ends included, in the fact's unit. Currents are all tried. */
  readonly span?: Range | undefined;
}

/** A fact that is varied, by a number. */
export interface Axis {
  readonly min: number;
  readonly max: number;
  /** Whether only whole numbers count. */
  readonly goesInSteps: boolean;
  readonly unit: FactUnit | undefined;
  /** What is different in the plan at a number. */
  readonly at: (number: number) => PlanChange;
  /** What the number stands for. */
  readonly told: (number: number) => number | FlowClass;
}

const facing: readonly TurningFact[] = [
  "tank.longestRun",
  "tank.footprint",
  "tank.cover",
  "tank.flow.calmest",
  "tank.flow.strongest",
  "water.temperature",
  "water.pH",
  "water.generalHardness",
  "group.count",
  "group.length",
];

/** The most animals of a group that are tried. */
const mostAnimals = 1000;

/**
 * The axis of a fact of a plan.
 *
 * @throws InvalidInputError where the plan has none such, or the span is none.
 */
export function axisOf(plan: Plan, followed: Followed): Axis {
  const { on, of, span } = followed;
  oneOf(on, facing, "options.on");
  const isOfGroup = on === "group.count" || on === "group.length";
  const group = of === undefined ? undefined : plan.groups[of];
  if (isOfGroup && !group)
    throw refusal("options.of", `the index of one of ${plan.groups.length} groups`, of, "range");
  if (!isOfGroup && of !== undefined)
    throw refusal("options.of", "nothing, since it is about the tank", of, "range");
  if (on === "tank.flow.calmest" || on === "tank.flow.strongest") return currentAxis(plan, on, span);
  const { min, max } = spanOf(span) ?? usualSpan(plan, on, group);
  const axis = { min, max, goesInSteps: on === "group.count", unit: facts[on].unit, told: asNumber };
  const ofGroup = (changed: Partial<Group>): PlanChange => ({ groups: { [of ?? 0]: changed } });
  switch (on) {
    case "tank.longestRun":
      if (min < otherSide(plan))
        throw refusal("options.span.min", "no less than the other side", min, "range");
      return { ...axis, at: (run) => ({ tank: { base: longer(plan, run) } }) };
    case "tank.footprint":
      return { ...axis, at: (area) => ({ tank: { base: scaledTo(plan, { area }) } }) };
    case "tank.cover":
      return {
        ...axis,
        at: (cover) => ({ tank: { cover, ...leftBeside("openWater", plan.tank.openWater, cover) } }),
      };
    case "group.count":
      if (max > mostAnimals)
        throw refusal("options.span.max", `at most ${mostAnimals} animals`, max, "range");
      if (Math.ceil(min) > max) throw refusal("options.span", "a whole number in it", span, "range");
      return {
        ...axis,
        min: Math.ceil(min),
        max: Math.floor(max),
        at: (count) => ofGroup(counted(group as Group, count)),
      };
    case "group.length":
      return { ...axis, at: (length) => ofGroup({ length }) };
    case "water.temperature":
      return {
        ...axis,
        at: (temperature) => ({ water: { temperature, ...seasonsAbout(plan, temperature) } }),
      };
    case "water.pH":
      return { ...axis, at: (pH) => ({ water: { pH } }) };
    default:
      return { ...axis, at: (generalHardness) => ({ water: { generalHardness } }) };
  }
}

const asNumber = (number: number) => number;

function spanOf(span: Range | undefined): Range | undefined {
  if (span === undefined) return undefined;
  ends(span, "options.span");
  return { min: finite(span.min, "options.span.min"), max: finite(span.max, "options.span.max") };
}

/** All currents, by their place from still to strong; the other end of the tank's goes along where it has to. */
function currentAxis(plan: Plan, on: TurningFact, span: Range | undefined): Axis {
  if (span !== undefined)
    throw refusal("options.span", "nothing, since all currents are tried", span, "conflict");
  const place = (current: FlowClass | undefined, other: number) =>
    current ? currents.indexOf(current) : other;
  const told = (number: number) => currents[number] as FlowClass;
  const { calmest, strongest } = plan.tank.flow ?? {};
  const at = (number: number): PlanChange => {
    const ends =
      on === "tank.flow.calmest"
        ? [number, Math.max(number, place(strongest, number))]
        : [Math.min(number, place(calmest, number)), number];
    const [least = number, most = number] = ends;
    return { tank: { flow: { calmest: told(least), strongest: told(most) } } };
  };
  return { min: 0, max: currents.length - 1, goesInSteps: true, unit: undefined, at, told };
}

/** From where to where a fact is followed if nobody says: what aquaria have. */
function usualSpan(plan: Plan, on: TurningFact, group: Group | undefined): Range {
  const lengths = group ? (factAt(speciesOf(group), "size.adultLength")?.value ?? []) : [];
  switch (on) {
    case "tank.longestRun": {
      const min = otherSide(plan) || leastSize(plan, "run", { from: 1, step: 1 });
      return { min, max: Math.max(500, 2 * min) };
    }
    case "tank.footprint":
      return { min: leastSize(plan, "area", { from: 200, step: 100 }), max: 100_000 };
    case "tank.cover":
      return { min: 0, max: 1 };
    case "water.temperature":
      return { min: 4, max: 36 };
    case "water.pH":
      return { min: 4, max: 9.5 };
    case "water.generalHardness":
      return { min: 0, max: 30 };
    case "group.count":
      return { min: 1, max: 50 };
    default:
      return { min: 0.5, max: Math.ceil(Math.max(1, ...lengths.map(({ total }) => total.max))) };
  }
}

/** The side of a rectangle that is not its longest run, cm; of another base none, 0. */
function otherSide(plan: Plan): number {
  return plan.tank.base.shape === "rectangle" ? checkedPlan(plan).floor.nominal.width : 0;
}

/** The hottest day is no cooler than usual, the coolest season no warmer. */
function seasonsAbout({ water = {} }: Plan, temperature: number) {
  const { hottest, coolest } = water;
  return {
    ...(hottest !== undefined && { hottest: Math.max(hottest, temperature) }),
    ...(coolest !== undefined && { coolest: Math.min(coolest, temperature) }),
  };
}
