import type { Finding, OpenQuestion, Planner, Verdict } from "../../compatibility";
import { type Group, isMet, type Plan } from "../../plan";
import { conditionsOf } from "../conditions-of";
import { gravityOfFinding, gravityOfOpen } from "../gravity";
import { type Answer, type Before, gravest, isNewlyDenied, isPromise, keeps, mostBesides } from "./answer";

/** Whether a group may join, by the verdicts on the plan without it and with it. */
export function byVerdicts(planned: Planner, group: Group, before: Before): Answer {
  const joined = planned.with({ add: [group] });
  const { findings, met } = joined.verdict;
  const newcomer = planned.plan.groups.length;
  const concerns = ({ from, to }: Finding) => from === undefined || from === newcomer || to === newcomer;
  const because =
    (keeps(before.outcome, joined.outcome) ? undefined : reasonAgainst(planned, joined)) ??
    findings.find((finding) => concerns(finding) && denies(joined.plan, finding, before));
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

/** Whether a plan says otherwise than a finding asks, of what nothing was wrong with before. */
const denies = (plan: Plan, finding: Finding, before: Before): boolean =>
  finding.weight === "restricting" &&
  isNewlyDenied(finding.condition, before) &&
  isMet(finding.condition, plan) === false;

/**
 * Why a newcomer makes a plan worse: the gravest that is told of it, else of what is told of the others since it came; nothing
 * where the outcome was bad before and nothing rules the newcomer out.
 */
function reasonAgainst(before: Planner, joined: Planner): Finding | OpenQuestion | undefined {
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
  ...verdict.open.filter(({ of }) => of === group),
];

function gravityOfTold(told: Finding | OpenQuestion): number {
  return "reason" in told ? gravityOfOpen(told) : gravityOfFinding(told);
}

const signOf = ({ rule, weight, from, to }: Finding) => JSON.stringify([rule, weight, from, to]);
