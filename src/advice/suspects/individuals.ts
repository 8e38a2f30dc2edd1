import { type AssessOptions, type Finding, planner, type Rule } from "../../compatibility";
import { hangsOnTemper, rulesFor } from "../../compatibility/inner";
import type { Plan, Temper } from "../../plan";

/** What would speak against a plan if the individuals of one group were of another temper. */
export interface OfIndividuals {
  readonly finding: Finding;
  readonly individual: {
    /** The index of the group. */
    readonly group: number;
    readonly temper: Exclude<Temper, "typical">;
  };
}

/** The mildest first: what one brings is not told again of the next. */
const tempers = ["shyer", "bolder", "bully"] as const satisfies readonly Temper[];

/** What individuals that differ from their kind would bring, of groups of which the plan says nothing of the sort. */
export function ofIndividuals(plan: Plan, options: AssessOptions): readonly OfIndividuals[] {
  const onTemper = rulesFor(options).filter(looksAtTemper);
  if (onTemper.length === 0) return [];
  const judged = planner(plan, { ...options, rules: onTemper });
  const { findings, met } = judged.verdict;
  const known = new Set([...findings, ...met].map(keyOf));
  return judged.plan.groups.flatMap(({ temper: stated = "typical" }, group) =>
    (stated === "typical" ? tempers : []).flatMap((temper) => {
      const other = judged.with({ groups: { [group]: { temper } } });
      const further = other.verdict.findings.filter((finding) => !known.has(keyOf(finding)));
      for (const finding of further) known.add(keyOf(finding));
      return further.map((finding): OfIndividuals => ({ finding, individual: { group, temper } }));
    }),
  );
}

/** Whether what a rule says may hang on what individuals are like; of an app's nobody knows. */
function looksAtTemper({ id, needs, uses, tells }: Rule): boolean {
  const traits = [needs, uses, tells].flatMap((sides) => [...(sides?.from ?? []), ...(sides?.to ?? [])]);
  return id.startsWith("x-") || traits.some(hangsOnTemper);
}

const keyOf = (finding: Finding): string =>
  JSON.stringify([
    finding.rule,
    finding.from,
    finding.to,
    finding.weight,
    finding.watchFor,
    finding.weight === "restricting" && finding.condition,
  ]);
