import type { Problem } from "../../../errors";
import { pathText } from "../../../errors";
import { isObject } from "../../../is-object";
import { bases, basisOf, type RecordSources, type Statement } from "../../../species";
import { hasValue, inTraitUnit, type Stated, topicKey, traitDefinitions } from "../../../species/inner";
import type { Check } from "../../checked";
import { type Fields, fieldsOf, type Path } from "../../fields";
import { sourcesOf, type TraitAt, traitsOf } from "../walk";
import { converts } from "./units-convert";

/**
 * One adopted statement at most a group, and one where sources of one rank differ; none both adopted and set aside, none
 * said twice; "none" stands alone.
 */
export const choicesAreClear: Check = (record) =>
  traitsOf(record).flatMap((trait) => [
    ...repeated(trait),
    ...rivals(trait),
    ...tied(trait, sourcesOf(record)),
    ...torn(trait),
    ...mixed(trait),
  ]);

/** What one source says twice; of tests, those that ended otherwise or were made otherwise are two. */
function repeated({ trait, statements }: TraitAt): readonly Problem[] {
  const seen = new Map<string, Path>();
  return statements.flatMap(({ path, statement }) => {
    const { by, value, note, endpoint, acclimatedAt, n } = statement;
    const said = textOf([by, value ?? note, topicKey(statement, trait), endpoint, acclimatedAt, n]);
    const same = seen.get(said);
    seen.set(said, path);
    const expected = same && `something ${pathText(same)} does not say already`;
    return expected ? [{ path, code: "conflict", found: value ?? note, expected }] : [];
  });
}

/** Adopted statements of one group. */
function rivals({ trait, statements }: TraitAt): readonly Problem[] {
  const adopted = new Map<string, Path>();
  return statements.flatMap(({ path, statement }) => {
    if (statement.adopt === undefined) return [];
    const rival = adopted.get(topicKey(statement, trait));
    adopted.set(topicKey(statement, trait), path);
    const expected = rival && `one adopted statement; ${pathText(rival)} is adopted too`;
    return expected ? [{ path: [...path, "adopt"], code: "conflict", found: statement.adopt, expected }] : [];
  });
}

/** The best supported statements of a group where they differ and none is adopted. */
function tied({ trait, statements }: TraitAt, sources: RecordSources): readonly Problem[] {
  if (traitDefinitions[trait].way === "all") return [];
  const counting = statements.filter(
    ({ statement }) =>
      hasValue(statement) && !statement.setAside && !mayDiffer(statement) && converts(statement, trait),
  );
  return counting.flatMap(({ path, statement }, index) => {
    const group = counting.filter((other) => topicKey(other.statement, trait) === topicKey(statement, trait));
    if (group.some((other) => other.statement.adopt !== undefined)) return [];
    const best = Math.min(...group.map((other) => bases.indexOf(basisOf(other.statement, sources))));
    const rival = counting
      .slice(0, index)
      .filter((other) => group.includes(other))
      .find(
        (other) =>
          [statement, other.statement].every((one) => bases.indexOf(basisOf(one, sources)) === best) &&
          differ(statement, other.statement, trait),
      );
    if (!rival) return [];
    return [
      {
        path,
        code: "conflict",
        found: statement.value,
        expected: `one of them with adopt; ${pathText(rival.path)} is as well supported and says otherwise`,
        explanation: "Give the statement to use an adopt with the reason, or set the other one aside.",
      },
    ];
  });
}

/** Figures of the wild and of tests, on which sources may differ: nothing is decided by them. */
const mayDiffer = ({ as }: Statement) => as === "wild" || as === "tested";

/** Whether two statements cannot both be used: spans that differ in an end that both have, or lie apart. */
function differ(one: Statement, other: Statement, trait: TraitAt["trait"]): boolean {
  const [a, b] = [one, other].map((said) => inTraitUnit(said as Stated, trait));
  if (traitDefinitions[trait].way !== "figures") return textOf(a) !== textOf(b);
  const [span, rival] = [fieldsOf(a), fieldsOf(b)];
  const endsDiffer = ["min", "max"].some(
    (end) => span[end] !== undefined && rival[end] !== undefined && span[end] !== rival[end],
  );
  return endsDiffer || liesAbove(span, rival) || liesAbove(rival, span);
}

/** A value as text, in whatever order its fields stand. */
const textOf = (value: unknown): string =>
  JSON.stringify(value, (_, held: unknown) =>
    isObject(held) ? Object.fromEntries(Object.entries(held).sort(([a], [b]) => (a < b ? -1 : 1))) : held,
  );

/** Whether a span begins where another has ended. */
function liesAbove({ min }: Fields, { max }: Fields): boolean {
  return typeof min === "number" && typeof max === "number" && min > max;
}

/** Statements both adopted and set aside. */
function torn({ statements }: TraitAt): readonly Problem[] {
  return statements
    .filter(({ statement: { adopt, setAside } }) => adopt !== undefined && setAside !== undefined)
    .map(({ path, statement }) => ({
      path: [...path, "setAside"],
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
