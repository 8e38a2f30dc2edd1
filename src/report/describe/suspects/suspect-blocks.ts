import type { Suspect } from "../../../advice";
import type { Condition } from "../../../plan";
import type { Block } from "../../layout";
import { alikeIn } from "../../matters/alike";
import { overParties } from "../../matters/matters";
import type { AdviceMessages } from "../../messages/advice-messages";
import type { Adviser } from "../advice-written";

/**
 * What may be behind what is seen in the parts of a report: what to look at, and what that would show. What the plan meets is
 * left out where more of the same stands against it.
 */
export function suspectBlocks(
  suspected: readonly Suspect[],
  messages: AdviceMessages,
  adviser: Adviser,
): readonly Block[] {
  const { lead, none, signs, looks, illness } = adviser.words.suspects;
  if (suspected.length === 0) return [{ lead: [none] }];
  const seen = new Set(suspected.flatMap(({ explains }) => explains));
  const unmet = new Set(suspected.filter(({ state }) => state === "stands").map(factAsked));
  const told = suspected.filter((one) => one.state !== "met" || !unmet.has(factAsked(one)));
  const saysWhatToDo = ({ finding }: Suspect) => Object.hasOwn(messages.sayWhatToDo, finding.rule);
  const asked = (one: Suspect) => (saysWhatToDo(one) ? undefined : conditionOf(one));
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
    reason: clauseOf([finding, ...others.map((other) => other.finding)]),
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

/** The fact that a suspect asks for, and of which group. */
const factAsked = (one: Suspect): string => {
  const { on, of } = conditionOf(one) ?? {};
  return JSON.stringify([on, of]);
};
