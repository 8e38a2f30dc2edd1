import { distinct } from "../../distinct";
import type { PartialRange } from "../../ranges";
import { stated } from "../../ranges/inner";
import {
  type Basis,
  type FigurePath,
  factAt,
  type SpeciesProfile,
  type SpeciesRecord,
  traitTable,
} from "../../species";
import { groupsOf, joined, statementsFor } from "../../species/inner";

/** A span to keep a species in that a source supports. */
export interface StandingSpan {
  /** Closed below where the trait has a floor. */
  readonly span: PartialRange;
  /** The keys of the sources that say so, where they are known. */
  readonly said: readonly string[];
}

/** The spans of a species on an axis, the adopted one first. */
export interface Standing {
  readonly spans: readonly [StandingSpan, ...StandingSpan[]];
  readonly basis: Basis;
}

/** The spans that stand for a species on an axis; undefined where it has none. */
export function standingSpans(
  profile: SpeciesProfile,
  axis: FigurePath,
  record: SpeciesRecord | undefined,
): Standing | undefined {
  const fact = factAt(profile, axis);
  if (!fact) return undefined;
  const { floor } = traitTable[axis];
  const voices = record ? voicesIn(record, profile.form, axis) : [];
  const standing = ({ kept }: { readonly kept: PartialRange }): StandingSpan => {
    const same = voices.filter(({ value }) => JSON.stringify(value) === JSON.stringify(kept));
    return { span: fromFloor(kept, floor), said: [...new Set(same.flatMap(({ said }) => said))] };
  };
  const others = (fact.also ?? []).map(standing);
  const adopted = standing(fact.value);
  const known = { ...adopted, said: fact.said ?? adopted.said };
  return { spans: [known, ...distinct([known, ...others], ({ span }) => span).slice(1)], basis: fact.basis };
}

/** Where a trait ends at a floor, a span that is open below reaches down to it. */
const fromFloor = ({ min, max }: PartialRange, floor: number | undefined): PartialRange =>
  stated(min ?? floor, max);

/** A span as one source states it, its open end closed by others, with the keys of them all. */
interface Voice {
  readonly value: PartialRange;
  readonly said: readonly string[];
}

/**
 * The spans to keep it in of a record, what its form states in place of those of the species; without any the optima,
 * which stand in for them.
 */
function voicesIn(record: SpeciesRecord, form: string | undefined, axis: FigurePath): readonly Voice[] {
  const said = groupsOf(statementsFor(record, form, axis), axis, record.sources);
  const groups = [...said.values()].filter(({ stage = "adult" }) => stage === "adult");
  const meant = (meaning: string) =>
    groups.filter(({ as }) => as === meaning).flatMap(joined) as readonly Voice[];
  const kept = meant("kept");
  return kept.length > 0 ? kept : meant("optimum");
}
