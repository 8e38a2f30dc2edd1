import { finite, listOf, objectOf, oneOf } from "../../checks";
import type { AimedCondition, Finding, OpenQuestion, Verdict, VerdictParty } from "../../compatibility";
import { weights } from "../../compatibility/inner";
import { ofPart, refusal } from "../../errors";
import { isObject } from "../../is-object";
import type { Condition } from "../../plan";
import { refuseBesideFact } from "../../plan/inner";
import { ends } from "../../ranges/inner";
import type { Messages } from "../messages/messages";

/** The outcomes that a verdict may have. */
export const outcomes = ["suitable", "conditional", "unsuitable", "undetermined"];

/** A part of a verdict that is told in a sentence. */
export type VerdictPart = Finding | OpenQuestion | Condition;

/** The verdict itself, or an InvalidInputError where it lacks what a report in the language reads. */
export const checkedVerdict = (verdict: Verdict, messages: Messages): Verdict =>
  ofPart(["verdict"], () => {
    const { outcome, bounds, parties, findings, conditions, met, open, made } = objectOf(verdict, "");
    oneOf(outcome, outcomes, "outcome");
    const { atBest, atWorst } = objectOf(bounds, "bounds");
    oneOf(atBest, outcomes, "bounds.atBest");
    oneOf(atWorst, outcomes, "bounds.atWorst");
    checkTexts(objectOf(made, "made").rules, "made.rules");
    for (const [index, party] of listOf(parties, "parties").entries()) checkParty(party, `parties[${index}]`);
    const parts = { findings, conditions, met, open };
    for (const [name, list] of Object.entries<readonly VerdictPart[]>(parts))
      for (const [index, part] of listOf(list, name).entries())
        ofPart([name, index], () => checkPart(part, messages, parties.length));
    for (const [index, { findings: asking }] of conditions.entries())
      for (const place of listOf(asking, `conditions[${index}].findings`))
        checkPlaceOf(place, findings.length, "findings", `conditions[${index}].findings`);
    return verdict;
  });

function checkParty(party: VerdictParty, at: string): void {
  const { name, names, count, males, females } = objectOf(party, at);
  checkTexts([name], `${at}.name`);
  for (const list of Object.values(objectOf(names, `${at}.names`))) checkTexts(list, `${at}.names`);
  for (const [of, number] of Object.entries({ count, males, females }))
    if (number !== undefined) finite(number, `${at}.${of}`);
}

/** Refuses what is no list of texts. */
export function checkTexts(texts: readonly string[], at: string): void {
  for (const text of listOf(texts, at)) if (typeof text !== "string") throw refusal(at, "a text", text);
}

/** Refuses a part that the language has no words for, or that is of another verdict than one of so many parties. */
export function checkPart(part: VerdictPart, messages: Messages, parties: number): void {
  const told = objectOf(part, "");
  if ("wanted" in told) checkCondition(told, messages, parties);
  else if ("reason" in told) checkQuestion(told, messages, parties);
  else checkFinding(told, messages, parties);
}

function checkCondition(condition: AimedCondition, { conditions }: Messages, parties: number): void {
  oneOf(condition.on, Object.keys(conditions), "on");
  refuseBesideFact(condition, parties);
  checkSize(condition.wanted, "wanted");
  if (condition.aim === undefined) return;
  ends(condition.aim, "aim");
  checkSize(condition.aim, "aim");
}

/** Beyond it a figure cannot be told in every unit, and is none of a tank. */
const largest = 1e12;

/** Refuses a figure that is too large to be told. */
export function checkSize(figure: object, at: string): void {
  for (const [name, size] of Object.entries(figure))
    if (typeof size === "number" && Math.abs(size) > largest)
      throw refusal([at, name].filter(Boolean).join("."), `at most ${largest}`, size, "range");
}

function checkQuestion(question: OpenQuestion, { traits, conditions }: Messages, parties: number): void {
  oneOf(question.reason, ["missing", "disputed", "not-given", "outside-domain", "individual"], "reason");
  oneOf(question.couldBe, weights, "couldBe");
  checkPlace(question.of, parties, "of");
  if ("trait" in question) oneOf(question.trait, Object.keys(traits), "trait");
  if ("on" in question) oneOf(question.on, Object.keys(conditions), "on");
}

function checkFinding(finding: Finding, messages: Messages, parties: number): void {
  const { rule, weight, basis, watchFor, from, to } = finding;
  if (typeof rule !== "string") throw refusal("rule", "the id of a rule", rule);
  oneOf(weight, weights, "weight");
  oneOf(basis, Object.keys(messages.basis), "basis");
  if (watchFor !== undefined) oneOf(watchFor, Object.keys(messages.signs), "watchFor");
  checkPlace(from, parties, "from");
  checkPlace(to, parties, "to");
  for (const [name, measure] of Object.entries(finding.measures ?? {}))
    if (isObject(measure)) checkSize(measure, `measures.${name}`);
  if ("condition" in finding)
    ofPart(["condition"], () => checkCondition(objectOf(finding.condition, ""), messages, parties));
}

/** Refuses a place at which a verdict has no party. */
export function checkPlace(place: number | undefined, parties: number, subject: string): void {
  if (place !== undefined) checkPlaceOf(place, parties, "parties", subject);
}

/** Refuses what is no place among so many things. */
function checkPlaceOf(place: number, count: number, things: string, subject: string): void {
  if (!(Number.isInteger(place) && place >= 0 && place < count))
    throw refusal(subject, `the place of one of ${count} ${things}`, place, "range");
}
