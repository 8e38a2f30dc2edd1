import { listOf, objectOf } from "../../checks";
import { traitDefinitions } from "../traits/definitions";
import { splitPath } from "../traits/path";
import type { TraitPath } from "../traits/values";
import type { AdultLength, Fact } from "./profile";

type Lengths = readonly AdultLength[];

/**
 * For each value of a trait that a source supports, the adopted one first, what it may be: itself, and lengths that are
 * not known exactly also the shortest and the longest that they may be.
 *
 * @throws InvalidInputError where there is no such trait, or for what is no fact of it.
 */
export function standingValues(path: TraitPath, fact: Fact<unknown>): readonly (readonly unknown[])[] {
  splitPath(path);
  const { value, also = [] } = objectOf(fact, path);
  const values = [value, ...also];
  return traitDefinitions[path].way === "lengths"
    ? values.map((lengths) => withEnds(listOf(lengths as Lengths, path)))
    : values.map((each) => [each]);
}

function withEnds(lengths: Lengths): readonly Lengths[] {
  const exact = lengths.every(({ total }) => total.min === total.max);
  return exact ? [lengths] : [lengths, atEnd(lengths, "min"), atEnd(lengths, "max")];
}

const atEnd = (lengths: Lengths, end: "min" | "max"): Lengths =>
  lengths.map((length) => ({ ...length, total: { min: length.total[end], max: length.total[end] } }));
