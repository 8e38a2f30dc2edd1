import type { Finding, Outcome, Planner, Rule } from "../../compatibility";
import { gravityOfFinding } from "../gravity";
import { isAsGood } from "../is-as-good";

/** The plan with some of its groups, beside the whole of it. */
interface Prefix {
  readonly outcome: Outcome;
  /** Whether it is no worse than the whole plan, and nothing speaks against it that does not against the whole. */
  readonly passes: boolean;
  /** The rules that speak against it and not against the whole. */
  readonly rules: readonly string[];
}

/** Judges a plan with some of its groups alone, by their indices, in rising order. */
export type JudgePrefix = (groups: readonly number[]) => Prefix;

/**
 * Judges parts of a plan, each once. A rule that sums up the stock and cannot for the whole, since nobody knows how long some
 * are, speaks against no part without these either.
 *
 * @param rules - By which the plan is judged.
 */
export function prefixesOf(whole: Planner, rules: readonly Rule[]): JudgePrefix {
  const unsummed = unsummedIn(whole, rules);
  const all = [...whole.plan.groups.keys()];
  const known = new Map<string, Prefix>();
  const against = new Set(reasonsAgainst(whole, all).map(({ key }) => key));
  const judge: JudgePrefix = (groups) => {
    const absent = all.filter((index) => !groups.includes(index));
    const judged = whole.with({ groups: Object.fromEntries(absent.map((index) => [index, null])) });
    const further = reasonsAgainst(judged, groups).filter(
      ({ rule, key }) => !against.has(key) && !unsummed.has(rule),
    );
    return {
      outcome: judged.outcome,
      passes: isAsGood(judged.outcome, whole.outcome) && further.length === 0,
      rules: [...new Set(further.map(({ rule }) => rule))],
    };
  };
  return (groups) => {
    const key = groups.join();
    const prefix = known.get(key) ?? judge(groups);
    known.set(key, prefix);
    return prefix;
  };
}

/** The rules that cannot sum up a plan for want of a trait of some group. */
const unsummedIn = ({ verdict: { open } }: Planner, rules: readonly Rule[]): ReadonlySet<string> =>
  new Set(
    rules.flatMap(({ id, sums }) =>
      open.some((one) => one.rule === id && one.reason === "missing" && sums?.needs.includes(one.trait))
        ? [id]
        : [],
    ),
  );

/** What speaks against a plan, told apart by the rule, whom it is about in the whole plan, and what it asks for. */
function reasonsAgainst({ verdict }: Planner, groups: readonly number[]) {
  const at = (index: number | undefined) => (index === undefined ? "" : groups[index]);
  return verdict.findings.filter(speaksAgainst).map((finding) => {
    const asked = finding.weight === "restricting" ? finding.condition.on : finding.weight;
    return { rule: finding.rule, key: [finding.rule, at(finding.from), at(finding.to), asked].join(" ") };
  });
}

/** Whether a finding is against a plan, or may turn out to be. */
const speaksAgainst = (finding: Finding): boolean => gravityOfFinding(finding) > 0;
