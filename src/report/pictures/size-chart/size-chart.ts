import { objectOf, refuseOthers } from "../../../checks";
import type { SpeciesProfile } from "../../../species";
import { checkedMessages } from "../../messages/checked-messages";
import { english } from "../../messages/english";
import type { Messages, PictureMark } from "../../messages/messages";
import { quantityWriter, readersUnit, type UnitSystem } from "../../quantities";
import { checkedProfiles } from "../checked-profiles";
import { type Columns, columnGap, columnsOf, figureRoom, nameRoom, rowRule } from "../columns";
import { fitted } from "../lettering";
import { headOf } from "../names";
import { axis, type Drawn, grid, type LegendEntry, legend, letters, margin, page, words } from "../page";
import { type Scale, scaleOf } from "../scale";
import { element, title } from "../svg";
import { fish, lengthBar, reckonedFrom, whisker } from "./size-marks";
import { type Outline, type SizeRow, sizeRows } from "./size-rows";

/** How sizes are drawn. */
export interface SizeChartOptions {
  /** Default `metric`. */
  readonly units?: UnitSystem | undefined;
  /** The words of another language, in place of English. An app that needs no English takes `sizeChartIn`. */
  readonly messages?: Messages | undefined;
}

/**
 * Adult animals side by side at one scale, as a picture: an SVG with a row for each species, or for each sex where their
 * lengths differ. A fish of known depth is an outline, as long and as deep as a usual adult; of others a bar shows the
 * length. A line goes on to the greatest length known. Lengths are totals, of a ray the width of its disc where that is
 * known; where nothing is known the row says so. Lines are in the colour of the text around; nothing is told by colour. Text
 * from profiles is escaped.
 *
 * @returns The picture as SVG, 760 user units wide; it tells its figures in a description too.
 * @throws InvalidInputError for no profiles or what is none, and for an unknown unit system.
 *
 * @example
 * ```ts
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { sizeChart } from "vivary/report";
 *
 * sizeChart([danioRerio, bettaSplendens], { units: "us" }).slice(0, 4); // => "<svg"
 * ```
 */
export function sizeChart(profiles: readonly SpeciesProfile[], options: SizeChartOptions = {}): string {
  const { messages = english, ...further } = objectOf(options, "options");
  return sizeChartIn(checkedMessages(messages, "options.messages"), profiles, further);
}

/** Sizes in the words of a language, as {@link sizeChart} draws them, without shipping English. */
export function sizeChartIn(
  messages: Messages,
  profiles: readonly SpeciesProfile[],
  options: Omit<SizeChartOptions, "messages"> = {},
): string {
  const { units = "metric", ...others } = objectOf(options, "options");
  refuseOthers(others);
  checkedMessages(messages, "messages");
  const write = quantityWriter(messages, units);
  const { symbol, change } = readersUnit(messages, units, "cm");
  const rows = checkedProfiles(profiles).flatMap((profile) => sizeRows(profile, messages, write));
  const columns = columnsOf(
    rows.flatMap(({ name, sex }) => [
      { text: name.head, size: letters.text },
      { text: sex, size: letters.small },
    ]),
    rows.flatMap(({ drawn, figures }) =>
      drawn ? figures.map((text) => ({ text, size: letters.small })) : [],
    ),
  );
  const scale = scaleOf({ min: 0, max: change(reach(rows, columns)) }, columns.from, columns.to, 56);
  const place = (cm: number) => scale.at(change(cm));
  const ticks = axis(scale, new Intl.NumberFormat(messages.language, { maximumFractionDigits: 3 }).format);
  const trait = headOf(messages.traits["size.adultLength"], messages.language);
  return page(
    `${trait} (${symbol})`,
    rows.map(({ told }) => told),
    [
      ticks,
      (top) => body(rows, top, columns, scale, place),
      ticks,
      legend(legendOf(rows, messages.pictures.marks)),
    ],
  );
}

/** The deepest that an animal is drawn, in user units; one scale holds for length and depth. */
const deepest = 170;

/** How many centimetres the picture is wide, so that all lengths have room and no row is too high. */
function reach(rows: readonly SizeRow[], { from, to }: Columns): number {
  const lengths = rows.flatMap(({ drawn, greatest }) => [drawn?.max ?? 0, greatest ?? 0]);
  const depths = rows.map(({ outline }) => outline?.depth ?? 0);
  return Math.max(...lengths, (Math.max(...depths) * (to - from)) / deepest) || 1;
}

function body(
  rows: readonly SizeRow[],
  top: number,
  columns: Columns,
  scale: Scale,
  place: (cm: number) => number,
): Drawn {
  let y = top;
  const drawn = rows.flatMap((row) => {
    const outline = row.outline && scaled(row.outline, place);
    const height = Math.max(36, (outline?.depth ?? 0) + 14);
    const parts = rowParts(row, outline, y + height / 2, columns, place);
    y += height;
    return [parts, rowRule(y)];
  });
  return { parts: [...grid(scale, top, y), ...drawn], height: y - top };
}

/** In user units. */
function scaled({ body: length, depth }: Outline, place: (cm: number) => number): Outline {
  return { body: place(length) - place(0), depth: place(depth) - place(0) };
}

function rowParts(
  row: SizeRow,
  outline: Outline | undefined,
  middle: number,
  columns: Columns,
  place: (cm: number) => number,
): string {
  const { from, to } = columns;
  const { name, sex, drawn, figures, told } = row;
  const small = { "font-size": letters.small };
  const room = nameRoom(columns);
  const stacked = (count: number, index: number) => middle + 4 + (index - (count - 1) / 2) * 13;
  const label = [
    words(fitted(name.head, room, letters.text), margin, stacked(sex ? 2 : 1, 0)),
    ...(sex ? [words(fitted(sex, room, letters.small), margin, stacked(2, 1), small)] : []),
  ];
  const written = drawn
    ? figures.map((text, index) =>
        words(
          fitted(text, figureRoom(columns), letters.small),
          to + columnGap,
          stacked(figures.length, index),
          small,
        ),
      )
    : figures.map((text) => words(text, from + 8, middle + 4, { "font-style": "italic" }));
  const marks = drawn ? sizeMarks(row, drawn, outline, middle, place) : [];
  return element("g", { class: "row" }, [title(told), ...label, ...marks, ...written]);
}

function sizeMarks(
  { greatest, ofEither, onlyGreatest }: SizeRow,
  drawn: { readonly min: number; readonly max: number },
  outline: Outline | undefined,
  middle: number,
  place: (cm: number) => number,
): readonly string[] {
  const [start, end] = [place(0), place(drawn.max)];
  return [
    outline ? fish(start, end, middle, outline, onlyGreatest) : lengthBar(start, end, middle, onlyGreatest),
    ...(drawn.min < drawn.max ? [reckonedFrom(place(drawn.min), middle, 20)] : []),
    ...(greatest === undefined ? [] : [whisker(end, place(greatest), middle, ofEither)]),
  ];
}

function legendOf(
  rows: readonly SizeRow[],
  marks: Readonly<Record<PictureMark, string>>,
): readonly LegendEntry[] {
  const usual = rows.filter(({ drawn, onlyGreatest }) => drawn && !onlyGreatest);
  const further = rows.filter(({ greatest }) => greatest !== undefined);
  const entries: readonly (readonly [shown: boolean, mark: PictureMark, draw: LegendEntry["mark"]])[] = [
    [
      usual.some(({ outline }) => outline),
      "outline",
      (x, y) => [fish(x, x + 30, y + 7, { body: 24, depth: 12 }, false)],
    ],
    [usual.some(({ outline }) => !outline), "bar", (x, y) => [lengthBar(x, x + 30, y + 7, false)]],
    [further.some(({ ofEither }) => !ofEither), "greatest", (x, y) => [whisker(x, x + 30, y + 7, false)]],
    [
      further.some(({ ofEither }) => ofEither),
      "greatestOfEither",
      (x, y) => [whisker(x, x + 30, y + 7, true)],
    ],
    [
      rows.some(({ onlyGreatest }) => onlyGreatest),
      "onlyGreatest",
      (x, y) => [lengthBar(x, x + 30, y + 7, true)],
    ],
    [
      rows.some(({ drawn }) => drawn && drawn.min < drawn.max),
      "reckoned",
      (x, y) => [reckonedFrom(x + 15, y + 7, 14)],
    ],
  ];
  return entries.filter(([shown]) => shown).map(([, mark, draw]) => ({ mark: draw, text: marks[mark] }));
}
