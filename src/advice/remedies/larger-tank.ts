import type { JointCondition, Planner, Verdict } from "../../compatibility";
import { meeting, roomy } from "../../compatibility/inner";
import { type FactName, facts, isMet, type Plan, type PlannedTank } from "../../plan";
import { checkedPlan } from "../../plan/inner";
import { convert } from "../../units";
import { asSold, notMuchLarger } from "./as-sold";
import { kindOf } from "./kind-of";

/** A plan in a tank that has room, and what its animals ask for of that. */
export interface Roomier {
  readonly planner: Planner;
  readonly asked: readonly JointCondition[];
}

/**
 * The plan in a rectangle that is at least as long, wide, high and large as the tank was and has all the room that its
 * animals ask for: the least, or one that is sold, where that is not much larger and rules nothing out. What they ask is
 * read where nothing is short of room: in a tank far too small nothing is asked, since it is ruled out.
 */
export function inLargerTank(now: Planner): Roomier {
  const { unit = "cm" } = now.plan.tank;
  const sized = (cm: number) => convert(cm, "cm", unit);
  const base = {
    shape: "rectangle",
    length: sized(roomy.base.length),
    width: sized(roomy.base.width),
  } as const;
  const inRoom = now.with({ tank: { base } }).verdict;
  const ruledOut = blocks(inRoom);
  const asked = roomAsked(inRoom);
  const inTankOf = (tank: PlannedTank) => now.with({ tank });
  const isNarrow = ({ verdict }: Planner) => blocks(verdict).some((one) => !ruledOut.includes(one));
  const given = (plan: Plan, condition: JointCondition) =>
    isMet(condition, plan) === true ? plan : meeting(plan, condition);
  const grown = asked.reduce(given, now.plan);
  const keepsBase = grown.tank.base === now.plan.tank.base;
  const fitting = inTankOf(keepsBase ? grown.tank : inWholeUnits(grown.tank));
  if (keepsBase && !isNarrow(fitting)) return { planner: fitting, asked };
  const least = isNarrow(fitting) ? wideEnough(grown, inTankOf, isNarrow) : fitting;
  const hasAll = (plan: Plan) => asked.every((condition) => isMet(condition, plan) === true);
  for (const tank of asSold(least.plan.tank, checkedPlan(now.plan).floor.nominal)) {
    if (!hasAll({ ...now.plan, tank })) continue;
    const sold = inTankOf(tank);
    if (!isNarrow(sold)) return { planner: sold, asked };
  }
  return { planner: least, asked };
}

/** The least run, floor and height that all ask for. */
function roomAsked(verdict: Verdict): readonly JointCondition[] {
  const least = new Map<FactName, number>();
  for (const { on, min } of askedOfRoom(verdict)) least.set(on, Math.max(least.get(on) ?? 0, min));
  return [...least].map(([on, min]) => ({ on, wanted: { min, unit: facts[on].unit }, findings: [] }));
}

/** Each run, floor and height that is asked for, and for whom. */
const askedOfRoom = ({ findings, met }: Verdict) =>
  [...findings, ...met].flatMap((finding) => {
    if (finding.weight !== "restricting") return [];
    const { on, wanted } = finding.condition;
    if (kindOf(on) !== "tank" || "oneOf" in wanted) return [];
    return [{ on, min: wanted.min ?? 0, parties: [finding.from, finding.to] }];
  });

/** The groups, by index, without which a much smaller tank might do: those that ask for the most room, or nearly. */
export function roomiest(verdict: Verdict): ReadonlySet<number | undefined> {
  const asked = askedOfRoom(verdict);
  const most = (on: FactName) => Math.max(...asked.map((one) => (one.on === on ? one.min : 0)));
  return new Set(asked.flatMap(({ on, min, parties }) => (min * notMuchLarger >= most(on) ? parties : [])));
}

/** A tank with the sides of its rectangle rounded up, so that one can measure them. */
function inWholeUnits(tank: PlannedTank): PlannedTank {
  const { base, unit } = tank;
  if (base.shape !== "rectangle" || unit === "m" || unit === "ft") return tank;
  return { ...tank, base: { ...base, length: Math.ceil(base.length), width: Math.ceil(base.width) } };
}

/** What rules a plan out, each with whom it concerns. */
const blocks = ({ findings }: Verdict) =>
  findings
    .filter(({ weight }) => weight === "blocking")
    .map(({ rule, from, to }) => JSON.stringify([rule, from, to]));

/** The plan in the narrowest tank of that length, in whole centimetres, in which nothing is ruled out for want of width. */
function wideEnough(
  plan: Plan,
  inTankOf: (tank: PlannedTank) => Planner,
  isNarrow: (planner: Planner) => boolean,
): Planner {
  const { longestRun, footprint } = checkedPlan(plan).floor.nominal;
  const ofWidth = (width: number) =>
    inTankOf(
      inWholeUnits(
        meeting(plan, { on: "tank.footprint", wanted: { min: longestRun * width }, findings: [] }).tank,
      ),
    );
  let [narrow, wide] = [Math.floor(footprint / longestRun), roomy.base.width];
  while (wide - narrow > 1) {
    const middle = Math.floor((narrow + wide) / 2);
    if (isNarrow(ofWidth(middle))) narrow = middle;
    else wide = middle;
  }
  return ofWidth(wide);
}
