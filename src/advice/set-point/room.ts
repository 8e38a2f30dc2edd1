import type { Giving } from "../../compatibility/inner";
import { decimal } from "../../decimal";
import { type Ends, sharedBy, widthOf } from "./ends";
import type { KeptWater } from "./kept-water";

/** What some animals leave each other of one figure of water. */
export interface Room {
  /** What all can be given. */
  readonly given: Ends;
  /** What all are kept in; crossed where there is nothing of the sort. */
  readonly kept: Ends;
  /** The one of the two in which the margin is measured. */
  readonly within: Ends;
  /** The animal whose lower end decides that, by its index; absent where none has one. */
  readonly least?: number | undefined;
  /** The animal whose upper end decides. */
  readonly most?: number | undefined;
}

/** Two animals that share no water of a kind, by their indices; one twice where there is none even for that one. */
export type Opposed = readonly [needsMore: number, bearsLess: number];

type Waters = readonly (KeptWater | undefined)[];

/**
 * The room that animals leave each other; those of which nobody knows leave all. Undefined where nobody knows of any.
 *
 * @param by - In which span the margin is measured: in what all are kept in where that is wide enough to be held.
 */
export function roomOf(waters: Waters, { least: narrowest, roomy }: Giving, by?: "given"): Room | undefined {
  const known = waters.flatMap((water, index) => (water ? [{ index, ...water }] : []));
  if (known.length === 0) return undefined;
  const given = closed(sharedBy(known.map((each) => each.given)), roomy);
  const kept = closed(sharedBy(known.map((each) => each.kept)), roomy);
  const span = by ?? (isWide(kept, narrowest) ? "kept" : "given");
  const within = { given, kept }[span];
  const decides = (end: keyof Ends) => known.find((each) => each[span][end] === within[end])?.index;
  return { given, kept, within, least: decides("min"), most: decides("max") };
}

/** A span that is open at one end, as wide as what counts as room to spare. */
function closed({ min, max }: Ends, roomy: number): Ends {
  if (!Number.isFinite(max)) return { min, max: min + roomy };
  return Number.isFinite(min) ? { min, max } : { min: max - roomy, max };
}

/** The two animals that prove that no water of a kind serves all; undefined where some does. */
export function opposedIn(waters: Waters, { least }: Giving): Opposed | undefined {
  const known = waters.flatMap((water, index) => (water ? [{ index, ...water.given }] : []));
  const shared = sharedBy(known);
  if (isWide(shared, known.length > 1 ? least : 0)) return undefined;
  const needsMore = known.find(({ min }) => min === shared.min);
  const isOther = (each: (typeof known)[number]) => each !== needsMore;
  const bearsLess = known.filter(({ max }) => max === shared.max);
  const beside = bearsLess.find(isOther) ?? (isWide(shared, 0) ? known.find(isOther) : needsMore);
  return needsMore && beside && [needsMore.index, beside.index];
}

/** Whether a span is as wide as it must be to be held. */
export const isWide = (span: Ends, least: number): boolean => decimal(widthOf(span)) >= least;
