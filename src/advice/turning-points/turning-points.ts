import { objectOf } from "../../checks";
import { type AssessOptions, type Outcome, planner as plannerOf } from "../../compatibility";
import { decimal } from "../../decimal";
import { onceOfEach } from "../../made-once";
import type { Plan } from "../../plan";
import type { FlowClass } from "../../species";
import { type Axis, axisOf, type Followed } from "./axis";
import { candidates } from "./candidates";

/** What is followed, and by what is judged. */
export interface TurningOptions extends Followed, AssessOptions {}

/** A stretch over which the outcome stays the same. */
export interface Stretch {
  /** Where it begins, in the fact's unit; a current by its name. */
  readonly from: number | FlowClass;
  /** Where it ends. Of a fact that goes in steps, its last step; else the point from which on it is otherwise. */
  readonly to: number | FlowClass;
  /** As `assessPlan` has it of the plan with that value, all else being as it is. */
  readonly outcome: Outcome;
}

/** In so many places, evenly spread, the outcome is looked at whatever the findings tell. */
const places = 32;

/** In every so manieth of them the findings are read. */
const readEvery = 16;

/**
 * Where the outcome of a plan changes along one of its facts: the longest run of the tank (cm; of a rectangle the other side
 * stays, another base keeps its shape), its floor (cm², the shape kept), the share of cover, temperature (°C; hot days and
 * cool seasons move as far as they must), pH, hardness (°dH), the calmest or strongest current, the number of a group
 * (those of which there are most come or go first) or its length (cm). Stretch by stretch over the whole span; next to each
 * other they have different outcomes, and at the very point where they meet it is that of one of them. More room and fewer
 * animals are not assumed to help.
 *
 * The points are those at which the library's rules decide, exact but for the rounding of decimals; of an app's rules that tell
 * no such figure they are found to less than a millionth of the span, where a stretch is wider than a thirty-second of it.
 * Without a span: what aquaria have, 1 to 50 animals, lengths up to the greatest of the species.
 *
 * @throws InvalidInputError for what `assessPlan` refuses, a fact that cannot be followed, a group that is not there, and a
 * span that no plan can have.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { turningPoints } from "vivary/advice";
 *
 * const plan = {
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 } },
 *   groups: [{ species: danioRerio, unsexed: 10 }],
 * } as const;
 * const stretches = turningPoints(plan, { on: "tank.longestRun", span: { min: 40, max: 120 } });
 * stretches.map(({ outcome }) => outcome); // => ["conditional"]
 * ```
 */
export function turningPoints(plan: Plan, options: TurningOptions): readonly Stretch[] {
  const { on, of, span, ...assessing } = objectOf(options, "options");
  const planner = plannerOf(plan, assessing);
  const axis = axisOf(planner.plan, { on, of, span });
  const outcomeAt = onceOfEach((number: number) => planner.with(axis.at(number)).outcome);
  const read = (number: number) =>
    candidates(planner.with(axis.at(number)).verdict, { on, of }, axis, assessing);
  const samples = axis.goesInSteps ? wholeNumbers(axis) : samplesOf(axis, read);
  const turns = samples
    .slice(1)
    .flatMap((next, index) => turnsBetween(samples[index] ?? next, next, axis, outcomeAt));
  const begins = [{ next: axis.min, outcome: outcomeAt(axis.min) }, ...turns];
  return begins.map(({ next, outcome }, index) => ({
    from: axis.told(next),
    to: axis.told(turns[index]?.last ?? axis.max),
    outcome,
  }));
}

const wholeNumbers = ({ min, max }: Axis) => Array.from({ length: max - min + 1 }, (_, step) => min + step);

/** Where the outcome is looked at: in places evenly spread, wherever it may turn, and between these. */
function samplesOf({ min, max }: Axis, read: (number: number) => readonly number[]): readonly number[] {
  const spread = Array.from({ length: places + 1 }, (_, place) => min + ((max - min) * place) / places);
  const told = spread.filter((_, place) => place % readEvery === 0).flatMap(read);
  const within = new Set(told.map(decimal).filter((number) => number > min && number < max));
  const points = ascending([...within, ...spread]);
  const between = points.slice(1).flatMap((point, index) => {
    const last = points[index] ?? point;
    return within.has(point) || within.has(last) ? [(point + last) / 2] : [];
  });
  return ascending([...points, ...between]);
}

const ascending = (numbers: readonly number[]) => [...new Set(numbers)].sort((one, other) => one - other);

/** Where one outcome ends and another begins: at one point, or at two whole numbers beside each other. */
interface Turn {
  readonly last: number;
  readonly next: number;
  /** The one that begins. */
  readonly outcome: Outcome;
}

/** Where the outcome turns between two numbers: at one of them, if it does so right beside it. */
function turnsBetween(
  last: number,
  next: number,
  axis: Axis,
  outcomeAt: (number: number) => Outcome,
): readonly Turn[] {
  const [before, after] = [outcomeAt(last), outcomeAt(next)];
  if (before === after) return [];
  if (axis.goesInSteps) return [{ last, next, outcome: after }];
  const span = axis.max - axis.min;
  const beside = Math.min(span * 1e-9, (next - last) / 4);
  if (outcomeAt(last + beside) === after) return [{ last, next: last, outcome: after }];
  if (outcomeAt(next - beside) === before) return [{ last: next, next, outcome: after }];
  let [low, high] = [last, next];
  while (high - low > span * 1e-12) {
    const middle = (low + high) / 2;
    if (middle <= low || middle >= high) break;
    if (outcomeAt(middle) === before) low = middle;
    else high = middle;
  }
  const point = simplestBetween(low, high);
  const turn = { last: point, next: point, outcome: outcomeAt(high) };
  return [turn, ...turnsBetween(high, next, axis, outcomeAt)];
}

/** The number of fewest digits between two. */
function simplestBetween(low: number, high: number): number {
  for (let digits = 0; digits <= 15; digits += 1) {
    const rounded = Number(((low + high) / 2).toFixed(digits));
    if (rounded >= low && rounded <= high) return rounded;
  }
  return high;
}
