import type { Check } from "./check";

/** Acts and prey that rule company out stand on a source, or on a note that says how keepers know. */
export const whatBlocksHasEvidence: Check = {
  name: "What blocks has evidence",
  find: ({ records }) =>
    records.flatMap(({ path, record: { temperament, predation } }) => {
      const deadly = statementsAt(temperament?.acts, ["temperament", "acts"]).filter(
        ({ value: act }) =>
          act !== undefined &&
          act !== "none" &&
          (act.does === "kills" ||
            (act.does === "bites" && act.target === "any" && (act.when ?? "always") === "always")),
      );
      const fishEating = statementsAt(predation?.eats, ["predation", "eats"]).filter(
        ({ value: eaten }) => eaten !== undefined && eaten !== "none" && eaten.prey === "fish",
      );
      return [...deadly, ...fishEating]
        .filter(({ by, note, setAside }) => by === "common-practice" && !note && !setAside)
        .map(({ value, at }) => ({
          file: path,
          at,
          found: `${JSON.stringify(value)} by common practice, without a word on how it is known`,
          expected: "a source, or a note",
          mend: "Name the source, or add a note of one sentence: what keepers see.",
        }));
    }),
};

/** Statements, each with where it stands. */
const statementsAt = <Said>(statements: readonly Said[] = [], path: readonly string[]) =>
  statements.map((statement, index) => ({ ...statement, at: [...path, index] }));
