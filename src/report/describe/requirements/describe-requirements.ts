import { objectOf } from "../../../checks";
import type { Plan } from "../../../plan";
import type { OfficialRequirement } from "../../../standards";
import type { AdviceMessages } from "../../messages/advice-messages";
import { checkedAdvice } from "../../messages/checked-messages";
import { englishAdvice } from "../../messages/english-advice";
import { type AdviceDescribeOptions, type AdviceWritingOptions, written } from "../advice-written";
import { checkedRequirements } from "./checked-requirements";
import { requirementBlocks } from "./requirement-blocks";

/**
 * What `officialRequirements` of `vivary/standards` answers of a plan, in words: by instrument, the gravest first, what is
 * asked, what the plan has, whether that reaches it, and where it stands; where that depends, on what, and where it cannot
 * be told, why. Told may be some of the answers, such as those of one jurisdiction. That a plan complies is never said, and
 * of no requirements, that nothing is known. Units are the reader's, but for figures within what a text asks. Text from
 * records is escaped in Markdown.
 *
 * @param plan The plan that they are of: its species are named.
 * @throws InvalidInputError for what are no requirements of this plan, what `assessPlan` refuses, an unknown format or unit system.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import type { Plan } from "vivary/plan";
 * import { describeRequirements } from "vivary/report";
 * import { officialRequirements } from "vivary/standards";
 *
 * const plan: Plan = {
 *   tank: { base: { shape: "rectangle", length: 60, width: 30 }, height: 30, measured: "outer" },
 *   groups: [{ species: danioRerio, unsexed: 10 }],
 * };
 * const german = officialRequirements(plan).filter(({ jurisdiction }) => jurisdiction === "Germany");
 * const told = describeRequirements(german, plan);
 * told.includes("- Not met: An aquarium for lasting keeping should not fall below 60 L."); // => true
 * told.includes("The text in force decides"); // => true
 * ```
 */
export function describeRequirements(
  requirements: readonly OfficialRequirement[],
  plan: Plan,
  options: AdviceDescribeOptions = {},
): string {
  const { messages = englishAdvice, ...writing } = objectOf(options, "options");
  return describeRequirementsIn(checkedAdvice(messages, "options.messages"), requirements, plan, writing);
}

/** Requirements in the words of a language, as {@link describeRequirements} writes them, without shipping English. */
export function describeRequirementsIn(
  messages: AdviceMessages,
  requirements: readonly OfficialRequirement[],
  plan: Plan,
  options: AdviceWritingOptions = {},
): string {
  return written(messages, options, plan, ["plan"], (adviser) =>
    requirementBlocks(checkedRequirements(requirements, plan, messages), plan, messages, adviser),
  );
}
