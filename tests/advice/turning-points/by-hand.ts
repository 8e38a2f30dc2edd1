// Plans with one fact changed, each as a keeper would change it: by nothing of how turning points are found.
import type { Stretch, TurningFact, TurningOptions } from "../../../src/advice";
import { assessPlan, type Outcome } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { type TankBase, tankFloor } from "../../../src/tank";

/** A base so many times as long, in its shape: every number of it is a length, but for an angle. */
const scaled = (base: TankBase, times: number): TankBase =>
  JSON.parse(
    JSON.stringify(base, (name, value) =>
      typeof value === "number" && name !== "angle" ? value * times : value,
    ),
  );

/** Centimetres of each unit: the inch by international agreement of 1959. */
const centimetres = { mm: 0.1, cm: 1, m: 100, in: 2.54, ft: 30.48 } as const;

/** The base with another longest run, cm: of a rectangle the longer side alone is changed. */
function withRun(tank: Plan["tank"], run: number): TankBase {
  const { base, unit = "cm" } = tank;
  if (base.shape !== "rectangle") return scaled(base, run / tankFloor(tank).nominal.longestRun);
  const side = run / centimetres[unit];
  return base.length < base.width ? { ...base, width: side } : { ...base, length: side };
}

/** The plan with a fact at a number; of groups whose sexes are not told. */
function withFact(plan: Plan, { on, of = 0 }: TurningOptions, at: number): Plan {
  const { tank, water = {}, groups } = plan;
  const withTank = (changed: Partial<Plan["tank"]>): Plan => ({ ...plan, tank: { ...tank, ...changed } });
  const withGroup = (changed: Partial<Group>): Plan => ({
    ...plan,
    groups: groups.map((group, index) => (index === of ? { ...group, ...changed } : group)),
  });
  switch (on) {
    case "tank.longestRun":
      return withTank({ base: withRun(tank, at) });
    case "tank.footprint":
      return withTank({ base: scaled(tank.base, Math.sqrt(at / tankFloor(tank).nominal.footprint)) });
    case "tank.cover":
      return withTank({
        cover: at,
        ...(tank.openWater !== undefined && { openWater: Math.min(tank.openWater, 1 - at) }),
      });
    case "water.temperature": {
      const { hottest, coolest } = water;
      const seasons = {
        ...(hottest !== undefined && { hottest: Math.max(hottest, at) }),
        ...(coolest !== undefined && { coolest: Math.min(coolest, at) }),
      };
      return { ...plan, water: { ...water, ...seasons, temperature: at } };
    }
    case "water.pH":
      return { ...plan, water: { ...water, pH: at } };
    case "water.generalHardness":
      return { ...plan, water: { ...water, generalHardness: at } };
    case "group.count":
      return withGroup({ unsexed: at });
    case "group.length":
      return withGroup({ length: at });
    default:
      throw new Error(on);
  }
}

/** How far from a told point its outcomes are looked at, as a share of the span. */
const beside = 1e-7;

/** What of some stretches is not so: ends that do not meet, outcomes beside their ends, and changes that nobody tells of. */
export function faultsOf(plan: Plan, options: TurningOptions, stretches: readonly Stretch[], grid: number) {
  const spans = stretches.map(({ from, to, outcome }) => ({ from: Number(from), to: Number(to), outcome }));
  const [first, last] = [spans[0]?.from ?? Number.NaN, spans.at(-1)?.to ?? Number.NaN];
  const inSteps = options.on === "group.count";
  const outcomeAt = (at: number): Outcome => assessPlan(withFact(plan, options, at)).outcome;
  const faults: string[] = [];
  const expectAt = (at: number, expected: readonly Outcome[]) => {
    const outcome = outcomeAt(at);
    if (!expected.includes(outcome))
      faults.push(`${options.on} ${at}: ${outcome}, told ${expected.join(" or ")}`);
  };
  for (const [index, { from, to, outcome }] of spans.entries()) {
    const before = spans[index - 1];
    const isPoint = from === to;
    if (before && before.to + (inSteps ? 1 : 0) !== from) faults.push(`${before.to} does not meet ${from}`);
    if (before && before.outcome === outcome) faults.push(`nothing changes at ${from}`);
    if (before) expectAt(from, inSteps ? [outcome] : [before.outcome, outcome]);
    if (inSteps) expectAt(to, [outcome]);
    const step = inSteps ? 0 : Math.min(beside * (last - first), (to - from) / 3);
    if (!isPoint) for (const at of [from + step, to - step]) expectAt(at, [outcome]);
  }
  for (let place = 0; place <= grid; place += 1) {
    const exact = first + ((last - first) * place) / grid;
    const at = inSteps ? Math.round(exact) : exact;
    expectAt(
      at,
      spans.filter(({ from, to }) => at >= from && at <= to).map(({ outcome }) => outcome),
    );
  }
  return { faults, turns: spans.length - 1 };
}

/** What is followed of any plan. */
export const followed: readonly { readonly on: TurningFact; readonly of?: number }[] = [
  { on: "tank.longestRun" },
  { on: "tank.footprint" },
  { on: "tank.cover" },
  { on: "water.temperature" },
  { on: "water.pH" },
  { on: "water.generalHardness" },
  { on: "group.count", of: 0 },
  { on: "group.length", of: 0 },
  { on: "group.length", of: 1 },
];
