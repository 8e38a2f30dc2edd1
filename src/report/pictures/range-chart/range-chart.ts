import { listOf, objectOf, oneOf, refuseOthers } from "../../../checks";
import {
  type CitableSource,
  type FigurePath,
  figurePaths,
  type SpeciesProfile,
  type SpeciesRecord,
} from "../../../species";
import { traitDefinitions } from "../../../species/inner";
import { checkedMessages } from "../../messages/checked-messages";
import { english } from "../../messages/english";
import type { Messages } from "../../messages/messages";
import { quantityWriter, readersUnit, type UnitSystem } from "../../quantities";
import { checkedProfiles } from "../checked-profiles";
import { columnsOf } from "../columns";
import { headOf } from "../names";
import { axis, legend, letters, page, sentences } from "../page";
import { scaleOf } from "../scale";
import { indent, rangeBody } from "./range-body";
import { legendOf } from "./range-legend";
import type { Place } from "./range-marks";
import { rangeRow } from "./range-rows";
import { sharedBy, sharedSentence } from "./range-shared";
import { spanOf } from "./range-span";

/** How ranges are drawn. */
export interface RangeChartOptions {
  /** Records of the species, from `vivary/evidence`: what each source says is drawn below what is adopted. */
  readonly records?: readonly SpeciesRecord[] | undefined;
  /** The bibliography, `sources` of `vivary/evidence`: sources go by author and year, else by their keys in the records. */
  readonly sources?: Readonly<Record<string, CitableSource | undefined>> | undefined;
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
  path: FigurePath,
  options: RangeChartOptions = {},
): string {
  const { messages = english, ...further } = objectOf(options, "options");
  return rangeChartIn(checkedMessages(messages, "options.messages"), profiles, path, further);
}

/** Ranges in the words of a language, as {@link rangeChart} draws them, without shipping English. */
export function rangeChartIn(
  messages: Messages,
  profiles: readonly SpeciesProfile[],
  path: FigurePath,
  options: Omit<RangeChartOptions, "messages"> = {},
): string {
  const { records = [], sources = {}, units = "metric", ...others } = objectOf(options, "options");
  refuseOthers(others);
  checkedMessages(messages, "messages");
  const bibliography = objectOf(sources, "options.sources");
  const write = quantityWriter(messages, units);
  oneOf(path, figurePaths, "path");
  const { unit, floor } = traitDefinitions[path];
  const { symbol, change } = readersUnit(messages, units, unit);
  const recordOf = new Map(
    listOf(records, "options.records").map((record, index) => [
      objectOf(record, `options.records[${index}]`).id,
      record,
    ]),
  );
  const rows = checkedProfiles(profiles).map((profile) =>
    rangeRow(profile, path, recordOf.get(profile.id), { messages, write, bibliography }),
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
      (top) => rangeBody(rows, top, columns, scale, place, shared),
      ticks,
      legend(legendOf(rows, shared !== undefined, messages.pictures)),
    ],
  );
}

const closed = (text: string) => (/[.!?]$/.test(text) ? text : `${text}.`);
