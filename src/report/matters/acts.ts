import type { Finding, RuleId, Verdict, Words } from "../../compatibility";
import { weights } from "../../compatibility/inner";
import { isBy } from "./by-rule";

/** The rules of what animals do to others. */
export const actRules = [
  "acts-own-kind",
  "acts-look-alike",
  "acts-others",
] as const satisfies readonly RuleId[];

export type ActRule = (typeof actRules)[number];

/** What animals do to their own kind and to others alike is told in one sentence. */
export const chasingRules = ["acts-own-kind", "acts-others"] as const satisfies readonly ActRule[];

/** The rules of deeds of which only the gravest is told. */
const deedRules = [...actRules, "fin-nipping"] as const satisfies readonly RuleId[];

/** Whether a finding tells what an animal does to another. */
export const isDeed = (finding: Finding) => isBy(finding, deedRules);

type Deed = Words["does"];

/** The gravest deed has the lowest number. */
const places: Readonly<Record<Deed, number>> = {
  kills: 0,
  bites: 1,
  "nips-fins": 2,
  "rasps-mucus": 3,
  chases: 4,
  "robs-food": 5,
};

/** What an animal does to another. */
function deedOf(finding: Finding): Deed | undefined {
  if (finding.rule === "fin-nipping") return "nips-fins";
  return isBy(finding, actRules) ? finding.measures?.act?.value : undefined;
}

/** The sex of those that do it, where the other does not. */
export const doerOf = (finding: Finding): Words["sex"] | undefined =>
  isBy(finding, actRules) ? finding.measures?.doer?.value : undefined;

/** How grave a deed is, the gravest first; of those worth knowing, one of which nobody can tell how it ends. */
function graveness(finding: Finding): number {
  const deed = deedOf(finding);
  const inDoubt = "couldBe" in finding ? 10 : 0;
  return 20 * weights.indexOf(finding.weight) - inDoubt + (deed ? places[deed] : 0);
}

/** Whether a finding tells no deed, or the gravest of one towards another. */
export function gravestDeeds(
  findings: readonly Finding[],
  towards: (finding: Finding) => string,
): (finding: Finding) => boolean {
  const gravest = new Map<string, Finding>();
  for (const finding of findings.filter(isDeed)) {
    const known = gravest.get(towards(finding));
    if (!known || graveness(finding) < graveness(known)) gravest.set(towards(finding), finding);
  }
  return (finding) => !isDeed(finding) || gravest.get(towards(finding)) === finding;
}

/** Whether animals wound or kill others. */
export const isWound = (finding: Finding): boolean => {
  const deed = deedOf(finding);
  return deed === "bites" || deed === "kills";
};

/** Whether animals wound or kill others, or chase other species whenever they meet. */
export const isLastingHarm = (finding: Finding): boolean =>
  isWound(finding) ||
  (isBy(finding, ["acts-others", "acts-look-alike"]) &&
    finding.measures?.act?.value === "chases" &&
    finding.measures.when?.value === "always");

const quarrelRules = [...deedRules, "territories", "territory-contest"] as const satisfies readonly RuleId[];

/** Whether somebody may chase or bite another, not for food alone. */
export const mayQuarrel = ({ findings }: Verdict) =>
  findings.some(
    (finding) => finding.weight !== "favourable" && isBy(finding, quarrelRules) && !isAtFood(finding),
  );

const isAtFood = (finding: Finding) =>
  deedOf(finding) === "robs-food" || (isBy(finding, actRules) && finding.measures?.when?.value === "feeding");
