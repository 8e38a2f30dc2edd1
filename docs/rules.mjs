// Writes docs/rules.md from the rules themselves. `--check` only tells whether it is stale.
import { pairRules, planRules, thresholds } from "vivary/compatibility";
import { traitTable } from "vivary/species";
import { written } from "./written.mjs";

const ways = {
  mutual: "of each two kinds of animals, both at once",
  "each-way": "of each two kinds of animals, from one to the other and back",
  "each-group": "of each group in a plan",
  "all-groups": "of all groups of a plan together",
  once: "of a plan as a whole",
};

/** Traits by their labels, each once. */
const labels = (sides) =>
  [...new Set(Object.values(sides ?? {}).flat())].map((path) => traitTable[path].label);

const listed = (names) => names.join(", ") || "nothing";

const threshold = (name) => {
  const { value, unit, about, source } = thresholds[name];
  return `- **${name}** ${value}${unit && unit !== "1" ? ` ${unit}` : ""}. ${about} *${source}.*`;
};

const ruleText = ({ id, question, way, needs, uses, mayYield, weighs, decidesBy = [] }) =>
  [
    `### ${id}`,
    question,
    [
      `- Asked ${ways[way]}.`,
      ...(way === "once" ? [] : [`- Needs: ${listed(labels(needs))}. May use: ${listed(labels(uses))}.`]),
      ...(weighs
        ? ["- Weighs the whole stock, grown: adult length, and body shape or length and weight."]
        : []),
      `- May be: ${mayYield.join(", ")}.`,
      ...decidesBy.map(threshold),
    ].join("\n"),
  ].join("\n\n");

const text = `${[
  "# The rules",
  "Written from the rules themselves by `npm run pages`. A restricting finding always names the condition that removes it; a trait that a rule needs and nobody knows leaves its question open.",
  "## Two kinds of animals",
  ...pairRules.map(ruleText),
  "## A plan",
  ...planRules.map(ruleText),
].join("\n\n")}\n`;

await written("rules.md", text);
