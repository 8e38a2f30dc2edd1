// The page of the rules, from the rules themselves.
import {
  pairRules,
  planRules,
  type Rule,
  type SideTraits,
  type ThresholdName,
  thresholds,
} from "vivary/compatibility";
import { traitTable } from "vivary/species";
import { page } from "./markdown";

const ways: Readonly<Record<Rule["way"], string>> = {
  mutual: "of each two kinds of animals, both at once",
  "each-way": "of each two kinds of animals, from one to the other and back",
  "each-group": "of each group in a plan",
  "all-groups": "of all groups of a plan together",
  once: "of a plan as a whole",
};

export const rulesPage = (): string =>
  page(
    "# The rules",
    "Written from the rules themselves by `npm run pages`. A restricting finding always names the condition that removes it; a trait that a rule needs and nobody knows leaves its question open.",
    "## Two kinds of animals",
    ...pairRules.map(ruleText),
    "## A plan",
    ...planRules.map(ruleText),
  );

function ruleText(rule: Rule): string {
  const traits =
    rule.way === "once" ? [] : [`- Needs: ${labels(rule.needs)}. May use: ${labels(rule.uses)}.`];
  const weighed =
    "weighs" in rule && rule.weighs
      ? ["- Weighs the whole stock, grown: adult length, and body shape or length and weight."]
      : [];
  const lines = [
    `- Asked ${ways[rule.way]}.`,
    ...traits,
    ...weighed,
    `- May be: ${rule.mayYield.join(", ")}.`,
    ...(rule.decidesBy ?? []).map(threshold),
  ];
  return [`### ${rule.id}`, rule.question, lines.join("\n")].join("\n\n");
}

/** Traits by their labels, each once. */
function labels(sides: SideTraits | undefined): string {
  const paths = new Set([...(sides?.from ?? []), ...(sides?.to ?? [])]);
  return [...paths].map((path) => traitTable[path].label).join(", ") || "nothing";
}

function threshold(name: ThresholdName): string {
  const { value, unit, about, source } = thresholds[name];
  return `- **${name}** ${value}${unit && unit !== "1" ? ` ${unit}` : ""}. ${about} *${source}.*`;
}
