import type { Finding } from "../../compatibility";
import { actRules, doerOf } from "./acts";
import { isBy } from "./by-rule";

/** A finding as if it were about both sexes. */
function withoutDoer(finding: Finding): Finding {
  if (!isBy(finding, actRules)) return finding;
  const { doer: _, ...measures } = finding.measures ?? {};
  return { ...finding, measures };
}

/** Findings in which what is said of males and of females alike is said of both at once. */
export function ofBothSexes(findings: readonly Finding[]): readonly Finding[] {
  const alike = new Map<string, Finding[]>();
  for (const finding of findings.filter(doerOf)) {
    const key = JSON.stringify(withoutDoer(finding));
    alike.set(key, [...(alike.get(key) ?? []), finding]);
  }
  const pairs = [...alike.values()].filter((those) => those.length > 1);
  const firsts = new Set(pairs.map(([first]) => first));
  const seconds = new Set(pairs.flatMap(([, ...further]) => further));
  return findings
    .filter((finding) => !seconds.has(finding))
    .map((finding) => (firsts.has(finding) ? withoutDoer(finding) : finding));
}

/** Whether a finding says of both sexes what another says of one. */
export function saysMore(one: Finding, other: Finding): boolean {
  if (one.rule !== other.rule || one.from !== other.from || one.to !== other.to) return false;
  const whole = withoutDoer(other).measures ?? {};
  return doerOf(other) !== undefined && JSON.stringify(one.measures ?? {}) === JSON.stringify(whole);
}
