import { type Basis, weakestBasis } from "../record/basis";
import type { SourceVoice, StatementGroup } from "../record/groups";
import type { StatementTopic } from "../record/statement";
import type { TraitWay } from "../traits/definitions";
import { totalLength } from "./lengths";
import type { AdultLength, Fact } from "./profile";

/** What one source said, and what about. */
type Choice = SourceVoice & StatementTopic;

/** The groups of a trait as one fact, by the trait's way; undefined where they give no value. */
export function factOf(way: TraitWay, groups: readonly StatementGroup[]): Fact<unknown> | undefined {
  const choices = groups.map(({ as, sex, stage, measure, standing }) =>
    standing.map((voice) => ({ as, sex, stage, measure, ...voice })),
  );
  switch (way) {
    case "all":
      return union(choices.flat());
    case "one":
      return first(choices.flat());
    case "figures":
      return combined(
        choices.filter((group) => group.every(ofGrown)),
        figures,
      );
    case "lengths":
      return combined(choices, lengths);
  }
}

/** A value with whole other values; those that repeat another are left out. */
export function factWith(basis: Basis, [value, ...others]: readonly unknown[]): Fact<unknown> {
  const also = distinct([value, ...others]).slice(1);
  return also.length > 0 ? { value, basis, also } : { value, basis };
}

/** All that was said together; `"none"` stands for an empty list. */
function union(voices: readonly SourceVoice[]): Fact<unknown> {
  return {
    value: distinct(voices.map(({ value }) => value)).filter((value) => value !== "none"),
    basis: weakestBasis(voices.map(({ basis }) => basis)),
  };
}

/** The first of what was said; the rest are other values. */
function first(voices: readonly SourceVoice[]): Fact<unknown> | undefined {
  return (
    voices[0] &&
    factWith(
      voices[0].basis,
      voices.map(({ value }) => value),
    )
  );
}

/** A value made of the first choice in each group, and those with the choice in one group changed. */
function combined(
  groups: readonly (readonly Choice[])[],
  build: (chosen: readonly Choice[]) => unknown,
): Fact<unknown> | undefined {
  const chosen = groups.flatMap(([first]) => (first ? [first] : []));
  const value = build(chosen);
  if (value === undefined) return undefined;
  const others = groups.flatMap(([, ...others], index) =>
    others.map((other) => build(chosen.map((used, at) => (at === index ? other : used)))),
  );
  const counting = chosen.filter(({ as }) => as !== "wild" && as !== "tested");
  return factWith(weakestBasis(counting.map(({ basis }) => basis)), [value, ...others.filter(Boolean)]);
}

const ofGrown = ({ stage = "adult" }: Choice) => stage === "adult";

/** Figures by meaning; without `kept` the optimum stands in for it, without both there is no value. */
function figures(chosen: readonly Choice[]): unknown {
  const byMeaning = Object.fromEntries(chosen.map(({ as, value }) => [as, value]));
  if (byMeaning.kept) return byMeaning;
  return byMeaning.optimum && { kept: byMeaning.optimum, standIn: true, ...byMeaning };
}

/** One adult length a group, each with the total length that belongs to it. */
function lengths(chosen: readonly Choice[]): readonly AdultLength[] {
  return chosen.map(({ value, measure = "unstated", as, sex }) => ({
    length: value as number,
    measure,
    as: as as AdultLength["as"],
    ...(sex && { sex }),
    total: totalLength(value as number, measure),
  }));
}

function distinct(list: readonly unknown[]): readonly unknown[] {
  const seen = new Set<string>();
  return list.filter((item) => {
    const key = JSON.stringify(item);
    return !seen.has(key) && seen.add(key);
  });
}
