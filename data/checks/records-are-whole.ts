import { allFiles } from "../reading/collection";
import { fieldOf, fieldsOf } from "../reading/fields";
import type { Check } from "./check";

export const recordsAreWhole: Check = {
  name: "A record names its schema, has an English name and no empty section",
  find(collection) {
    const unnamed = allFiles(collection)
      .filter(({ json, faults }) => json !== undefined && faults.length === 0)
      .map(({ path, folder, json }) => ({ path, schema: `../schemas/${folder}.schema.json`, json }))
      .filter(({ json, schema }) => fieldOf(json, "$schema") !== schema)
      .map(({ path: file, schema }) => ({
        file,
        at: ["$schema"],
        found: "the address of the schema is missing or another",
        expected: schema,
        example: `"$schema": "${schema}",`,
        mend: "Put it first, so that editors help.",
      }));
    const nameless = collection.records
      .filter(({ record }) => !record.names.en)
      .map(({ path: file }) => ({
        file,
        at: ["names"],
        found: "no English name",
        expected: "one at least, by which reports call it",
        example: '"en": ["zebra danio"]',
        mend: "Where the trade has none, repeat the scientific name.",
      }));
    const empty = collection.files.species.flatMap(({ path: file, json }) =>
      fieldsOf(json)
        .filter(([, held]) => typeof held === "object" && held !== null && Object.keys(held).length === 0)
        .filter(([section]) => section !== "sources")
        .map(([section]) => ({
          file,
          at: [section],
          found: `${section} is empty`,
          expected: "a field in it",
          mend: "Fill it, or take it out.",
        })),
    );
    return [...unnamed, ...nameless, ...empty];
  },
};
