import type { Messages, PictureMark } from "../../messages/messages";
import type { LegendEntry } from "../page";
import {
  bandStyle,
  bar,
  brackets,
  keptStyle,
  optimumStyle,
  type Place,
  sourceLine,
  standInStyle,
} from "./range-marks";
import type { RangeRow } from "./range-rows";

/** The marks that occur, and what they mean. */
export function legendOf(
  rows: readonly RangeRow[],
  isShared: boolean,
  { marks }: Messages["pictures"],
): readonly LegendEntry[] {
  const whole = { min: 0, max: 1 };
  const across =
    (x: number): Place =>
    (figure) =>
      x + 30 * Math.min(1, Math.max(0, figure));
  const spans = rows.flatMap(({ kept, sources }) => [
    ...(kept ? [kept] : []),
    ...sources.filter(({ meaning }) => meaning !== "limit").map(({ span }) => span),
  ]);
  const isOpen = spans.some(({ min, max }) => !Number.isFinite(max - min));
  const entries: readonly (readonly [shown: boolean, mark: PictureMark, draw: LegendEntry["mark"]])[] = [
    [
      rows.some(({ kept, standsIn }) => kept && !standsIn),
      "kept",
      (x, y) => [bar(whole, across(x), y + 7, 14, keptStyle)],
    ],
    [
      rows.some(({ standsIn }) => standsIn),
      "standIn",
      (x, y) => [bar(whole, across(x), y + 7, 14, standInStyle)],
    ],
    [
      rows.some(({ optimum, standsIn }) => optimum && !standsIn),
      "optimum",
      (x, y) => [bar(whole, across(x), y + 7, 5, optimumStyle)],
    ],
    [
      rows.some(({ limit, sources }) => limit ?? sources.some(({ meaning }) => meaning === "limit")),
      "limit",
      (x, y) => brackets(whole, across(x), y + 7, 14),
    ],
    [isOpen, "open", (x, y) => [bar({ min: 0, max: Infinity }, across(x), y + 7, 14, keptStyle)]],
    [isShared, "shared", (x, y) => [bar(whole, across(x), y + 7, 14, bandStyle)]],
    [
      rows.some(({ sources }) => sources.length > 0),
      "source",
      (x, y) => [sourceLine(whole, "kept", across(x), y + 7, marks.source)],
    ],
  ];
  return entries.filter(([shown]) => shown).map(([, mark, draw]) => ({ mark: draw, text: marks[mark] }));
}
