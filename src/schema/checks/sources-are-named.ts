import { sourcesOf, traitsOf } from "../walk";
import type { Check } from "./check";

/** Every statement names a source of the record or a reserved word, and every source is used. */
export const sourcesAreNamed: Check = (record) => {
  const known = Object.keys(sourcesOf(record));
  const statements = traitsOf(record).flatMap((trait) => trait.statements);
  const unknown = statements
    .filter(
      ({ statement: { by } }) =>
        typeof by === "string" && ![...known, "common-practice", "curator"].includes(by),
    )
    .map(({ path, statement }) => ({
      path: `${path}.by`,
      found: statement.by,
      expected: `one of ${[...known, "common-practice", "curator"].join(", ")}`,
    }));
  const reserved = known
    .filter((key) => key === "common-practice" || key === "curator")
    .map((key) => ({ path: `sources.${key}`, found: key, expected: "a key that is not reserved" }));
  const unused = known
    .filter((key) => !statements.some(({ statement }) => statement.by === key))
    .map((key) => ({ path: `sources.${key}`, found: key, expected: "a source that some statement names" }));
  return [...unknown, ...reserved, ...unused];
};
