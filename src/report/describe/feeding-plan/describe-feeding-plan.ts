import type { FeedingPlan } from "../../../advice";
import { objectOf } from "../../../checks";
import type { AdviceMessages } from "../../messages/advice-messages";
import { checkedAdvice } from "../../messages/checked-messages";
import { englishAdvice } from "../../messages/english-advice";
import { type AdviceDescribeOptions, type AdviceWritingOptions, written } from "../advice-written";
import { checkedFeedingPlan } from "./checked-feeding-plan";
import { feedingBlocks } from "./feeding-blocks";

/**
 * What `feedingPlan` of `vivary/advice` answers, in words: what to give whom, where and when, whom to hold back, how much,
 * and what it does to the water. Amounts are in grams of dry food, in any system of units, to two digits. That a filter is
 * enough is said only where all that is fed is known. Text from records is escaped in Markdown.
 *
 * @throws InvalidInputError for what is no feeding plan, an unknown format or unit system.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
 * import { feedingPlan } from "vivary/advice";
 * import { describeFeedingPlan } from "vivary/report";
 *
 * const feeding = feedingPlan({
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 } },
 *   groups: [{ species: danioRerio, unsexed: 10 }, { species: hoplisomaPanda, unsexed: 6 }],
 * });
 * describeFeedingPlan(feeding).includes("Dry food on the ground, by day: for panda corydoras."); // => true
 * ```
 */
export function describeFeedingPlan(feeding: FeedingPlan, options: AdviceDescribeOptions = {}): string {
  const { messages = englishAdvice, ...writing } = objectOf(options, "options");
  return describeFeedingPlanIn(checkedAdvice(messages, "options.messages"), feeding, writing);
}

/** A feeding plan in the words of a language, as {@link describeFeedingPlan} writes it, without shipping English. */
export function describeFeedingPlanIn(
  messages: AdviceMessages,
  feeding: FeedingPlan,
  options: AdviceWritingOptions = {},
): string {
  const { plan } = objectOf(feeding, "feeding");
  return written(messages, options, plan, ["feeding", "plan"], (adviser) =>
    feedingBlocks(checkedFeedingPlan(feeding), adviser),
  );
}
