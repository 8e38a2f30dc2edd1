import type { Problem } from "../../../errors";
import { pathText } from "../../../errors";
import { hasValue, topicKey, traitDefinitions } from "../../../species/inner";
import type { Check } from "../../checked";
import type { Path } from "../../fields";
import { type TraitAt, traitsOf } from "../walk";

/** One adopted statement at most a group, none both adopted and set aside, none said twice; "none" stands alone. */
export const choicesAreClear: Check = (record) =>
  traitsOf(record).flatMap((trait) => [
    ...repeated(trait),
    ...rivals(trait),
    ...torn(trait),
    ...mixed(trait),
  ]);

/** What one source says twice. */
function repeated({ statements }: TraitAt): readonly Problem[] {
  const seen = new Map<string, Path>();
  return statements.flatMap(({ path, statement }) => {
    if (!hasValue(statement)) return [];
    const said = JSON.stringify([statement.by, statement.value, topicKey(statement)]);
    const same = seen.get(said);
    seen.set(said, path);
    const expected = same && `something ${pathText(same)} does not say already`;
    return expected ? [{ path, code: "conflict", found: statement.value, expected }] : [];
  });
}

/** Adopted statements of one group. */
function rivals({ statements }: TraitAt): readonly Problem[] {
  const adopted = new Map<string, Path>();
  return statements.flatMap(({ path, statement }) => {
    if (statement.adopt === undefined) return [];
    const rival = adopted.get(topicKey(statement));
    adopted.set(topicKey(statement), path);
    const expected = rival && `one adopted statement; ${pathText(rival)} is adopted too`;
    return expected ? [{ path: [...path, "adopt"], code: "conflict", found: statement.adopt, expected }] : [];
  });
}

/** Statements both adopted and set aside. */
function torn({ statements }: TraitAt): readonly Problem[] {
  return statements
    .filter(({ statement: { adopt, setAside } }) => adopt !== undefined && setAside !== undefined)
    .map(({ path, statement }) => ({
      path,
      code: "conflict",
      found: statement.setAside,
      expected: "adopt or setAside, not both",
    }));
}

/** "none" beside something else. */
function mixed({ trait, path, statements }: TraitAt): readonly Problem[] {
  const values = statements
    .filter(({ statement }) => hasValue(statement) && !statement.setAside)
    .map(({ statement }) => statement.value);
  const contradicted =
    traitDefinitions[trait].way === "all" &&
    values.includes("none") &&
    values.some((value) => value !== "none");
  return contradicted
    ? [{ path, code: "conflict", found: values, expected: '"none" alone, or the others alone' }]
    : [];
}
