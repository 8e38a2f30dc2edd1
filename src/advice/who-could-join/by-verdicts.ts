import type { Finding, OpenQuestion, Planner, Verdict } from "../../compatibility";
import { type Condition, type Group, isMet } from "../../plan";
import { type Answer, gravest, gravityOf, gravityOfMissing, isPromise, keeps, mostBesides } from "./answer";

/** Whether a group may join, by the verdicts on the plan without it and with it. */
export function byVerdicts(before: Planner, group: Group): Answer {
  const joined = before.with({ add: [group] });
  const { findings, met } = joined.verdict;
  const newcomer = before.plan.groups.length;
  const because = reasonAgainst(before, joined);
  const concerns = ({ from, to }: Finding) => from === undefined || from === newcomer || to === newcomer;
  return {
    ...(because && { because }),
    outcome: joined.outcome,
    said: [...findings, ...met],
    met: conditionsOf(met.filter(concerns)),
    unmet: conditionsOf(findings.filter(concerns)).filter(
      (condition) => isMet(condition, joined.plan) === false,
    ),
  };
}

/** What findings ask for. */
export const conditionsOf = (told: readonly Finding[]): readonly Condition[] =>
  told.flatMap((finding) => (finding.weight === "restricting" ? [finding.condition] : []));

/**
 * Why a newcomer is refused: the gravest that is told of it, else of what is told of the others since it came; nothing
 * where the outcome is no worse, or was bad before and nothing rules the newcomer out.
 */
function reasonAgainst(before: Planner, joined: Planner): Finding | OpenQuestion | undefined {
  if (keeps(before.outcome, joined.outcome)) return undefined;
  const { verdict } = joined;
  const most = mostBesides(before.outcome);
  const ofNewcomer = gravest(toldOf(verdict, before.plan.groups.length), gravityOfTold, most);
  if (ofNewcomer || !isPromise(before.outcome)) return ofNewcomer;
  const known = new Set(before.verdict.findings.map(signOf));
  const further = verdict.findings.filter((finding) => !known.has(signOf(finding)));
  return (
    gravest(further, gravityOfTold, most) ??
    gravest([...verdict.findings, ...verdict.open], gravityOfTold, most)
  );
}

/** What a verdict tells of a group. */
const toldOf = (verdict: Verdict, group: number): readonly (Finding | OpenQuestion)[] => [
  ...verdict.findings.filter(({ from, to }) => from === group || to === group),
  ...verdict.open.filter(({ reason, of }) => reason === "missing" && of === group),
];

function gravityOfTold(told: Finding | OpenQuestion): number {
  if ("reason" in told) return told.reason === "missing" ? gravityOfMissing : 0;
  return gravityOf(told.weight, told.weight === "advisory" ? told.couldBe : undefined);
}

const signOf = ({ rule, weight, from, to }: Finding) => JSON.stringify([rule, weight, from, to]);
