import { listOf, objectOf, oneOf } from "../../errors";
import { limitingPair, overlap, type PartialRange, type Range } from "../../ranges";
import { ends } from "../../ranges/inner";
import { type SpeciesProfile, type SpeciesRecord, traitPaths } from "../../species";
import { traitDefinitions } from "../../species/inner";
import { english } from "../messages/english";
import type { Messages, PictureMark } from "../messages/messages";
import { quantityWriter, readersUnit, type UnitSystem } from "../quantities";
import { checkedProfiles } from "./checked-profiles";
import { type Columns, columnGap, columnsOf, figureRoom, nameRoom, rowRule } from "./columns";
import { fitted } from "./lettering";
import { headOf } from "./names";
import {
  axis,
  type Drawn,
  grid,
  ink,
  type LegendEntry,
  legend,
  letters,
  margin,
  page,
  sentences,
  words,
} from "./page";
import { bar, brackets, type Place, sourceLine } from "./range-marks";
import { type FiguresPath, type RangeRow, rangeRow } from "./range-rows";
import { type Scale, scaleOf } from "./scale";
import { element, title } from "./svg";

/** How ranges are drawn. */
export interface RangeChartOptions {
  /** Records of the species, from `vivary/evidence`: what each source says is drawn below what is adopted. */
  readonly records?: readonly SpeciesRecord[] | undefined;
  /** Default `metric`. */
  readonly units?: UnitSystem | undefined;
  /** The words of another language, in place of English. An app that needs no English takes `rangeChartIn`. */
  readonly messages?: Messages | undefined;
}

/**
 * One trait of many species as a picture: an SVG with a row for each species, the span to keep it in as a bar, in it what
 * is best, brackets at what it must never pass, and across all rows what they have in common. With records, what each
 * source says stands below. Ends that nobody has stated are points; where nothing is known the row says so. Lines are in
 * the colour of the text around; nothing is told by colour. Text from profiles and records is escaped.
 *
 * @param path - A trait that holds a span to keep an animal in, such as `"water.temperature"`.
 * @returns The picture as SVG, 760 user units wide; it tells its figures in a description too.
 * @throws InvalidInputError for no profiles or what is none, for a trait without spans, an unknown unit system, and
 * ranges that are reversed or not finite.
 *
 * @example
 * ```ts
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { rangeChart } from "vivary/report";
 *
 * rangeChart([danioRerio, bettaSplendens], "water.temperature").slice(0, 4); // => "<svg"
 * ```
 */
export function rangeChart(
  profiles: readonly SpeciesProfile[],
  path: FiguresPath,
  options: RangeChartOptions = {},
): string {
  const { messages = english, ...further } = objectOf(options, "options");
  return rangeChartIn(messages, profiles, path, further);
}

/** Ranges in the words of a language, as {@link rangeChart} draws them, without shipping English. */
export function rangeChartIn(
  messages: Messages,
  profiles: readonly SpeciesProfile[],
  path: FiguresPath,
  options: Omit<RangeChartOptions, "messages"> = {},
): string {
  const { records = [], units = "metric" } = objectOf(options, "options");
  const write = quantityWriter(messages, units);
  oneOf(path, figuresPaths, "path");
  const { unit, floor } = traitDefinitions[path];
  const { symbol, change } = readersUnit(messages, units, unit);
  const recordOf = new Map(
    listOf(records, "records").map((record) => [objectOf(record, "record").id, record]),
  );
  const rows = checkedProfiles(profiles).map((profile) =>
    rangeRow(profile, path, recordOf.get(profile.id), { messages, write }),
  );
  const shared = sharedBy(rows);
  const sentence = sharedSentence(rows, shared, messages, (range) => write({ ...range, unit }));
  const columns = columnsOf(
    rows.flatMap(({ name, sources }) => [
      { text: name.head, size: letters.text },
      ...sources.map(({ label }) => ({ text: label, size: letters.small, indent })),
    ]),
    rows.flatMap(({ kept, figure }) => (kept ? [{ text: figure, size: letters.text }] : [])),
  );
  const scale = scaleOf(spanOf(rows, change, floor), columns.from, columns.to, 56);
  const place: Place = (figure) => {
    if (figure === -Infinity) return scale.from;
    return figure === Infinity ? scale.to : scale.at(change(figure));
  };
  const trait = headOf(messages.traits[path], messages.language);
  const heading = symbol ? `${trait} (${symbol})` : trait;
  const ticks = axis(scale, new Intl.NumberFormat(messages.language, { maximumFractionDigits: 3 }).format);
  return page(
    heading,
    [...sentence, ...rows.flatMap((row) => [row.told, ...row.sources.map((source) => source.told)])].map(
      closed,
    ),
    [
      sentences(sentence),
      ticks,
      (top) => body(rows, top, columns, scale, place, shared),
      ticks,
      legend(legendOf(rows, shared !== undefined, messages.pictures.marks)),
    ],
  );
}

const figuresPaths = /* @__PURE__ */ traitPaths.filter((path) => traitDefinitions[path].way === "figures");

const closed = (text: string) => (/[.!?]$/.test(text) ? text : `${text}.`);

/** What the species with figures have in common; of one alone nothing. */
function sharedBy(rows: readonly RangeRow[]): PartialRange | undefined {
  const [first, second, ...more] = rows.flatMap(({ kept }) => (kept ? [finiteEnds(kept)] : []));
  return first && second && overlap(first, second, ...more);
}

const finiteEnds = ({ min, max }: Range): PartialRange => ({
  ...(Number.isFinite(min) && { min }),
  ...(Number.isFinite(max) && { max }),
});

function sharedSentence(
  rows: readonly RangeRow[],
  shared: PartialRange | undefined,
  { pictures }: Messages,
  inWords: (range: PartialRange) => string,
): readonly string[] {
  const known = rows.flatMap(({ kept, name }) => (kept ? [{ name, range: finiteEnds(kept) }] : []));
  if (known.length < 2) return [];
  if (shared) return [pictures.shared(inWords(shared), known.length, rows.length)];
  const pair = limitingPair(known, ({ range }) => range);
  const [one, other] = [known[pair?.smallestMax ?? 0], known[pair?.largestMin ?? 0]];
  return one && other ? [pictures.apart(one.name.spoken, other.name.spoken)] : [];
}

/** What is narrower stands in the middle of an axis, not all along it. */
const narrowest = 0.05;

/** The least and greatest figure that is drawn, with room beyond ends that are open; in the unit that is shown. */
function spanOf(
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

/** How far sources are set in below their species. */
const indent = 8;
const sourcePitch = 13;
const rowHeight = (row: RangeRow) => 28 + row.sources.length * sourcePitch + (row.sources.length > 0 ? 5 : 0);

function body(
  rows: readonly RangeRow[],
  top: number,
  columns: Columns,
  scale: Scale,
  place: Place,
  shared: PartialRange | undefined,
): Drawn {
  const height = rows.reduce((sum, row) => sum + rowHeight(row), 0);
  const band = shared ? [bar(ends(shared, "shared"), place, top + height / 2, height, bandStyle)] : [];
  let y = top;
  const drawn = rows.flatMap((row) => {
    const parts = rowParts(row, y, columns, place);
    y += rowHeight(row);
    return [parts, rowRule(y)];
  });
  return { parts: [...grid(scale, top, top + height), ...band, ...drawn], height };
}

const bandStyle = {
  class: "shared",
  fill: "currentColor",
  "fill-opacity": 0.07,
  "stroke-dasharray": "4 3",
  "stroke-opacity": 0.7,
};
const keptStyle = { class: "kept", fill: "currentColor", "fill-opacity": 0.22 };
const standInStyle = { ...keptStyle, class: "kept stands-in", "fill-opacity": 0, "stroke-dasharray": "3 2" };
const optimumStyle = { ...ink, class: "optimum", stroke: "currentColor" };

function rowParts(row: RangeRow, top: number, columns: Columns, place: Place): string {
  const { from, to } = columns;
  const { name, kept, limit, sources, figure, told } = row;
  const middle = top + 14;
  const room = nameRoom(columns);
  const label = words(fitted(name.head, room, letters.text), margin, middle + 4);
  const parts = [
    ...adopted(row, middle, place),
    ...(limit ? brackets(limit, place, middle, 18) : []),
    kept
      ? words(fitted(figure, figureRoom(columns), letters.text), to + columnGap, middle + 4)
      : words(figure, from + 8, middle + 4, { "font-style": "italic" }),
  ];
  const lines = sources.flatMap((source, index) => {
    const y = middle + 14 + sourcePitch / 2 + index * sourcePitch;
    const shown = fitted(source.label, room - indent, letters.small);
    return [
      element("g", {}, [
        title(source.told),
        words(shown, margin + indent, y + 3, { "font-size": letters.small }),
      ]),
      sourceLine(source.span, source.meaning, place, y, source.told),
    ];
  });
  return element("g", { class: "row" }, [title(told), label, ...parts, ...lines]);
}

function adopted({ kept, standsIn, optimum }: RangeRow, middle: number, place: Place): readonly string[] {
  return [
    ...(kept ? [bar(kept, place, middle, 14, standsIn ? standInStyle : keptStyle)] : []),
    ...(optimum && !standsIn ? [bar(optimum, place, middle, 5, optimumStyle)] : []),
  ];
}

function legendOf(
  rows: readonly RangeRow[],
  isShared: boolean,
  marks: Readonly<Record<PictureMark, string>>,
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
