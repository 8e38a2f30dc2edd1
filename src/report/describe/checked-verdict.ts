import type { Finding, OpenQuestion, Verdict, VerdictParty, Weight } from "../../compatibility";
import { listOf, objectOf, oneOf, refusal } from "../../errors";
import type { Condition } from "../../plan";
import type { Messages } from "../messages/messages";

const outcomes = ["suitable", "conditional", "unsuitable", "undetermined"];
const weights: readonly Weight[] = ["blocking", "restricting", "advisory", "favourable"];

/** A part of a verdict that is told in a sentence. */
export type VerdictPart = Finding | OpenQuestion | Condition;

/** The verdict itself, or an InvalidInputError where it lacks what a report in the language reads. */
export function checkedVerdict(verdict: Verdict, messages: Messages): Verdict {
  const { outcome, bounds, parties, findings, conditions, met, open } = objectOf(verdict, "verdict");
  oneOf(outcome, outcomes, "verdict.outcome");
  const { atBest, atWorst } = objectOf(bounds, "verdict.bounds");
  oneOf(atBest, outcomes, "verdict.bounds.atBest");
  oneOf(atWorst, outcomes, "verdict.bounds.atWorst");
  for (const [index, party] of listOf(parties, "verdict.parties").entries()) {
    checkParty(party, `verdict.parties[${index}]`);
  }
  const parts = { findings, conditions, met, open };
  for (const [name, list] of Object.entries<readonly VerdictPart[]>(parts)) {
    for (const [index, part] of listOf(list, `verdict.${name}`).entries()) {
      checkedPart(part, messages, `verdict.${name}[${index}]`);
    }
  }
  return verdict;
}

function checkParty(party: VerdictParty, at: string): void {
  const { name, names } = objectOf(party, at);
  if (typeof name !== "string") throw refusal(`${at}.name`, "a text", name);
  for (const list of Object.values(objectOf(names, `${at}.names`))) listOf(list, `${at}.names`);
}

/** The part itself, or an InvalidInputError where the language has no words for it. */
export function checkedPart(part: VerdictPart, messages: Messages, at: string): VerdictPart {
  const told = objectOf(part, at);
  if ("wanted" in told) checkCondition(told, messages, at);
  else if ("reason" in told) checkQuestion(told, messages, at);
  else checkFinding(told, messages, at);
  return told;
}

function checkCondition({ on, wanted }: Condition, { conditions }: Messages, at: string): void {
  oneOf(on, Object.keys(conditions), `${at}.on`);
  objectOf(wanted, `${at}.wanted`);
  if ("oneOf" in wanted) listOf(wanted.oneOf, `${at}.wanted.oneOf`);
}

function checkQuestion(question: OpenQuestion, { traits, conditions }: Messages, at: string): void {
  oneOf(
    question.reason,
    ["missing", "disputed", "not-given", "outside-domain", "individual"],
    `${at}.reason`,
  );
  oneOf(question.couldBe, weights, `${at}.couldBe`);
  if ("trait" in question) oneOf(question.trait, Object.keys(traits), `${at}.trait`);
  if ("input" in question) oneOf(question.input, Object.keys(conditions), `${at}.input`);
}

function checkFinding({ rule, weight, basis, watchFor }: Finding, messages: Messages, at: string): void {
  if (typeof rule !== "string") throw refusal(`${at}.rule`, "the id of a rule", rule);
  oneOf(weight, weights, `${at}.weight`);
  oneOf(basis, Object.keys(messages.basis), `${at}.basis`);
  if (watchFor !== undefined) oneOf(watchFor, Object.keys(messages.signs), `${at}.watchFor`);
}
