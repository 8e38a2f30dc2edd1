import { apart, boxWidths, type Widths, widthsOf } from "../../ranges/inner";
import type { StandingSpan } from "./standing-spans";

/** One of the two species of a pair. */
type Side = "a" | "b";

/** A span taken in place of the adopted one. */
export interface Change<Axis> {
  readonly axis: Axis;
  readonly of: Side;
  readonly to: StandingSpan;
}

/** What a pair measures on one axis by one choice of spans. */
export interface Choice<Axis> {
  readonly widths: Widths | undefined;
  /** The spans that are not the adopted ones. */
  readonly changes: readonly Change<Axis>[];
}

/** The spans of both species on one axis. */
export type BothSpans = { readonly [Of in Side]: readonly StandingSpan[] };

/** A pair on one axis by every span of the one beside every span of the other, the adopted ones first. */
export function choicesOn<Axis>(axis: Axis, { a, b }: BothSpans): readonly Choice<Axis>[] {
  const changed = (of: Side, to: StandingSpan, place: number): readonly Change<Axis>[] =>
    place === 0 ? [] : [{ axis, of, to }];
  return a.flatMap((first, i) =>
    b.map((second, j) => ({
      widths: widthsOf(first.span, second.span),
      changes: [...changed("a", first, i), ...changed("b", second, j)],
    })),
  );
}

/** The choices on each of several axes; one choice on each makes a box. */
export type Axes<Axis> = readonly (readonly Choice<Axis>[])[];

/** The box of the adopted spans. */
export const adoptedBox = (axes: Axes<unknown>): Widths | undefined =>
  boxWidths(axes.map(([adopted]) => adopted?.widths));

/** The boxes in which a single span is not the adopted one, each with that span. */
export function changedBoxes<Axis>(axes: Axes<Axis>): readonly (Change<Axis> & { readonly box: Widths })[] {
  return axes.flatMap((choices, place) =>
    choices.flatMap(({ widths, changes: [change, ...more] }) => {
      const box = boxWidths(axes.map(([adopted], index) => (index === place ? widths : adopted?.widths)));
      return change && more.length === 0 && box ? [{ ...change, box }] : [];
    }),
  );
}

/**
 * Of all boxes that can be chosen, those between which every measure lies. A measure grows with the share that either
 * species has in common with the other, so that of each axis only the choices with most and with least of both are
 * carried on: the time does not multiply with the choices.
 */
export function outermostBoxes(axes: Axes<unknown>): readonly Widths[] {
  const measured = axes.map((choices) => choices.flatMap(({ widths }) => widths ?? []));
  const together = measured.reduce<readonly Widths[]>(
    (boxes, widths) =>
      outermost(boxes.flatMap((box) => widths.flatMap((axis) => boxWidths([box, axis]) ?? []))),
    [{ a: 1, b: 1, shared: 1 }],
  );
  return [...together, ...measured.flat().filter((widths) => widths === apart)];
}

/** Of boxes, those that no other exceeds in both shares, and those that none falls below in both. */
function outermost(boxes: readonly Widths[]): readonly Widths[] {
  const shares = boxes.map((box) => ({ box, ofA: box.shared / box.a, ofB: box.shared / box.b }));
  const rising = [...shares].sort((x, y) => x.ofA - y.ofA || x.ofB - y.ofB);
  const least = rising.filter(recordsOf(({ ofB }) => -ofB));
  const greatest = [...rising].reverse().filter(recordsOf(({ ofB }) => ofB));
  return [...new Set([...least, ...greatest].map(({ box }) => box))];
}

/** Whether a number is greater than all before it. */
function recordsOf<Item>(numberOf: (item: Item) => number): (item: Item) => boolean {
  let record = -Infinity;
  return (item) => {
    const isRecord = numberOf(item) > record;
    if (isRecord) record = numberOf(item);
    return isRecord;
  };
}

/** In how many ways one choice can be made on each axis, and how many of the boxes have no widths. */
export function countBoxes(axes: Axes<unknown>): { readonly all: number; readonly unmeasured: number } {
  const product = (count: (choices: readonly Choice<unknown>[]) => number) =>
    axes.reduce((total, choices) => total * count(choices), 1);
  const meeting = product((choices) => choices.filter(({ widths }) => widths !== apart).length);
  const measured = product(
    (choices) => choices.filter(({ widths }) => widths !== undefined && widths !== apart).length,
  );
  return { all: product(({ length }) => length), unmeasured: meeting - measured };
}
