import { type FigurePath, figurePaths, type Statement, traitTable } from "vivary/species";
import type { Check } from "./check";
import { type Span, spanOf, statementsEverywhere } from "./statements-everywhere";

/** Where kept animals are kept in a trait's unit, and how much a kept span takes in; beyond, a line says why. */
interface Usual {
  readonly from: number;
  readonly to: number;
  readonly widest: number;
}

/**
 * So wide that of the animals here only those that winter in ponds, or go from rivers to the sea, lie outside.
 * Common practice, no source.
 */
const usual: Readonly<Record<FigurePath, Usual>> = {
  "water.temperature": { from: 10, to: 32, widest: 15 },
  "water.pH": { from: 4, to: 9.5, widest: 3 },
  "water.generalHardness": { from: 0, to: 35, widest: 25 },
  "water.carbonateHardness": { from: 0, to: 25, widest: 15 },
  "water.salinity": { from: 0, to: 35, widest: 20 },
};

/** The meanings of what animals are in for long: of these, one line has something in common with another. */
const lasting: readonly unknown[] = ["kept", "optimum", "tolerated"];

type Line = ReturnType<typeof linesOf>[number];

/** A digit or a decimal point that was lost makes figures of water that are far from those of other animals. */
export const keptWaterIsPlausible: Check = {
  name: "An animal that is kept in unusual water has a note why",
  find: ({ records }) =>
    records.flatMap(({ path: file, record }) =>
      figurePaths.flatMap((trait) => {
        const lines = linesOf(statementsEverywhere(record, trait), trait);
        return lines.flatMap((line) => {
          const strange = isTold(line) ? strangeIn(line, trait, lines) : undefined;
          return strange ? [{ file, at: line.at, ...strange }] : [];
        });
      }),
    ),
};

/** The lines that count, each with its span in the trait's unit. */
const linesOf = (statements: ReturnType<typeof statementsEverywhere<FigurePath>>, trait: FigurePath) =>
  statements
    .filter(({ statement: { setAside } }) => setAside === undefined)
    .map(({ at, statement }) => ({ at, statement, span: spanOf(statement, trait) }));

const isTold = ({ statement: { as, note } }: Line) => as === "kept" && note === undefined;

/** What is strange about a kept span, the gravest first. */
function strangeIn({ at, statement, span }: Line, trait: FigurePath, lines: readonly Line[]) {
  const { from, to, widest } = usual[trait];
  const { min = Number.NaN, max = Number.NaN } = span;
  const outside = [min, max].find((end) => end < from || end > to);
  if (outside !== undefined)
    return {
      found: `${trait}: ${sized(outside, trait)}, at which few animals are kept`,
      expected: `${from} to ${sized(to, trait)}, or a note`,
      mend: `${slip} add a note of one sentence: how it comes to live in such water.`,
    };
  if (max - min > widest)
    return {
      found: `${trait}: a span of ${sized(max - min, trait)}, from ${shown(min)} to ${shown(max)}`,
      expected: `no more than ${sized(widest, trait)} from end to end, or a note`,
      mend: `${slip} add a note of one sentence: how it comes to live in such different water.`,
    };
  const others = lines.filter((other) => other.at !== at && isOfSame(other, at, statement));
  return others.length > 0 && !others.some((other) => meets(other.span, span))
    ? {
        found: `${trait}: ${shown(min)} to ${sized(max, trait)}, with nothing in common with any other line`,
        expected: "figures that some other line shares in part, or a note",
        mend: `${slip} set the wrong one aside, or add a note of one sentence: why they differ.`,
      }
    : undefined;
}

const slip = "Look for a digit or a decimal point that was lost, or for another unit; else";

/** Whether a line tells of the same animals, species or form, for long. */
const isOfSame = (line: Line, at: Line["at"], { stage = "adult" }: Statement) =>
  String(line.at.slice(0, -1)) === String(at.slice(0, -1)) &&
  lasting.includes(line.statement.as) &&
  (line.statement.stage ?? "adult") === stage;

const meets = (one: Span, other: Span) =>
  (one.min ?? -Infinity) <= (other.max ?? Infinity) && (other.min ?? -Infinity) <= (one.max ?? Infinity);

/** A figure with its unit; pH has none. */
const sized = (figure: number, trait: FigurePath) =>
  `${shown(figure)} ${traitTable[trait].unit ?? ""}`.trim();

const shown = (figure: number) => String(Number(figure.toFixed(2)));
