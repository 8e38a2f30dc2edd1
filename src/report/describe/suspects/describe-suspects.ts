import type { Suspect } from "../../../advice";
import { objectOf } from "../../../checks";
import type { Plan } from "../../../plan";
import type { AdviceMessages } from "../../messages/advice-messages";
import { checkedAdvice } from "../../messages/checked-messages";
import { englishAdvice } from "../../messages/english-advice";
import { type AdviceDescribeOptions, type AdviceWritingOptions, written } from "../advice-written";
import { checkedSuspects } from "./checked-suspects";
import { suspectBlocks } from "./suspect-blocks";

/**
 * What `suspects` of `vivary/advice` answers of a plan, in words: what to look at, the likeliest first, what would be behind
 * what is seen, and what to do if it is so. That it may be illness is always told. Text from records is escaped in Markdown.
 *
 * @param plan The plan that they are of: its groups are named.
 * @throws InvalidInputError for what are no suspects of this plan, what `assessPlan` refuses, an unknown format or unit system.
 *
 * @example
 * ```ts
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
 * import { suspects } from "vivary/advice";
 * import type { Plan } from "vivary/plan";
 * import { describeSuspects } from "vivary/report";
 *
 * const plan: Plan = {
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 }, cover: 0.5 },
 *   groups: [{ species: bettaSplendens, males: 1 }, { species: puntigrusTetrazona, unsexed: 10 }],
 * };
 * const told = describeSuspects(suspects(plan, ["torn-fins"]), plan);
 * told.includes("Part them for good, at once."); // => true
 * ```
 */
export function describeSuspects(
  suspected: readonly Suspect[],
  plan: Plan,
  options: AdviceDescribeOptions = {},
): string {
  const { messages = englishAdvice, ...writing } = objectOf(options, "options");
  return describeSuspectsIn(checkedAdvice(messages, "options.messages"), suspected, plan, writing);
}

/** Suspects in the words of a language, as {@link describeSuspects} writes them, without shipping English. */
export function describeSuspectsIn(
  messages: AdviceMessages,
  suspected: readonly Suspect[],
  plan: Plan,
  options: AdviceWritingOptions = {},
): string {
  return written(messages, options, plan, ["plan"], (adviser) =>
    suspectBlocks(checkedSuspects(suspected, plan, messages), messages, adviser),
  );
}
