// What the library answers, a line a verdict: `guppy and platy: conditional. restricting: predation.`

/** One verdict in one line. */
export function lineOf(name, { outcome, bounds, findings }) {
  const against = (weight) => {
    const rules = findings.filter((finding) => finding.weight === weight).map(({ rule }) => rule);
    return rules.length > 0 ? ` ${weight}: ${[...new Set(rules)].join(", ")}.` : "";
  };
  const certain = bounds.atBest === bounds.atWorst && bounds.atBest === outcome;
  const span = certain ? "" : ` (${bounds.atBest} to ${bounds.atWorst})`;
  return `${name}: ${outcome}${span}.${against("blocking")}${against("restricting")}`;
}

/** How a pair is named: by the common names. */
export const pairName = (a, b) => `${commonName(a)} and ${a.id === b.id ? "its own kind" : commonName(b)}`;

export const commonName = ({ names, taxonomy }) => names.en?.[0] ?? taxonomy.name;
