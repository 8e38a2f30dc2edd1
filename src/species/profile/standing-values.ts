import { listOf, objectOf } from "../../errors";
import { traitDefinitions } from "../traits/definitions";
import { splitPath } from "../traits/path";
import type { TraitPath } from "../traits/values";
import type { AdultLength, Fact } from "./profile";

type Lengths = readonly AdultLength[];

/**
 * The values of a trait that a source supports, the adopted one first. Lengths stand for themselves, and for the
 * shortest and the longest that any source and any span allows.
 *
 * @throws InvalidInputError where there is no such trait, or for what is no fact of it.
 */
export function standingValues(path: TraitPath, fact: Fact<unknown>): readonly unknown[] {
  splitPath(path);
  const { value, also = [] } = objectOf(fact, path);
  const values = [value, ...also];
  return traitDefinitions[path].way === "lengths"
    ? standingLengths(values as readonly Lengths[], path)
    : values;
}

function standingLengths(values: readonly Lengths[], path: TraitPath): readonly Lengths[] {
  const [adopted = [], ...others] = values.map((lengths) => listOf(lengths, path));
  const exact = adopted.every(({ total }) => total.min === total.max);
  if (others.length === 0 && exact) return [adopted];
  const alike = others.every((lengths) => measuredAlike(lengths, adopted));
  const compared = alike ? [values] : values.map((lengths) => [lengths]);
  return [adopted, ...compared.flatMap((sources) => [atEnd(sources, "min"), atEnd(sources, "max")])];
}

/** Each length at the shortest or the longest that one of the sources gives it. */
function atEnd(sources: readonly Lengths[], end: "min" | "max"): Lengths {
  const [first = []] = sources;
  return first.map((length) => {
    const measured = sources.flat().filter((other) => subjectOf(other) === subjectOf(length));
    const total = Math[end](...measured.map((other) => other.total[end]));
    return { ...length, total: { min: total, max: total } };
  });
}

/** Whether two sources measured the same, in whatever order they say it. */
function measuredAlike(some: Lengths, others: Lengths): boolean {
  const subjects = (lengths: Lengths) => lengths.map(subjectOf).sort().join();
  return subjects(some) === subjects(others);
}

/** What was measured of whom. */
const subjectOf = ({ as, sex, measure }: AdultLength) => [as, sex, measure].join(" ");
