import type { EntryOrder, NoEntryOrder } from "../../../advice";
import { objectOf } from "../../../checks";
import type { Plan } from "../../../plan";
import type { AdviceMessages } from "../../messages/advice-messages";
import { checkedAdvice } from "../../messages/checked-messages";
import { englishAdvice } from "../../messages/english-advice";
import { type AdviceDescribeOptions, type AdviceWritingOptions, written } from "../advice-written";
import { checkedEntryOrder } from "./checked-entry-order";
import { entryBlocks } from "./entry-blocks";

/**
 * What `entryOrder` of `vivary/advice` answers of a plan, in words: who moves in from which day on and why, what they then
 * do to the water, and what the plan is like by then, where that has changed; or why there is no order. Text from records is
 * escaped in Markdown.
 *
 * @param plan The plan that the order is of: its groups are named.
 * @throws InvalidInputError for what is no order of this plan, what `assessPlan` refuses, an unknown format or unit system.
 *
 * @example
 * ```ts
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
 * import { entryOrder } from "vivary/advice";
 * import type { Plan } from "vivary/plan";
 * import { describeEntryOrder } from "vivary/report";
 *
 * const plan: Plan = {
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 }, cover: 0.5, filter: { mediaArea: 3, age: 0 } },
 *   groups: [{ species: bettaSplendens, males: 1 }, { species: hoplisomaPanda, unsexed: 8 }],
 * };
 * const told = describeEntryOrder(entryOrder(plan), plan);
 * told.includes("From day 56\n- 8 panda corydoras"); // => true
 * ```
 */
export function describeEntryOrder(
  order: EntryOrder | NoEntryOrder,
  plan: Plan,
  options: AdviceDescribeOptions = {},
): string {
  const { messages = englishAdvice, ...writing } = objectOf(options, "options");
  return describeEntryOrderIn(checkedAdvice(messages, "options.messages"), order, plan, writing);
}

/** An order of entry in the words of a language, as {@link describeEntryOrder} writes it, without shipping English. */
export function describeEntryOrderIn(
  messages: AdviceMessages,
  order: EntryOrder | NoEntryOrder,
  plan: Plan,
  options: AdviceWritingOptions = {},
): string {
  return written(messages, options, plan, ["plan"], (adviser) =>
    entryBlocks(checkedEntryOrder(order, plan, messages.advice), plan, messages.closing, adviser),
  );
}
