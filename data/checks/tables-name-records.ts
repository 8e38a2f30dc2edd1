import type { Collection } from "../reading/collection";
import { fieldOf, fieldsOf } from "../reading/fields";
import { nearestId } from "../reading/spelling";
import type { Check } from "./check";

type Path = readonly (string | number)[];

/** Ids of species in official guidance, and those that a law leaves out. Only lines of tables need a record. */
export const tablesNameRecords: Check = {
  name: "A table of official guidance names ids of records, and so does a law that leaves a species out, if they have one",
  find(collection) {
    const ids = idsOf(collection);
    const moved = new Map(
      collection.files.moved.map(({ name, json }) => [name, String(fieldOf(json, "to"))]),
    );
    return [...collection.files.standards, ...collection.files.legal].flatMap(({ path: file, json }) =>
      named(json)
        .filter(({ id }) => !ids.has(id))
        .map(({ at, id }) => ({ at, id, meant: moved.get(id) ?? nearestId(id, ids) }))
        .filter(({ at, meant }) => meant !== undefined || at.includes("table"))
        .map(({ at, id, meant }) => ({
          file,
          at,
          found: `${id}, which no record is called`,
          expected: "the id of a record",
          guess: meant === undefined ? "" : ` Did you mean ${meant}?`,
          mend: "Correct it, or take it out until the species has a record.",
        })),
    );
  },
};

/** The ids of all records, be they well formed or not. */
const idsOf = ({ files }: Collection): ReadonlySet<string> => new Set(files.species.map(({ name }) => name));

/** The ids that stand under `species` or `except`, alone or in a list. */
function named(value: unknown, at: Path = []): readonly { readonly at: Path; readonly id: string }[] {
  const isId = at.some((key) => key === "species" || key === "except");
  if (typeof value === "string") return isId ? [{ at, id: value }] : [];
  const entries = Array.isArray(value) ? [...value.entries()] : fieldsOf(value);
  return entries.flatMap(([key, held]) => named(held, [...at, key]));
}
