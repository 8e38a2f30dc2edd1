import { decimal } from "../../../decimal";
import type { FactName } from "../../../plan";
import { overlap, type PartialRange, width } from "../../../ranges";
import { stated } from "../../../ranges/inner";
import type { Figures } from "../../../species";
import type { GivenCondition, Judged } from "../../engine/rule/finding";
import type { MeasureUnit } from "../../engine/rule/measures";

/** What is known of the water that an animal is kept in. */
type Span = Figures<PartialRange>;

/** How a figure of water gives way, in its own unit. */
export interface Giving {
  /** How far each end of a kept span gives way: half of what handbooks round to. */
  readonly gives: number;
  /** Water shared by less than this cannot be held. */
  readonly least: number;
  /** Kept spans that share less than this meet at their ends; absent where living at an end for good harms nobody. */
  readonly steady?: number;
  /** Kept spans that share no more than this part of one of them meet at its end. */
  readonly endShare?: number;
  /** A shared kept span below this leaves no room to spare. */
  readonly roomy: number;
}

/**
 * The water that an animal can be given for lasting keeping: its kept span, each end of which gives way, an end that is
 * a handbook's class twice as far; never past a limit, and hardness and salinity never below zero.
 */
export const wantedOf = (span: Span, { gives }: Pick<Giving, "gives">): PartialRange =>
  widened(span, (end) => (span.precision?.[end] === "class" ? 2 * gives : gives));

/** That water, were each end as sure as one that is the animal's own. */
export const surelyOf = (span: Span, { gives }: Pick<Giving, "gives">): PartialRange =>
  widened(span, () => gives);

function widened({ kept, limit }: Span, give: (end: "min" | "max") => number): PartialRange {
  const { min, max } = wellFormed(kept);
  const { min: least = 0, max: most = Number.POSITIVE_INFINITY } = limit ?? {};
  return stated(
    min === undefined ? min : decimal(Math.min(min, Math.max(min - give("min"), least, 0))),
    max === undefined ? max : decimal(Math.max(max, Math.min(max + give("max"), most))),
  );
}

/** A span as it is stated; refused where it is none, which giving way could hide. */
function wellFormed(span: PartialRange): PartialRange {
  overlap(span, span);
  return span;
}

/** The one end of what is kept that a season is held to, and how far it gives way then; undefined where nobody states it. */
export function inSeason(
  { kept, tolerated, limit }: Span,
  end: "min" | "max",
  gives: number,
): { readonly span: Span; readonly giving: Pick<Giving, "gives"> } | undefined {
  const [edge, borne] = [kept[end], tolerated?.[end]];
  if (edge === undefined) return undefined;
  const span = { kept: { [end]: edge }, limit };
  return { span, giving: { gives: borne === undefined ? gives : Math.abs(borne - edge) } };
}

/** How wide a span of water is; none is less than any. */
const widthOf = (span: PartialRange | undefined): number =>
  span ? decimal(width(span) ?? Number.POSITIVE_INFINITY) : Number.NEGATIVE_INFINITY;

/** Whether a span of water is wide enough to be held. */
const canBeHeld = (span: PartialRange | undefined, { least }: Pick<Giving, "least">): span is PartialRange =>
  widthOf(span) >= least;

/**
 * Whether two meet at the ends alone of what they are kept in, and past what is best for one of them. Of a span so wide
 * that it holds summer and winter, a small share is an end, whatever its width: water for good is none of a season's.
 */
export function meetPastTheirBest(a: Span, b: Span, giving: Giving): boolean {
  const { steady, endShare = 0 } = giving;
  if (steady === undefined) return false;
  const shared = overlap(a.kept, b.kept);
  if (widthOf(shared) < steady) {
    const wanted = overlap(wantedOf(a, giving), wantedOf(b, giving));
    return wanted !== undefined && [a, b].some((span) => isPast(wanted, bestOf(span, giving), giving));
  }
  return [a, b].some(
    ({ kept, optimum }) =>
      widthOf(shared) <= decimal(endShare * widthOf(kept)) && isPast(shared, optimum, giving),
  );
}

/** The optimum of an animal, whose ends give way as those of what it is kept in. */
const bestOf = ({ optimum, limit }: Span, giving: Giving): PartialRange | undefined =>
  optimum && wantedOf({ kept: optimum, limit }, giving);

/** Whether water leaves nothing of what is best for an animal. */
const isPast = (water: PartialRange | undefined, best: PartialRange | undefined, giving: Giving): boolean =>
  water !== undefined && best !== undefined && !canBeHeld(overlap(water, best), giving);

/** The measures of a finding about water that two share. */
export const sharedWaterMeasures = <const Unit extends MeasureUnit>(unit: Unit) => ({
  from: unit,
  to: unit,
  shared: unit,
});

type SharedAnswer = Judged<
  "blocking" | "restricting" | "advisory" | "favourable",
  ReturnType<typeof sharedWaterMeasures<MeasureUnit>>
>;

/**
 * Water for two. Where the kept spans themselves share enough, and something of the best for either, all is well. Else what
 * both can be given must be wide enough to be held, or it blocks, as it does where they meet only at the ends of what they
 * are kept in and past the optimum of either; where they meet only because the ends of a handbook's class are vague or both
 * give way, or where an optimum stands in for what is kept, nobody knows; and what they can be given is what it restricts
 * to.
 */
export function judgeSharedWater(a: Span, b: Span, on: FactName, giving: Giving): readonly SharedAnswer[] {
  const { roomy, least, steady = 0 } = giving;
  const shared = overlap(a.kept, b.kept);
  const isBestOfNeither = [a, b].every(({ optimum }) => isPast(shared, optimum, giving));
  const isRoomy = !isBestOfNeither && widthOf(shared) >= Math.max(roomy, least, steady);
  const isAtAnEnd = meetPastTheirBest(a, b, giving);
  if (shared && isRoomy && !isAtAnEnd) return [{ weight: "favourable", measures: { shared } }];
  const wanted = overlap(wantedOf(a, giving), wantedOf(b, giving));
  if (!canBeHeld(wanted, giving)) return [notShared(a, b)];
  if (isAtAnEnd) return [notShared(a, b, shared)];
  const surely = overlap(surelyOf(a, giving), surelyOf(b, giving));
  const kept = { from: a.kept, to: b.kept };
  if (!canBeHeld(surely, giving) || bothMustGive(a, b, giving))
    return [{ weight: "advisory", couldBe: "blocking", measures: kept }];
  const condition = { on, wanted, aim: shared ?? middleOf(wanted) };
  const measures = shared ? { from: a.kept, to: b.kept, shared } : kept;
  return [{ weight: "restricting", measures, condition }];
}

/** That two share no water, or at an end alone; where an optimum stands in for what one is kept in, nobody knows. */
export const notShared = (a: Span, b: Span, shared?: PartialRange) => {
  const measures = { from: a.kept, to: b.kept, ...(shared && { shared }) };
  return a.standIn || b.standIn
    ? ({ weight: "advisory", couldBe: "blocking", measures } as const)
    : ({ weight: "blocking", measures } as const);
};

/** Whether two lie so far apart that one that gives way does not reach what the other is kept in. */
export const bothMustGive = (a: Span, b: Span, giving: Pick<Giving, "gives">): boolean =>
  !overlap(a.kept, surelyOf(b, giving)) && !overlap(surelyOf(a, giving), b.kept);

/** The middle of a span, as a span; all of one that is open. */
function middleOf(span: PartialRange): PartialRange {
  const { min, max } = span;
  if (min === undefined || max === undefined) return span;
  const middle = decimal((min + max) / 2);
  return { min: middle, max: middle };
}

/** The measures of a finding about planned water; of a season the figure stands under its name. */
export const plannedWaterMeasures = <const Unit extends MeasureUnit>(unit: Unit) => ({
  kept: unit,
  optimum: unit,
  planned: unit,
  hottest: unit,
  coolest: unit,
  limit: unit,
});

type PlannedAnswer = Judged<"restricting" | "advisory", ReturnType<typeof plannedWaterMeasures<MeasureUnit>>>;

/** The planned figure of a fact, and its name if it is that of a season. */
interface Planned {
  readonly on: FactName;
  readonly as?: "planned" | "hottest" | "coolest";
  readonly figure: number | undefined;
}

/**
 * Planned water for one: it restricts to what the animal can be given; past a limit it says so. Water that it can be
 * given, but outside what it is kept in or its optimum, is worth knowing. Water for good is aimed at what it is kept in; of
 * a season the end that it bears is asked and told.
 */
export function judgePlannedWater(
  span: Span,
  { on, as = "planned", figure }: Planned,
  giving: Pick<Giving, "gives">,
): readonly PlannedAnswer[] {
  const wanted = wantedOf(span, giving);
  const { kept, optimum, limit } = span;
  const measures = { kept, [as]: figure };
  const past = figure !== undefined && limit !== undefined && lies(figure, limit) !== "within";
  const isForGood = as === "planned";
  const asked: PlannedAnswer = {
    weight: "restricting",
    measures: { kept: isForGood ? kept : wanted, [as]: figure, ...(past && { limit }) },
    ...(past && { watchFor: "gasping" as const }),
    condition: { on, wanted, ...(isForGood && { aim: kept }) },
  };
  if (figure === undefined || lies(figure, wanted) !== "within") return [asked];
  if (lies(figure, kept) !== "within") return [asked, { weight: "advisory", measures }];
  if (optimum && isForGood && lies(figure, optimum) !== "within")
    return [asked, { weight: "advisory", measures: { ...measures, optimum } }];
  return [asked];
}

/** Any water: what is asked for one of which nobody knows what it is kept in may lie on either side of everything. */
export const anyWater = (on: FactName): readonly GivenCondition[] => [
  { on, wanted: { min: Number.MAX_VALUE } },
  { on, wanted: { max: -Number.MAX_VALUE } },
];

/** Where a figure lies beside a span. */
function lies(figure: number, { min, max }: PartialRange): "below" | "within" | "above" {
  if (min !== undefined && figure < min) return "below";
  return max !== undefined && figure > max ? "above" : "within";
}
