import type { AdultLength, Fact, TraitPath } from "../species";

/**
 * The values of a trait that a source supports, the adopted one first. A length whose total length is only known
 * as a span stands for its shortest and its longest too.
 */
export function standingValues(path: TraitPath, { value, also }: Fact<unknown>): readonly unknown[] {
  const values = also ? [value, ...also] : [value];
  if (path !== "size.adultLength") return values;
  return (values as readonly (readonly AdultLength[])[]).flatMap((lengths) =>
    lengths.some(({ total }) => total.min < total.max)
      ? [lengths, at(lengths, "min"), at(lengths, "max")]
      : [lengths],
  );
}

/** The lengths with their spans narrowed to one end. */
function at(lengths: readonly AdultLength[], end: "min" | "max"): readonly AdultLength[] {
  return lengths.map((length) => ({ ...length, total: { min: length.total[end], max: length.total[end] } }));
}
