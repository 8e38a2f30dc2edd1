import type { Problem } from "../../../errors";
import type { Check } from "../../checked";
import { type Fields, fieldsOf } from "../../fields";
import { reserved } from "../reserved";
import { sourcesOf, traitsOf } from "../walk";

/**
 * Every statement names a source of the record or a reserved word, every source is used, and each says where the figure
 * stands, or that it was recalled or observed. A line of a misspelt trait or section uses it too.
 */
export const sourcesAreNamed: Check = (record) => {
  const keys = Object.keys(sourcesOf(record));
  const known = new Set([...keys, ...reserved]);
  const statements = traitsOf(record).flatMap((trait) => trait.statements);
  const used = new Set([record, ...Object.values(fieldsOf(record.forms)).map(fieldsOf)].flatMap(namedIn));
  const unknown = statements
    .filter(({ statement: { by } }) => by === undefined || (typeof by === "string" && !known.has(by)))
    .map(
      ({ path, statement }): Problem => ({
        path: [...path, "by"],
        code: "word",
        found: statement.by,
        expected: `one of ${[...known].join(", ")}`,
      }),
    );
  const unfit = keys
    .filter((key) => reserved.includes(key))
    .map(
      (key): Problem => ({
        path: ["sources", key],
        code: "word",
        found: key,
        expected: "a key that is not reserved",
      }),
    );
  const unused = keys
    .filter((key) => !used.has(key))
    .map(
      (key): Problem => ({
        path: ["sources", key],
        code: "word",
        found: key,
        expected: "a source that some statement names",
      }),
    );
  const nowhere = Object.entries(sourcesOf(record))
    .filter(([, { at, memory, observed }]) => !at && !memory && !observed)
    .map(
      ([key, source]): Problem => ({
        path: ["sources", key],
        code: "type",
        found: source,
        expected: "at: the page, row or address; or memory: true where the source was not read",
      }),
    );
  return [...unknown, ...unfit, ...unused, ...nowhere];
};

/** Whom the lines of a species or a form name, be the trait or the section known or misspelt. */
const namedIn = (holder: Fields): readonly unknown[] =>
  Object.values(holder)
    .flatMap((section) => Object.values(fieldsOf(section)))
    .flatMap((lines) => (Array.isArray(lines) ? lines : []))
    .map((line) => fieldsOf(line).by);
