import { objectOf } from "../../../checks";
import type { Plan } from "../../../plan";
import type { OfficialRequirement } from "../../../standards";
import { checkedRequirementWords } from "../../messages/checked-messages";
import { englishRequirements } from "../../messages/english-requirements";
import type { RequirementMessages } from "../../messages/requirement-messages";
import { type AdviceWritingOptions, laidOut, partiesOf } from "../advice-written";
import { checkedRequirements } from "./checked-requirements";
import { requirementBlocks } from "./requirement-blocks";

/** How official requirements are written. */
export interface RequirementDescribeOptions extends AdviceWritingOptions {
  /** The words of another language, in place of English. */
  readonly messages?: RequirementMessages | undefined;
}

/**
 * What `officialRequirements` of `vivary/standards` answers of a plan, in words: by instrument, the gravest first, what is
 * asked, what the plan has, whether that reaches it, and where it stands; where that depends, on what, and where it cannot
 * be told, why. Told may be some of the answers, such as those of one jurisdiction. That a plan complies is never said, and
 * of no requirements, that nothing is known. Units are the reader's, but for figures within what a text asks. Text from
 * records is escaped in Markdown.
 *
 * @param plan The plan that they are of: its species are named.
 * @throws InvalidInputError for what are no requirements of this plan, what `assessPlan` refuses, an unknown format or unit
 * system.
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
  options: RequirementDescribeOptions = {},
): string {
  const { messages = englishRequirements, ...writing } = objectOf(options, "options");
  return describeRequirementsIn(
    checkedRequirementWords(messages, "options.messages"),
    requirements,
    plan,
    writing,
  );
}

/** Requirements in the words of a language, as {@link describeRequirements} writes them, without shipping English. */
export function describeRequirementsIn(
  messages: RequirementMessages,
  requirements: readonly OfficialRequirement[],
  plan: Plan,
  options: AdviceWritingOptions = {},
): string {
  const words = checkedRequirementWords(messages, "messages");
  return laidOut(
    words,
    options,
    () => partiesOf(plan, ["plan"]),
    (sayer) => requirementBlocks(checkedRequirements(requirements, plan, words), plan, words, sayer),
  );
}
