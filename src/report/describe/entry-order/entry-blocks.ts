import type { EntryOrder, EntryReason, EntryStep, NoEntryOrder } from "../../../advice";
import type { Plan } from "../../../plan";
import type { Block } from "../../layout";
import type { AdviceWords } from "../../messages/advice-messages";
import { upwards } from "../../messages/sentences";
import type { Adviser } from "../advice-written";
import { nitrogenTold } from "../nitrogen-told";

/** An order of entry in the parts of a report: who moves in on each day, why, and what comes of it; or why there is none. */
export function entryBlocks(
  order: EntryOrder | NoEntryOrder,
  plan: Plan,
  closing: string,
  adviser: Adviser,
): readonly Block[] {
  const { words, named } = adviser;
  const { lead, none, against } = words.entry;
  if (order.reason !== undefined) {
    const topics = topicsOf(order.rules, words);
    return [
      { lead: [none[order.reason](named(order.groups)), ...(topics.length > 0 ? [against(topics)] : [])] },
    ];
  }
  return [
    { lead: [lead] },
    ...order.steps.map((step, index) => stepTold(step, order.steps[index - 1], plan, adviser)),
    { lead: [closing] },
  ];
}

/** Those that move in on a day, and why; what the plan is like by then, where that has changed. */
function stepTold(step: EntryStep, before: EntryStep | undefined, plan: Plan, adviser: Adviser): Block {
  const { words, parties, listed } = adviser;
  const { title, animals, outcome, nitrogen } = words.entry;
  const areThere = step.because.some(({ reason }) => reason === "there-already");
  return {
    title: title(areThere ? undefined : Math.ceil(step.day)),
    items: [
      animals(listed(step.groups.map((group) => parties[group] ?? ""))),
      ...step.because.flatMap((one) => reasonTold(one, step, plan, adviser)),
      ...(step.nitrogen ? [nitrogen(nitrogenTold(step.nitrogen, false, adviser))] : []),
      ...(step.outcome === before?.outcome ? [] : [outcome(step.outcome)]),
    ],
  };
}

function reasonTold(
  one: EntryReason,
  { groups }: EntryStep,
  plan: Plan,
  { words, named, figure }: Adviser,
): readonly string[] {
  if (one.reason === "there-already") return [];
  const others = "group" in one ? [one.group] : "groups" in one ? one.groups : [];
  return [
    words.entry.because[one.reason]({
      animals: named(groups),
      mixed: new Set(groups.map((group) => plan.groups[group]?.species.id)).size > 1,
      others: named(others),
      day: "day" in one && one.day !== undefined ? Math.ceil(one.day) : undefined,
      length: "length" in one ? figure(upwards({ value: one.length })) : "",
      topics: "rules" in one ? topicsOf(one.rules, words) : [],
    }),
  ];
}

/** What some rules are about, each once; a rule of an app's own by its id. */
const topicsOf = (rules: readonly string[], { entry: { topics } }: AdviceWords): readonly string[] => [
  ...new Set(rules.map((rule) => (Object.hasOwn(topics, rule) ? topics[rule as keyof typeof topics] : rule))),
];
