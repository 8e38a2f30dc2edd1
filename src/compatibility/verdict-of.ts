import { version } from "../../package.json";
import { frozen } from "../frozen";
import type { CheckedParty } from "../plan/inner";
import { weakestBasis } from "../species/inner";
import type { AssessWith } from "./assess-options";
import type { Judgement } from "./engine/judgement";
import { withOwnValues } from "./engine/questions";
import { rankQuestions } from "./engine/rank-questions";
import type { AnyFinding } from "./engine/rule/finding";
import { gravity } from "./engine/rule/weight";
import type { Subject } from "./engine/subject";
import { askedBy, type Exclusion, exclusions, jointConditions, mayExclude } from "./joint-conditions";
import type { Finding, Verdict, VerdictParty } from "./verdict";

const outcomes = ["suitable", "conditional", "unsuitable"] as const;

/** Puts the judgements of all rules together. */
export function verdictOf(
  subjects: readonly Subject[],
  judgements: readonly Judgement[],
  { rules, thresholds }: AssessWith,
): Verdict {
  const judged = judgements.flatMap((judgement) => judgement.findings);
  const met = judgements.flatMap((judgement) => judgement.met);
  const asking = [...judged, ...met.filter(mayBeLost)];
  const joint = jointConditions(asking);
  const conditions = askedBy(joint, judged.length);
  const blocked = judged.some(({ weight }) => weight === "blocking");
  const excluding = (blocked ? [] : exclusions(joint))
    .filter((exclusion) => askedBy(exclusion, judged.length).length > 0)
    .map((exclusion) => exclusionFinding(exclusion, asking));
  const findings = [...judged, ...excluding];
  const worst = greatest(judgements, (judgement) => judgement.greatest);
  const adopted = greatest(findings, ({ weight }) => gravity[weight]);
  const undetermined = adopted < gravity.blocking && judgements.some((judgement) => judgement.undetermined);
  return frozen({
    outcome: undetermined ? "undetermined" : outcomeOf(adopted),
    bounds: {
      atBest: outcomeOf(greatest(judgements, ({ least }) => least)),
      atWorst: outcomeOf(
        worst < gravity.blocking && mayExclude(judgements.map(({ asks }) => asks)) ? gravity.blocking : worst,
      ),
    },
    parties: subjects.map(({ party }) => verdictParty(party)),
    // The engine runs any rule; that a finding is of one of the library's or of an app's was checked with the rules.
    findings: findings as readonly Finding[],
    conditions,
    met: met as readonly Finding[],
    open: withOwnValues(rankQuestions(judgements)),
    made: { version, rules: rules.map(({ id }) => id), thresholds: { ...thresholds } },
  });
}

/** Whether what a plan meets can be lost by meeting something else: food is only ever added. */
const mayBeLost = (finding: AnyFinding) =>
  finding.weight === "restricting" && finding.condition.on !== "group.offerings";

/** That two conditions exclude each other, about the parties whose findings ask for them. */
function exclusionFinding([one, other]: Exclusion, findings: readonly AnyFinding[]): AnyFinding {
  const asking = [one, other].map(({ findings: [index = 0] }) => findings[index]);
  const [from, to] = asking.map((finding) => finding?.from);
  const bases = asking.flatMap((finding) => finding?.basis ?? []);
  const traits = [...new Set(asking.flatMap((finding) => finding?.traits ?? []))];
  return {
    rule: "conditions-exclude",
    weight: "blocking",
    ...(from !== undefined && { from }),
    ...(to !== undefined && { to }),
    measures: { one: { value: one.on }, other: { value: other.on } },
    basis: weakestBasis(bases),
    traits,
  };
}

/** How a verdict names a party. What it shows is its own, so that nobody changes a profile by it. */
function verdictParty({ animals, species, group }: CheckedParty): VerdictParty {
  const { kind: _, family: __, kin: ___, listings: ____, some: _____, ...told } = animals;
  const names = Object.entries(species.names).map(([language, list]) => [language, [...list]]);
  return {
    ...(group !== undefined && { group }),
    ...told,
    name: species.taxonomy.name,
    names: Object.fromEntries(names),
  };
}

const outcomeOf = (grade: number) => outcomes[grade] ?? "unsuitable";

const greatest = <Item>(items: readonly Item[], of: (item: Item) => number) =>
  items.reduce((most, item) => Math.max(most, of(item)), 0);
