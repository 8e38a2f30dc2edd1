import { distinct } from "../../distinct";
import { strongestBasis, weakestBasis } from "../record/basis";
import type { SourceVoice, StatementGroup } from "../record/groups";
import type { StatementTopic } from "../record/statement";
import type { TraitWay } from "../traits/definitions";
import type { SizeForGroup } from "../traits/values";
import { type Choice, joined } from "./joined";
import { isMeasuredWhole, totalLength } from "./lengths";
import type { AdultLength, Fact } from "./profile";

/** How the choices of a trait become its value. */
interface Way {
  /** The choices that a group offers, the one to use first. */
  readonly offer?: (group: StatementGroup) => readonly Omit<Choice, "group">[];
  readonly build: (chosen: readonly Choice[]) => unknown;
  /** Whether the value was computed or stands in for what nobody stated. */
  readonly isDerived?: (chosen: readonly Choice[]) => boolean;
  /** The keys of the sources that it was computed by, beside those of the choices. */
  readonly saidBy?: (chosen: readonly Choice[]) => readonly string[];
}

/**
 * The groups of a trait as one fact, by the trait's way; undefined where they give no value.
 *
 * @param standardShare - Standard length as a share of total length, where the species' own is known.
 */
export function factOf(
  way: TraitWay,
  groups: readonly StatementGroup[],
  standardShare?: SourceVoice<number>,
): Fact<unknown> | undefined {
  switch (way) {
    case "all":
      return union(groups.flatMap(({ standing }) => standing));
    case "one":
      return combined(groups, { build: ([only]) => only?.value });
    case "figures":
      return combined(groups.filter(ofGrown), { offer: joined, build: figures, isDerived: optimumStandsIn });
    case "lengths":
      return combined(groups, {
        build: (chosen) => chosen.map((choice) => lengthOf(choice, standardShare?.value)),
        isDerived: totalsAreComputed,
        saidBy: (chosen) => (standardShare && chosen.some(isComputed) ? [standardShare.by] : []),
      });
    case "rooms":
      return combined(groups, { build: rooms });
    case "ages":
      return combined(groups, { build: byMeaning });
  }
}

/** A value with whole other values; those that repeat another are left out. */
export function factWith(
  { basis, said }: Pick<Fact<unknown>, "basis" | "said">,
  [value, ...others]: readonly unknown[],
): Fact<unknown> {
  const also = distinct([value, ...others]).slice(1);
  return { value, basis, ...(said && { said }), ...(also.length > 0 && { also }) };
}

/** All that was said together, each value as well supported as by the best who says it; `"none"` stands for an empty list. */
function union(voices: readonly SourceVoice[]): Fact<unknown> {
  const values = distinct(voices.map(({ value }) => value));
  const supports = (value: unknown) =>
    voices.flatMap((voice) => (JSON.stringify(voice.value) === JSON.stringify(value) ? voice.basis : []));
  return {
    value: values.filter((value) => value !== "none"),
    basis: weakestBasis(values.flatMap((value) => strongestBasis(supports(value)) ?? [])),
    said: distinct(voices.map(({ by }) => by)),
  };
}

/**
 * A value made of the first choice in each group; beside it those with the choice in one group changed, and those with
 * all that one source says.
 */
function combined(groups: readonly StatementGroup[], way: Way): Fact<unknown> | undefined {
  const { offer = asStated, build, isDerived = () => false, saidBy = () => [] } = way;
  const offered = groups.map(({ as, sex, stage, measure, standing, ...of }, group) =>
    offer({ as, sex, stage, measure, standing, ...of }).map((choice) => ({
      group,
      as,
      sex,
      measure,
      ...choice,
    })),
  );
  const chosen = offered.flatMap(([first]) => (first ? [first] : []));
  const value = build(chosen);
  if (value === undefined) return undefined;
  const changed = (others: readonly Choice[]) =>
    build(chosen.map((used) => others.find(({ group }) => group === used.group) ?? used));
  const counting = offered.filter(([first]) => first && !informs(first));
  const oneChanged = counting.flatMap(([, ...others]) => others.map((other) => changed([other])));
  const voices = counting.flat();
  const sources = distinct(voices.map(({ root }) => root));
  const oneSource = sources.map((source) => changed(voices.filter(({ root }) => root === source)));
  const used = chosen.filter((choice) => !informs(choice));
  const basis = isDerived(chosen) ? "derived" : weakestBasis(used.flatMap(({ bases }) => bases));
  const said = distinct([...used.flatMap(({ said }) => said), ...saidBy(chosen)]);
  const others = [...oneChanged, ...oneSource].filter((other) => other !== undefined);
  return factWith({ basis, said }, [value, ...others]);
}

const asStated = ({ standing }: StatementGroup) =>
  standing.map(({ value, root, basis, by }) => ({ value, root, bases: [basis], said: [by] }));

const ofGrown = ({ stage = "adult" }: StatementTopic) => stage === "adult";

/** Whether figures only inform, and decide nothing: those of the wild, of tests, and of animals that are not grown. */
export const informs = ({ as, stage = "adult" }: Meant): boolean =>
  as === "wild" || as === "tested" || stage !== "adult";

/** What a figure means, and of which animals it is. */
interface Meant {
  readonly as?: string | null | undefined;
  readonly stage?: string | undefined;
}

const byMeaning = (chosen: readonly Choice[]): { readonly [meaning: string]: unknown } =>
  Object.fromEntries(chosen.map(({ as, value }) => [as, value]));

/** Figures by meaning; without `kept` the optimum stands in for it, without both there is no value. */
function figures(chosen: readonly Choice[]): unknown {
  const meant = byMeaning(chosen);
  const precision = chosen.find(({ as }) => as === "kept")?.precision;
  if (meant.kept) return { ...meant, ...(precision && { precision }) };
  return meant.optimum && { kept: meant.optimum, standIn: true, ...meant };
}

const optimumStandsIn = (chosen: readonly Choice[]) => chosen.every(({ as }) => as !== "kept");

function lengthOf({ value, measure = "unstated", as, sex }: Choice, standardShare?: number): AdultLength {
  return {
    length: value as number,
    measure,
    as: as as AdultLength["as"],
    ...(sex && { sex }),
    total: totalLength(value as number, measure, standardShare),
  };
}

/** Whether a share of standard length goes into the total. */
const isComputed = ({ measure }: Choice) => !isMeasuredWhole(measure);

/** Whether there is a sex and meaning of which nobody measured the total length. */
function totalsAreComputed(chosen: readonly Choice[]): boolean {
  const subject = ({ as, sex }: Choice) => `${as} ${sex}`;
  const whole = chosen.filter(({ measure }) => isMeasuredWhole(measure)).map(subject);
  return chosen.some((choice) => !whole.includes(subject(choice)));
}

/** The least rooms, that for the fewest animals first. */
const rooms = (chosen: readonly Choice[]): readonly SizeForGroup[] =>
  chosen.map(({ value }) => value as SizeForGroup).sort((a, b) => a.for - b.for);
