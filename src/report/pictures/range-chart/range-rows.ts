import type { PartialRange, Range } from "../../../ranges";
import { ends } from "../../../ranges/inner";
import {
  basisOf,
  type CitableSource,
  type FigurePath,
  factAt,
  type SpeciesProfile,
  type SpeciesRecord,
} from "../../../species";
import { hasValue, inTraitUnit, type Stated, statementsFor, traitDefinitions } from "../../../species/inner";
import type { WriteQuantity } from "../../figure";
import type { Messages } from "../../messages/messages";
import { beyond } from "../../messages/sentences";
import { type PictureName, pictureName } from "../names";
import { sourceName } from "../source-name";

/** What a figure means. */
export type Meaning = keyof Messages["words"]["waterMeaning"];

/** What one source says; an end that it leaves open is infinite. In the unit of the trait. */
interface SourceSpan {
  readonly span: Range;
  readonly meaning: Meaning;
  /** What it means and who says it. */
  readonly label: string;
  /** The same with the figure and what it rests on. */
  readonly told: string;
}

/** What is known of one species; ends left open are infinite. In the unit of the trait. */
export interface RangeRow {
  readonly name: PictureName;
  readonly kept: Range | undefined;
  /** Whether the best stands in for a span that nobody has stated. */
  readonly standsIn: boolean;
  readonly optimum: Range | undefined;
  readonly limit: Range | undefined;
  readonly sources: readonly SourceSpan[];
  /** The adopted figure in words. */
  readonly figure: string;
  /** All that is adopted, in words. */
  readonly told: string;
}

/** The bibliography that records cite, by id. */
type Bibliography = Readonly<Record<string, CitableSource | undefined>>;

/** How figures and words are written, and sources named. */
export interface Wording {
  readonly messages: Messages;
  readonly write: WriteQuantity;
  readonly bibliography: Bibliography;
}

export function rangeRow(
  profile: SpeciesProfile,
  path: FigurePath,
  record: SpeciesRecord | undefined,
  wording: Wording,
): RangeRow {
  const { messages } = wording;
  const name = pictureName(profile, messages);
  const sources = record ? sourceSpans(record, profile.form, path, wording) : [];
  const fact = factAt(profile, path);
  if (!fact) {
    const figure = messages.pictures.unknown;
    const none = { kept: undefined, standsIn: false, optimum: undefined, limit: undefined };
    return { name, ...none, sources, figure, told: `${name.full}: ${figure}` };
  }
  const { kept, standIn, optimum, limit } = fact.value;
  const said = (range: PartialRange | undefined, meaning?: Meaning) =>
    range ? [messages.profile.figure(inWords(range, meaning, path, wording), meaning)] : [];
  const adopted = standIn ? said(optimum ?? kept, "optimum") : said(kept);
  const further = [...(standIn ? [] : said(optimum, "optimum")), ...said(limit, "limit")];
  return {
    name,
    kept: ends(kept, path),
    standsIn: standIn === true,
    optimum: optimum && ends(optimum, path),
    limit: limit && ends(limit, path),
    sources,
    figure: adopted.join("; "),
    told: `${name.full}: ${[...adopted, ...further, messages.basis[fact.basis]].join("; ")}`,
  };
}

/** A span in words; of a limit what lies beyond it. */
function inWords(
  { min, max }: PartialRange,
  meaning: Meaning | undefined,
  path: FigurePath,
  { write, messages }: Wording,
): string {
  const span = { min, max, unit: traitDefinitions[path].unit };
  return meaning === "limit" ? beyond(span, write, messages.ranges) : write(span);
}

/** What each source says of grown animals, in the order of the record. */
function sourceSpans(
  record: SpeciesRecord,
  form: string | undefined,
  path: FigurePath,
  wording: Wording,
): readonly SourceSpan[] {
  return statementsFor(record, form, path)
    .filter(({ stage = "adult" }) => stage === "adult")
    .filter((statement) => hasValue(statement))
    .map((statement) => sourceSpan(statement, record, path, wording));
}

/** Who makes a statement: by the bibliography, or by the key in the record where it is not told there. */
function whoSays(
  by: string,
  sources: SpeciesRecord["sources"],
  { messages: { basis, language }, bibliography }: Wording,
): string {
  if (by === "common-practice") return basis[by];
  if (by === "curator") return basis.curated;
  const cite = Object.hasOwn(sources, by) ? sources[by]?.cite : undefined;
  const source = cite !== undefined && Object.hasOwn(bibliography, cite) ? bibliography[cite] : undefined;
  return source ? sourceName(source, language) : by;
}

function sourceSpan(
  statement: Stated,
  { sources }: SpeciesRecord,
  path: FigurePath,
  wording: Wording,
): SourceSpan {
  const { by, as = "kept", setAside } = statement;
  const meaning = as as Meaning;
  const { basis, pictures, profile, words } = wording.messages;
  const range = inTraitUnit(statement, path) as PartialRange;
  const figure = inWords(range, meaning, path, wording);
  const support = basis[basisOf(statement, sources)];
  const who = whoSays(by, sources, wording);
  const meant = words.waterMeaning[meaning];
  const label = `${setAside === undefined ? meant : `${meant}, ${pictures.setAside}`}: ${who}`;
  return {
    span: ends(range, path),
    meaning,
    label,
    told: [
      label,
      meaning === "limit" ? profile.figure(figure, meaning) : figure,
      ...(who === support ? [] : [support]),
    ].join("; "),
  };
}
