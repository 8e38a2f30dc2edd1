import { groupKey, hasValue } from "../../species/statements";
import { traitTable } from "../../species/traits";
import { traitsOf } from "../walk";
import type { Check } from "./check";

/** One adopted statement at most a group, none both adopted and set aside, none said twice; "none" stands alone. */
export const choicesAreClear: Check = (record) =>
  traitsOf(record).flatMap(({ trait, path, statements }) => {
    const seen = new Map<string, string>();
    const adopted = new Map<string, string>();
    const unclear = statements.flatMap(({ path: at, statement }) => {
      const { by, value, adopt, setAside } = statement;
      const said = JSON.stringify([by, value, groupKey(statement)]);
      const same = hasValue(statement) && seen.get(said);
      const rival = adopt === undefined ? undefined : adopted.get(groupKey(statement));
      seen.set(said, at);
      if (adopt !== undefined) adopted.set(groupKey(statement), at);
      return [
        same && { path: at, found: statement.value, expected: `something ${same} does not say already` },
        rival && {
          path: `${at}.adopt`,
          found: adopt,
          expected: `one adopted statement; ${rival} is adopted too`,
        },
        adopt !== undefined &&
          setAside !== undefined && { path: at, found: setAside, expected: "adopt or setAside, not both" },
      ].filter((problem) => typeof problem === "object");
    });
    const counting = statements.filter(({ statement }) => hasValue(statement) && !statement.setAside);
    const contradicted =
      traitTable[trait].way === "all" &&
      counting.some(({ statement }) => statement.value === "none") &&
      counting.some(({ statement }) => statement.value !== "none");
    const expected = '"none" alone, or the others alone';
    return contradicted
      ? [...unclear, { path, found: counting.map(({ statement }) => statement.value), expected }]
      : unclear;
  });
