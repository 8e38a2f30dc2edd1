import { type Finding, type OpenQuestion, pairRules, type Verdict } from "../../src/compatibility";
import type { Condition } from "../../src/plan";

const mutual = new Set<string>(pairRules.filter(({ way }) => way === "mutual").map(({ id }) => id)).add(
  "conditions-exclude",
);

/**
 * A verdict with its parties renumbered, in an order that does not hang on theirs: for comparing verdicts whose
 * parties were given in another order. A mutual finding has no direction and is turned from the lower index.
 */
export function renumbered(verdict: Verdict, to: readonly number[]) {
  const at = (index: number | undefined) => (index === undefined ? undefined : to[index]);
  const sorted = (list: readonly object[]) => list.map((item) => JSON.stringify(sortedKeys(item))).sort();
  const finding = (found: Finding) => {
    const placed = { ...found, from: at(found.from), to: at(found.to) };
    const { condition, instead } = found as Partial<Record<"condition" | "instead", Condition>>;
    return {
      ...forward(placed),
      ...(condition && { condition: { ...condition, of: at(condition.of) } }),
      ...(instead && { instead: { ...instead, of: at(instead.of) } }),
    };
  };
  return {
    outcome: verdict.outcome,
    bounds: verdict.bounds,
    parties: sorted(verdict.parties.map((party, index) => ({ ...party, index: at(index) }))),
    findings: sorted(verdict.findings.map(finding)),
    met: sorted(verdict.met.map(finding)),
    open: sorted(verdict.open.map((question: OpenQuestion) => ({ ...question, of: at(question.of) }))),
  };
}

interface Directed {
  readonly rule: string;
  readonly from: number | undefined;
  readonly to: number | undefined;
  readonly measures?: Readonly<Record<string, unknown>> | undefined;
}

function forward(found: Directed): object {
  const { rule, from, to, measures } = found;
  if (!mutual.has(rule) || from === undefined || to === undefined || from < to) return found;
  const { from: mine, to: theirs, one, other, ...shared } = measures ?? {};
  const turned = {
    ...shared,
    ...(mine !== undefined && { from: theirs, to: mine }),
    ...(one !== undefined && { one: other, other: one }),
  };
  return { ...found, from: to, to: from, ...(measures && { measures: turned }) };
}

function sortedKeys(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sortedKeys);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, item]) => [key, sortedKeys(item)]),
  );
}
