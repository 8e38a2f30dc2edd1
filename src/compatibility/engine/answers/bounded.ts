import { gathered } from "../../../gathered";
import type { Rule } from "../rule/rule";
import { gravest, gravity } from "../rule/weight";
import { isMissing, type Reading } from "../sides/subject";
import { beyond, type Worlds } from "../worlds";
import { completing } from "./completing";
import { type Judgement, nothingAsked, silent } from "./judgement";
import { individualQuestions, notGivenQuestions, traitQuestions } from "./questions";
import { type Asking, couldBe, spanOf, utmostOf } from "./standing";
import type { WorldAnswer } from "./world-answer";

/** Whom a rule judges, and what its answers rest on besides what it reads. */
interface Weighed extends Asking {
  readonly beside?: readonly Reading[] | undefined;
}

/** The findings of the adopted world, with their bounds over all worlds. */
export function bounded(
  rule: Rule,
  { adopted, others, read, told }: Worlds<WorldAnswer>,
  given: Weighed,
): Judgement {
  const { standing } = adopted.answer;
  const worlds = [adopted, ...others];
  const { beside = none } = given;
  const lacking = read.filter(isMissing);
  const mayAdd = [...lacking, ...beside.filter(isMissing)].some((reading) => adds(rule, reading));
  const mayRestrict = lacking.some((reading) => restricts(rule, reading));
  const isSilent = worlds.every(({ answer }) => answer.standing.length === 0);
  if (isSilent && !mayAdd && !mayRestrict) return silent;
  const used = [...read, ...beyond(read, beside)];
  const onlyAdds = lacking.every((reading) => adds(rule, reading) && !restricts(rule, reading));
  const span = spanOver(worlds);
  const least = onlyAdds ? span.least : 0;
  const open = mayRestrict ? Math.max(span.greatest, gravity.restricting) : span.greatest;
  const greatest = mayAdd ? gravity[gravest(rule.mayYield)] : open;
  const complete = completing(rule, told.length > 0 ? [...used, ...beyond(used, told)] : used);
  const asking = worlds.map(({ choices, answer }) => ({ choices, asks: askedIn(answer) }));
  const unmet = standing.filter(({ state }) => state !== "met");
  return {
    findings: unmet.map(complete),
    met:
      unmet.length === standing.length ? [] : standing.filter(({ state }) => state === "met").map(complete),
    open: [
      ...traitQuestions(rule, used, { least, greatest }),
      ...notGivenQuestions(rule, standing),
      ...individualQuestions(rule, standing),
    ],
    least,
    greatest,
    undetermined: standing.some(({ answer }) => couldBe(answer)),
    worlds: onlyAdds ? asking : [...asking, nothingAsked],
    mayAsk: mayAdd || mayRestrict ? utmostOf(rule, given) : [],
    hangsOn: asking.length === 1 ? (asking[0]?.asks ?? []) : gathered(asking, ({ asks }) => asks),
  };
}

const none: readonly Reading[] = [];

/** Whether a value of a trait may only ask for more than its absence does. */
const adds = ({ mayAdd = [] }: Rule, { trait }: Reading): boolean => mayAdd.includes(trait);

/** Whether a value of a trait may restrict to something else than its absence does. */
const restricts = ({ mayRestrict = [] }: Rule, { trait }: Reading): boolean => mayRestrict.includes(trait);

/** The gravity at least and at most over some worlds. */
function spanOver(worlds: readonly { readonly answer: WorldAnswer }[]) {
  let [least, greatest] = [Number.POSITIVE_INFINITY, 0];
  for (const { answer } of worlds) {
    const span = spanOf(answer.standing);
    least = Math.min(least, span.least);
    greatest = Math.max(greatest, span.greatest);
  }
  return { least, greatest };
}

/** What is asked for in a world. */
const askedIn = ({ standing }: WorldAnswer) =>
  standing.map(({ condition }) => condition).filter((condition) => condition !== undefined);
