import { expect, test } from "vitest";
import { bases, classes, essentialTraits, traitPaths, traitTable } from "../../src/species";
import { classLists, currents, plausibleSpans, traitDefinitions } from "../../src/species/inner";

/** Every object within a value. */
function objectsIn(value: unknown): readonly object[] {
  if (typeof value !== "object" || value === null) return [];
  return [value, ...Object.values(value).flatMap(objectsIn)];
}

test.each(
  Object.entries({
    bases,
    currents,
    essentialTraits,
    plausibleSpans,
    traitDefinitions,
    traitPaths,
    traitTable,
    ...classLists,
    ...classes,
  }),
)("nobody can change %s", (_, table) => {
  for (const part of objectsIn(table)) expect(Object.isFrozen(part)).toBe(true);
});
