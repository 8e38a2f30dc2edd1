import type { Finding } from "../../compatibility";

type Doing = Readonly<Record<string, unknown>>;

const doerOf = ({ measures = {} }: Finding) => (measures as Doing).doer;

const withoutDoer = (finding: Finding): Finding => {
  const { doer: _, ...measures } = (finding.measures ?? {}) as Doing;
  return { ...finding, measures } as Finding;
};

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
