import type { EntryOrder, EntryReason, EntryStep, NoEntryOrder } from "../../../advice";
import { finite, listOf, objectOf, oneOf } from "../../../checks";
import { ofPart, refusal } from "../../../errors";
import type { Plan } from "../../../plan";
import type { AdviceWords } from "../../messages/advice-messages";
import { checkNitrogen } from "../checked-nitrogen";
import { checkPlaces } from "../checked-places";
import { checkTexts, outcomes } from "../checked-verdict";

/** The order of entry itself, or an InvalidInputError where it is none that can be told, or is of another plan. */
export const checkedEntryOrder = (
  order: EntryOrder | NoEntryOrder,
  { groups }: Plan,
  { entry }: AdviceWords,
): EntryOrder | NoEntryOrder =>
  ofPart(["order"], () => {
    const told = objectOf(order, "");
    if (!("steps" in told) || told.reason !== undefined) {
      oneOf(told.reason, Object.keys(entry.none), "reason");
      checkPlaces(told.groups, groups.length, "groups");
      checkTexts(told.rules, "rules");
      return order;
    }
    const { steps } = told;
    for (const [index, step] of listOf(steps, "steps").entries())
      ofPart(["steps", index], () => checkStep(step, groups.length, entry));
    const moving = new Set(steps.flatMap((step) => step.groups));
    if (moving.size !== groups.length)
      throw refusal("steps", "an order of all groups of the plan", steps, "conflict");
    return order;
  });

function checkStep(step: EntryStep, groups: number, { because: words }: AdviceWords["entry"]): void {
  const { day, groups: moving, because, outcome, nitrogen } = objectOf(step, "");
  finite(day, "day");
  checkPlaces(moving, groups, "groups");
  oneOf(outcome, outcomes, "outcome");
  for (const [index, one] of listOf(because, "because").entries())
    ofPart(["because", index], () => checkReason(one, groups, words));
  if (nitrogen !== undefined) ofPart(["nitrogen"], () => checkNitrogen(nitrogen));
}

function checkReason(one: EntryReason, groups: number, words: AdviceWords["entry"]["because"]): void {
  const { reason } = objectOf(one, "");
  oneOf(reason, ["there-already", ...Object.keys(words)], "reason");
  switch (one.reason) {
    case "filter-ripens":
    case "quarantine":
    case "filter-follows":
    case "plants-grow-in":
    case "stated-day":
      finite(one.day, "day");
      break;
    case "others-grow":
      checkPlaces([one.group], groups, "group");
      finite(one.length, "length");
      if (one.day !== undefined) finite(one.day, "day");
      break;
    case "others-first":
      checkTexts(one.rules, "rules");
      checkPlaces(one.groups, groups, "groups");
      break;
    case "may-eat":
      checkPlaces(one.groups, groups, "groups");
      break;
    case "there-already":
    case "defends-place":
    case "together":
  }
}
