import { traitTable } from "../../species/traits";
import type { Problem } from "../problem";
import { traitsOf } from "../walk";
import type { Check } from "./check";

/** A statement has a value or a note; figures say what they mean, lengths also what was measured. */
export const statementsSayEnough: Check = (record) =>
  traitsOf(record).flatMap(({ trait, statements }) =>
    statements.flatMap(({ path, statement }): readonly Problem[] => {
      const { value, note, by, as, measure } = statement;
      if (value === undefined) {
        return note === undefined ? [{ path, found: statement, expected: "a value, or a note" }] : [];
      }
      const { way } = traitTable[trait];
      return [
        by === "curator" &&
          note === undefined && {
            path: `${path}.note`,
            found: note,
            expected: "a note on how the sources were weighed",
          },
        way === "figures" &&
          as === undefined && {
            path: `${path}.as`,
            found: as,
            expected: "what the figure means, such as kept",
          },
        way === "lengths" &&
          as === undefined && { path: `${path}.as`, found: as, expected: "usual or greatest" },
        way === "lengths" &&
          measure === undefined && {
            path: `${path}.measure`,
            found: measure,
            expected: "what was measured, or unstated",
          },
      ].filter((problem) => problem !== false);
    }),
  );
