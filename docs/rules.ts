// The page of the rules, from the rules themselves: what each decides stands above it in its file.
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
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

/** The words of a verdict, each with what it promises. */
const glossary: readonly (readonly [word: string, sentence: string])[] = [
  ["suitable", "nothing speaks against it, and there is a plan that shows so."],
  ["conditional", "it works in a plan that meets every condition; `witness` finds that plan."],
  [
    "unsuitable",
    "an animal dies, is injured, or lives in lasting fear or want, and no condition prevents it, or conditions exclude each other. Only another plan may do: other animals, fewer of them or, where the tank is far too small, another tank; `remedies` looks for one.",
  ],
  [
    "undetermined",
    "a trait that decides it is not known, or nobody can tell in advance what these individuals do.",
  ],
  ["blocking", "the finding rules it out. `instead` names a form that would not be harmed."],
  ["restricting", "the finding falls away where its condition is met."],
  [
    "advisory",
    "a loss or a nuisance that keepers accept, or that passes. `couldBe` says what it may turn out to be.",
  ],
  ["favourable", "it speaks for it."],
  [
    "condition",
    "what must hold about one fact of the plan: water, furnishing, food, company, more animals of a kind, the day of entry. It never asks for fewer animals, or for what they cannot be.",
  ],
  ["aim", "what to aim at within a span that is wanted: what all are kept in, else its middle."],
  [
    "bounds",
    "the best and the worst outcome over all that sources say, over what nobody knows, and over what individuals differ in.",
  ],
  [
    "open",
    "what is not known: missing (nobody stated the trait), disputed (sources differ), not-given (the plan does not say), outside-domain (an equation does not hold), individual (nobody can tell in advance).",
  ],
  ["met", "findings whose condition the plan meets already."],
];

export const rulesPage = (): string =>
  page(
    "# The rules",
    "Written from the rules themselves by `npm run pages`. A restricting finding always names the condition that removes it; a trait that a rule needs and nobody knows leaves its question open.",
    "## The words of a verdict",
    glossary.map(([word, sentence]) => `- **${word}**: ${sentence}`).join("\n"),
    "## Two kinds of animals",
    ...pairRules.map(ruleText),
    "## A plan",
    ...planRules.map(ruleText),
  );

/** What is said of each sum over all groups. */
const summed: Readonly<Record<NonNullable<Rule["sums"]>["name"], string>> = {
  stock:
    "Weighs the whole stock, grown: adult length, and body shape or length and weight, with as many animals as belong together.",
  crowd: "Counts how many there will be of each species once there are as many as belong together.",
};

function ruleText(rule: Rule): string {
  const { way, needs, uses, tells, sums } = rule;
  const further = tells ? ` To tell more: ${labels(tells)}.` : "";
  const lines = [
    `- Asked ${ways[way]}.`,
    ...(way === "once" ? [] : [`- Needs: ${labels(needs)}. May use: ${labels(uses)}.${further}`]),
    ...(sums ? [`- ${summed[sums.name]}`] : []),
    `- May be: ${rule.mayYield.join(", ")}.`,
    ...(rule.decidesBy ?? []).map(threshold),
  ];
  return [`### ${rule.id}`, ...saidAbove(rule), lines.join("\n")].join("\n\n");
}

/** What a rule asks, and how it decides: the paragraphs of the comment above it in its own file. */
function saidAbove({ id, way }: Rule): readonly string[] {
  const folder = way === "mutual" || way === "each-way" ? "pair" : "plan";
  const path = fileURLToPath(new URL(`../src/compatibility/rules/${folder}/${id}.ts`, import.meta.url));
  const [, comment] =
    /\/\*\*((?:(?!\*\/).)*)\*\/\nexport const \w+ = \/\* @__PURE__ \*\/ ownRule/s.exec(
      readFileSync(path, "utf8"),
    ) ?? [];
  const lines = (comment ?? "").split("\n").map((line) => line.replace(/^ \* ?/, ""));
  const paragraphs = lines
    .join("\n")
    .trim()
    .split("\n\n")
    .map((text) => text.replaceAll("\n", " "));
  if (paragraphs.length < 2 || !paragraphs[0]?.endsWith("?"))
    throw new Error(`${path} does not say above the rule what it asks, and below that how it decides.`);
  return paragraphs;
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
