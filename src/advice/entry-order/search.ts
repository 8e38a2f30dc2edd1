/** Who come, step by step: indices of comers. */
export type Order = readonly (readonly number[])[];

/** What is to be ordered. */
export interface Ordering {
  /** How many comers there are. */
  readonly count: number;
  /** Whether these may come to those that came before. */
  readonly mayCome: (there: readonly number[], together: readonly number[]) => boolean;
  /** What is amiss where these come before the rest: the gravest count first. */
  readonly amiss: (together: readonly number[], rest: readonly number[]) => readonly number[];
  /** The day of the last step. */
  readonly lastDay: (order: Order) => number;
}

/** What the search found. */
export interface Found {
  /** Undefined where there is none. */
  readonly order?: Order | undefined;
  /** The most that came in any order that was tried. */
  readonly furthest: readonly number[];
  /** Whether all were tried. */
  readonly isComplete: boolean;
}

/** Up to so many comers all orders are tried. */
const mostTried = 6;

/** How many steps are tried at most where there are more. */
const mostSteps = 2000;

/**
 * The best order: of those with the most steps that in which least is amiss, of these the soonest done, of these the first.
 * Of more than six comers the first that is found, where each step takes those of whom least is amiss, one, two or
 * all that are left.
 */
export function bestOrder({ count, mayCome, amiss, lastDay }: Ordering): Found {
  const isExhaustive = count <= mostTried;
  let best: { readonly order: Order; readonly cost: readonly number[] } | undefined;
  let furthest: readonly number[] = [];
  let steps = 0;
  const dead = new Set<string>();
  const visit = (order: Order, cost: readonly number[]) => {
    if (best && !isExhaustive) return;
    const there = order.flat();
    const key = [...there].sort((one, other) => one - other).join();
    const rest = [...Array(count).keys()].filter((one) => !there.includes(one));
    if (there.length > furthest.length) furthest = there;
    if (rest.length === 0) {
      const whole = [...cost, lastDay(order)];
      if (!best || compared(whole, best.cost) < 0) best = { order, cost: whole };
      return;
    }
    if (dead.has(key)) return;
    for (const step of stepsOf(rest, isExhaustive, amiss)) {
      if (!isExhaustive && (best || steps >= mostSteps)) return;
      const further = added(cost, step.cost);
      if (best && compared(further, best.cost) > 0) continue;
      steps += 1;
      if (mayCome(there, step.together)) visit([...order, step.together], further);
    }
    if (!best) dead.add(key);
  };
  visit([], []);
  return { order: best?.order, furthest, isComplete: isExhaustive };
}

interface Step {
  readonly together: readonly number[];
  readonly cost: readonly number[];
}

/** The steps that may come next, that of which least is amiss first. */
function stepsOf(rest: readonly number[], all: boolean, amiss: Ordering["amiss"]): readonly Step[] {
  return (all ? subsetsOf(rest) : fewOf(rest))
    .map((together) => {
      const left = rest.filter((one) => !together.includes(one));
      return { together, cost: [together.length - 1, ...amiss(together, left)] };
    })
    .sort((one, other) => compared(one.cost, other.cost));
}

/** Each by itself, each two, and all. */
const fewOf = (rest: readonly number[]): readonly (readonly number[])[] => [
  ...rest.map((one) => [one]),
  ...rest.flatMap((one, index) => rest.slice(index + 1).map((other) => [one, other])),
  ...(rest.length > 2 ? [rest] : []),
];

/** All but the empty one. */
function subsetsOf([first, ...others]: readonly number[]): readonly (readonly number[])[] {
  if (first === undefined) return [];
  const further = subsetsOf(others);
  return [[first], ...further.map((subset) => [first, ...subset]), ...further];
}

const added = (one: readonly number[], other: readonly number[]) =>
  other.map((number, index) => number + (one[index] ?? 0));

/** By the first number that differs; what one does not have counts as nothing. */
function compared(one: readonly number[], other: readonly number[]): number {
  const differs = one.findIndex((number, index) => number !== (other[index] ?? 0));
  return differs < 0 ? 0 : (one[differs] ?? 0) - (other[differs] ?? 0);
}
