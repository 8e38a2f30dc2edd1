import type { Finding } from "../../compatibility";

/** Findings that differ only in the parties they are about; at least one. */
export type Alike = readonly [Finding, ...Finding[]];

/** Findings by what they are alike in: those of one key are told in one sentence. */
export function alikeIn(findings: readonly Finding[], keyOf: (finding: Finding) => object): readonly Alike[] {
  const alike = new Map<string, [Finding, ...Finding[]]>();
  for (const finding of findings) {
    const key = JSON.stringify(keyOf(finding));
    const known = alike.get(key);
    if (known) known.push(finding);
    else alike.set(key, [finding]);
  }
  return [...alike.values()];
}
