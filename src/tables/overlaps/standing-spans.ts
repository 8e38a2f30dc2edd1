import type { PartialRange } from "../../ranges";
import { stated } from "../../ranges/inner";
import {
  type Basis,
  factAt,
  type SpeciesProfile,
  type SpeciesRecord,
  statementsOf,
  traitTable,
} from "../../species";
import { groupsOf, joined } from "../../species/inner";
import type { OverlapAxis } from "./axis";

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
  axis: OverlapAxis,
  record: SpeciesRecord | undefined,
): Standing | undefined {
  const fact = factAt(profile, axis);
  if (!fact) return undefined;
  const said = record ? saidIn(record, profile.form, axis) : new Map<string, readonly string[]>();
  const standing = ({ kept }: { readonly kept: PartialRange }): StandingSpan => ({
    span: fromFloor(kept, traitTable[axis].floor),
    said: said.get(JSON.stringify(kept)) ?? [],
  });
  const others = (fact.also ?? []).map(standing);
  const adopted = standing(fact.value);
  const known = { ...adopted, said: fact.said ?? adopted.said };
  return { spans: [known, ...distinct([known, ...others]).slice(1)], basis: fact.basis };
}

/** Where a trait ends at a floor, a span that is open below reaches down to it. */
const fromFloor = ({ min, max }: PartialRange, floor: number | undefined): PartialRange =>
  stated(min ?? floor, max);

function distinct(standing: readonly StandingSpan[]): readonly StandingSpan[] {
  const seen = new Set<string>();
  return standing.filter(({ span }) => {
    const key = JSON.stringify(span);
    return !seen.has(key) && seen.add(key);
  });
}

/** Who says each span of a record, or of its form, by the span as JSON; an optimum may stand in for a span to keep in. */
function saidIn(record: SpeciesRecord, form: string | undefined, axis: OverlapAxis) {
  const own = form === undefined ? undefined : record.forms?.[form];
  const groups = [record, ...(own ? [own] : [])].flatMap((stated) => [
    ...groupsOf(statementsOf(stated, axis), axis, record.sources).values(),
  ]);
  const said = (meaning: string) =>
    groups
      .filter(({ as, stage = "adult" }) => as === meaning && stage === "adult")
      .flatMap(joined)
      .map(({ value, said }) => [JSON.stringify(value), said] as const);
  return new Map([...said("optimum"), ...said("kept")]);
}
