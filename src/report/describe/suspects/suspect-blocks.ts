import type { Suspect } from "../../../advice";
import type { Finding } from "../../../compatibility";
import type { Condition } from "../../../plan";
import { jointCondition } from "../../../plan/inner";
import type { Block } from "../../layout";
import { alikeIn } from "../../matters/alike";
import { overParties } from "../../matters/matters";
import type { AdviceMessages } from "../../messages/advice-messages";
import type { Adviser } from "../advice-written";

/**
 * What may be behind what is seen in the parts of a report: what to look at, and what that would show. What the plan meets is
 * left out where what it does not meet asks for as much, and where what it has is not good enough for those who ask.
 */
export function suspectBlocks(
  suspected: readonly Suspect[],
  messages: AdviceMessages,
  adviser: Adviser,
): readonly Block[] {
  const { lead, none, signs, looks, illness } = adviser.words.suspects;
  if (suspected.length === 0) return [{ lead: [none] }];
  const seen = new Set(suspected.flatMap(({ explains }) => explains));
  const unmet = suspected.flatMap(({ state, act }) =>
    state === "stands" && act.do === "meet" ? act.condition : [],
  );
  const isCovered = (condition: Condition) => unmet.some((other) => asksAsMuch(other, condition));
  const toRehouse = new Set(suspected.filter(({ act }) => act.do === "rehouse").map(askerOf));
  const told = suspected.filter(
    (one) =>
      one.state !== "met" ||
      !(toRehouse.has(askerOf(one)) || ("condition" in one.act && isCovered(one.act.condition))),
  );
  const asked = (one: Suspect) => (saysWhatToDo(one.finding, messages) ? undefined : conditionOf(one));
  const overGroups = (one: Suspect) => [
    overParties(one.finding),
    ...[one.explains, one.state, one.individual?.temper, one.act.do],
    { ...asked(one), of: undefined },
  ];
  return [
    { lead: [lead([...seen].map((sign) => signs[sign]))] },
    ...alikeIn(told, ({ look }) => look).map((those) => ({
      title: looks[those[0].look],
      items: alikeIn(those, overGroups).map((alike) =>
        suspectTold(alike, asked(alike[0]), seen.size, adviser),
      ),
    })),
    { lead: [illness] },
    { lead: [messages.closing] },
  ];
}

/** A suspect, or several that differ only in the groups they are about, where so many things are seen. */
function suspectTold(
  alike: readonly [Suspect, ...Suspect[]],
  asked: Condition | undefined,
  seen: number,
  { words, named, clauseOf, clause }: Adviser,
): string {
  const [{ finding, explains, individual, act }, ...others] = alike;
  return words.suspects.suspect({
    reason:
      act.do === "change-water"
        ? words.suspects.ammonia(named(alike.map((one) => one.finding.from)))
        : clauseOf([finding, ...others.map((other) => other.finding)]),
    signs: explains.length < seen ? explains.map((sign) => words.suspects.signs[sign]) : [],
    act: act.do,
    clause: asked ? clause(asked, ...alike.map((one) => conditionOf(one)?.of)) : "",
    ...(individual && {
      individuals: {
        animals: named(alike.map((one) => one.individual?.group)),
        temper: individual.temper,
      },
    }),
  });
}

const conditionOf = ({ act }: Suspect): Condition | undefined =>
  "condition" in act ? act.condition : undefined;

/** Whether the sentence of a finding says by itself what must hold. */
function saysWhatToDo({ rule, weight }: Finding, { sayWhatToDo }: AdviceMessages): boolean {
  const says = Object.entries(sayWhatToDo).find(([id]) => id === rule)?.[1];
  return says === "always" || (says === true && weight === "restricting");
}

/** By which rule a suspect is told, and of which group. */
const askerOf = ({ finding }: Suspect): string => `${finding.rule} ${finding.from}`;

/** Whether a condition leaves nothing that another does not. */
function asksAsMuch(condition: Condition, other: Condition): boolean {
  const both = jointCondition(condition, other);
  return both !== undefined && JSON.stringify(both.wanted) === JSON.stringify(condition.wanted);
}
