import type { PlanChange, Planner } from "../../compatibility";
import { isAsGood } from "../is-as-good";
import { isMuchLarger } from "./as-sold";
import { type Bar, barsOf, type Sought } from "./bars";
import { type CarriedOut, carriedOut, type Given } from "./carried-out";
import { harms } from "./harm";
import { roomiest } from "./larger-tank";
import { costs, type MoveKind } from "./move";
import type { Step } from "./possible-step";

/** Some steps, none of which can be left out. */
interface Found extends CarriedOut {
  readonly steps: readonly Step[];
}

/** What a search comes to. */
export interface Searched {
  /** The best first. */
  readonly found: readonly Found[];
  /** Of the plan with nothing done to it. */
  readonly bars: readonly Bar[];
  /** Of these, those that the most promising steps leave standing. */
  readonly left: readonly Bar[];
}

/** So many steps are taken together at most. */
const mostSteps = 3;

/** Some steps on the way, with those of the bars seen so far that none of them can remove. */
interface Way {
  readonly steps: readonly Step[];
  readonly bars: readonly Bar[];
}

/**
 * The sets of at most three steps that reach what is sought, of which none can be left out: fewest animals moved first,
 * then the least costly, then the fewest steps; last of all those for which there is a better step that does not help.
 * Beside a set that gets a tank one more step is no waste by which a group leaves, where a much smaller tank does then. A
 * plan is judged only after steps that each bar met so far could give way to.
 */
export function search(planner: Planner, sought: Sought, most: number): Searched {
  const isEnough = ({ outcome, bounds }: Planner) =>
    isAsGood(outcome, sought.want) && (!sought.askedAtWorst || isAsGood(bounds.atWorst, sought.want));
  const { want, askedAtWorst: atWorst, thresholds } = sought;
  const given: Given = { planner, isEnough, fills: want === "suitable", atWorst, thresholds };
  const begun = remembered(planner);
  const tried = new Set<string>();
  const found: Found[] = [];
  const ways: Way[] = [{ steps: [], bars: [] }];
  const add = (steps: readonly Step[], standing: readonly Bar[]) => {
    const key = steps
      .map((one) => one.key)
      .sort()
      .join();
    if (tried.has(key)) return;
    tried.add(key);
    insert(ways, { steps, bars: standing });
  };
  let bars: readonly Bar[] | undefined;
  let left: readonly Bar[] | undefined;
  while (found.length < most) {
    const way = ways.shift();
    if (!way) break;
    const { steps } = way;
    const within = found.filter((one) => isCovered(steps, one.steps));
    if (within.some((one) => !maySpareRoom(steps, one.steps))) continue;
    let standing = way.bars;
    if (standing.length === 0) {
      const done = carriedOut(steps, given, begun);
      const isReached = isEnough(done.planner) && !harms(planner.verdict, done.planner.verdict, done.places);
      if (isReached && done.moves.length === steps.length) {
        for (const step of sparingRoom(way, done, sought.steps, planner.plan.groups.length))
          add([...steps, step], []);
        const { tank } = done.planner.plan;
        if (within.some((one) => !isMuchLarger(one.planner.plan.tank, tank))) continue;
        const isNeeded = (step: Step) => steps.length === 1 || isLeftBy(bars ?? [], steps, step);
        if (steps.every(isNeeded) || !couldLeaveOne(done, planner, isEnough)) found.push({ ...done, steps });
        continue;
      }
      standing = isReached ? [] : barsOf(done.planner.verdict, done.planner.plan, done.places, sought);
    }
    bars ??= standing;
    if (steps.length === mostSteps || standing.length === 0) {
      if (!left || standing.length < left.length) left = standing;
      continue;
    }
    for (const step of nextSteps(standing, way, sought.steps, planner.plan.groups.length))
      add(
        [...steps, step],
        standing.filter(({ removers }) => !removers.has(step.key)),
      );
  }
  return { found, bars: bars ?? [], left: left ?? [] };
}

/** Whether a step has a whole group leave. */
const leaves = ({ kind, group }: Step) => kind === "rehome" && !group;

/** Whether some steps could do with a smaller tank than those of them that do: who asks for the larger one may leave. */
const maySpareRoom = (steps: readonly Step[], found: readonly Step[]) =>
  found.some(({ kind }) => kind === "tank") && steps.every((step) => found.includes(step) || leaves(step));

/** Where some steps get a tank, those by which a group leaves that needs most of it. */
function sparingRoom(
  { steps }: Way,
  { planner, places }: CarriedOut,
  all: readonly Step[],
  groups: number,
): readonly Step[] {
  if (steps.length === mostSteps || steps.every(({ kind }) => kind !== "tank")) return [];
  const needing = roomiest(planner.verdict);
  const needs = ({ of }: Step) => of !== undefined && needing.has(places.indexOf(of));
  return all.filter((step) => leaves(step) && needs(step) && canBeTaken(step, steps, groups));
}

/** Gives the planner after a change to the animals, each made once. */
function remembered(planner: Planner): (change: PlanChange) => Planner {
  const known = new Map<string, Planner>();
  return (change) => {
    if (Object.keys(change).length === 0) return planner;
    const { add = [], ...others } = change;
    const key = JSON.stringify([others, add.map(({ species }) => species.id)], (_, value) => value ?? null);
    const there = known.get(key) ?? planner.with(change);
    known.set(key, there);
    return there;
  };
}

/** Whether some steps hold all of a set that was found, or a step in place of which that has another. */
const isCovered = (steps: readonly Step[], found: readonly Step[]) =>
  found.every((one) => steps.some((step) => step === one || step.rather === one.key));

/** Whether one of some bars stays if a step is left out. */
const isLeftBy = (bars: readonly Bar[], steps: readonly Step[], left: Step) =>
  bars.some(({ removers }) => steps.every(({ key }) => key === left.key || !removers.has(key)));

/** Whether the outcome is reached with one of the moves left out, all else being as it is. */
function couldLeaveOne(
  { moves, filling }: CarriedOut,
  planner: Planner,
  isEnough: Given["isEnough"],
): boolean {
  const filled = planner.with(filling);
  return moves.some((left) =>
    isEnough(moves.filter((move) => move !== left).reduce((now, { change }) => now.with(change), filled)),
  );
}

/** The steps that the bar with the fewest could give way to, as far as they can be taken beside the others. */
function nextSteps(
  bars: readonly Bar[],
  { steps }: Way,
  all: readonly Step[],
  groups: number,
): readonly Step[] {
  const fewest = bars.reduce((least, bar) => (bar.removers.size < least.removers.size ? bar : least));
  return all.filter((step) => fewest.removers.has(step.key) && canBeTaken(step, steps, groups));
}

/** Whether a step can be taken beside others, and a group of so many stays. */
const canBeTaken = (step: Step, steps: readonly Step[], groups: number): boolean =>
  steps.every((one) => !excludeEachOther(one, step)) && [...steps, step].filter(leaves).length < groups;

/** What a group does that leaves, is told of no group that stays; and a company is one. */
function excludeEachOther(one: Step, other: Step): boolean {
  if (one === other) return true;
  if (one.kind === "company" && other.kind === "company") return true;
  if (one.of === undefined || one.of !== other.of) return false;
  const isSame = one.kind === other.kind;
  return leaves(one) || leaves(other) || isSame;
}

/** Into its place among those that are to be tried. */
function insert(ways: Way[], way: Way): void {
  const place = ways.findIndex((one) => isBefore(way.steps, one.steps));
  if (place < 0) ways.push(way);
  else ways.splice(place, 0, way);
}

/** Whether some steps are tried before others: no steps more ever put a set further ahead. */
function isBefore(one: readonly Step[], other: readonly Step[]): boolean {
  const [a, b] = [weightOf(one), weightOf(other)];
  const at = a.findIndex((weight, index) => weight !== b[index]);
  return at >= 0 && (a[at] ?? 0) < (b[at] ?? 0);
}

function weightOf(steps: readonly Step[]): readonly number[] {
  const ranks = steps.map(({ kind }: { readonly kind: MoveKind }) => costs[kind]);
  return [
    steps.filter(({ rather }) => rather).length,
    steps.reduce((sum, { moved }) => sum + moved, 0),
    Math.max(0, ...ranks),
    steps.length,
    ranks.reduce((sum, rank) => sum + rank, 0),
  ];
}
