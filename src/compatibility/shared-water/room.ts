import { decimal } from "../../decimal";
import type { Giving } from "../rules/shared/water";
import { type Ends, sharedBy, widthOf } from "./ends";
import type { KeptWater } from "./kept-water";

/** What some animals leave each other of one figure of water. */
export interface Room {
  /** Around the figure to aim at, as far as it may move either way. */
  readonly span: Ends;
  /** The animal whose lower end decides, by its index; absent where none has one. */
  readonly least?: number | undefined;
  /** The animal whose upper end decides. */
  readonly most?: number | undefined;
}

/** What the usual water may be for one. */
export type Spans = Pick<KeptWater, "given" | "kept" | "best">;

/** Two animals that share no water of a kind, by their indices; one twice where there is none even for that one. */
export type Opposed = readonly [needsMore: number, bearsLess: number];

type Waters = readonly (Spans | undefined)[];

/**
 * The room that animals leave each other; those of which nobody knows leave all. Undefined where nobody knows of any.
 * Its middle is that of what is best for all, or else of what all are kept in. It ends with what all are kept in where that
 * is wide enough to be held; else it ends with what all can be given, and its middle moves in until it can be held.
 *
 * @param by - `given`: whatever they are kept in.
 */
export function roomOf(waters: Waters, { least, roomy }: Giving, by?: "given"): Room | undefined {
  const known = waters.flatMap((water, index) => (water ? [{ index, ...water }] : []));
  if (known.length === 0) return undefined;
  const given = sharedBy(known.map((each) => each.given));
  const kept = sharedBy(known.map((each) => each.kept));
  const meaning = by ?? (isWide(kept, least) ? "kept" : "given");
  const ends = { given, kept }[meaning];
  const best = sharedBy(known.map((each) => each.best));
  const aim = (by ? [] : [best, kept]).find((span) => isWide(span, 0)) ?? given;
  const decides = (end: keyof Ends) =>
    Number.isFinite(ends[end]) ? known.find((each) => each[meaning][end] === ends[end])?.index : undefined;
  return {
    span: around(middleOf(closed(aim, roomy)), closed(ends, roomy), least),
    least: decides("min"),
    most: decides("max"),
  };
}

/** A span that is open at one end, as wide as what counts as room to spare. */
function closed({ min, max }: Ends, roomy: number): Ends {
  if (!Number.isFinite(max)) return { min, max: min + roomy };
  return Number.isFinite(min) ? { min, max } : { min: max - roomy, max };
}

/** The middle of a span. */
export const middleOf = ({ min, max }: Ends): number => (min + max) / 2;

/** What of a span lies evenly around a figure, which stays so far from both ends that it can be held. */
function around(figure: number, { min, max }: Ends, least: number): Ends {
  const held = Math.min(least, max - min) / 2;
  const aim = Math.min(Math.max(figure, min + held), max - held);
  const reach = Math.min(aim - min, max - aim);
  return { min: aim - reach, max: aim + reach };
}

/** The two animals whose spans prove that no water of a kind serves all; undefined where some does. */
export function opposedIn(spans: readonly (Ends | undefined)[], { least }: Giving): Opposed | undefined {
  const known = spans.flatMap((span, index) => (span ? [{ index, ...span }] : []));
  const shared = sharedBy(known);
  if (isWide(shared, known.length > 1 ? least : 0)) return undefined;
  const needsMore = known.find(({ min }) => min === shared.min);
  const isOther = (each: (typeof known)[number]) => each !== needsMore;
  const bearsLess = known.filter(({ max }) => max === shared.max);
  const beside = bearsLess.find(isOther) ?? (isWide(shared, 0) ? known.find(isOther) : needsMore);
  return needsMore && beside && [needsMore.index, beside.index];
}

/** Whether a span is as wide as it must be to be held. */
const isWide = (span: Ends, least: number): boolean => decimal(widthOf(span)) >= least;
