import type { Range } from "../../../ranges";
import type { RangeRow } from "./range-rows";

/** What is narrower stands in the middle of an axis, not all along it. */
const narrowest = 0.05;

/** The least and greatest figure that is drawn, with room beyond ends that are open; in the unit that is shown. */
export function spanOf(
  rows: readonly RangeRow[],
  change: (value: number) => number,
  floor: number | undefined,
): Range {
  const spans = rows.flatMap(({ kept, optimum, limit, sources }) => [
    ...[kept, optimum].flatMap((span) => span ?? []),
    ...sources.filter(({ meaning }) => meaning !== "limit").map(({ span }) => span),
    ...[limit, ...sources.filter(({ meaning }) => meaning === "limit").map(({ span }) => span)].flatMap(
      (span) => (span ? [pinned(span)] : []),
    ),
  ]);
  const figures = spans.flatMap(({ min, max }) => [min, max]).filter(Number.isFinite);
  if (figures.length === 0) return { min: 0, max: 1 };
  const [least, greatest] = [Math.min(...figures), Math.max(...figures)];
  const beyond = Math.max((greatest - least) * 0.12, 1);
  const isPoint = greatest - least < narrowest;
  const lowest = isPoint || spans.some(({ min }) => min === -Infinity) ? least - beyond : least;
  const highest = isPoint || spans.some(({ max }) => max === Infinity) ? greatest + beyond : greatest;
  return { min: change(floor === undefined ? lowest : Math.max(floor, lowest)), max: change(highest) };
}

/** A limit whose open end needs no room, since nothing is drawn there. */
const pinned = ({ min, max }: Range): Range => ({
  min: Number.isFinite(min) ? min : max,
  max: Number.isFinite(max) ? max : min,
});
