import type { NoSetPoint, SetPoint } from "../../../advice";
import { objectOf } from "../../../checks";
import { profilesOf } from "../../../plan/inner";
import type { SpeciesProfile } from "../../../species";
import type { AdviceMessages } from "../../messages/advice-messages";
import { checkedAdvice } from "../../messages/checked-messages";
import { englishAdvice } from "../../messages/english-advice";
import { type AdviceDescribeOptions, type AdviceWritingOptions, writtenOf } from "../advice-written";
import { checkedSetPoint } from "./checked-set-point";
import { setPointBlocks } from "./set-point-blocks";

/**
 * What `setPoint` of `vivary/advice` answers, in words: the water to aim at, how far each figure may move and who ends that,
 * or who proves that no water serves all and who could stay together. Text from records is escaped in Markdown.
 *
 * @param profiles The species that it is about, in the same order.
 * @throws InvalidInputError for what is no set point of these species, an unknown format or unit system.
 *
 * @example
 * ```ts
 * import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { setPoint } from "vivary/advice";
 * import { describeSetPoint } from "vivary/report";
 *
 * const species = [paracheirodonInnesi, danioRerio];
 * describeSetPoint(setPoint(species), species).includes("Temperature 23 °C"); // => true
 * ```
 */
export function describeSetPoint(
  found: SetPoint | NoSetPoint,
  profiles: readonly SpeciesProfile[],
  options: AdviceDescribeOptions = {},
): string {
  const { messages = englishAdvice, ...writing } = objectOf(options, "options");
  return describeSetPointIn(checkedAdvice(messages, "options.messages"), found, profiles, writing);
}

/** A set point in the words of a language, as {@link describeSetPoint} writes it, without shipping English. */
export function describeSetPointIn(
  messages: AdviceMessages,
  found: SetPoint | NoSetPoint,
  profiles: readonly SpeciesProfile[],
  options: AdviceWritingOptions = {},
): string {
  const parties = () =>
    profilesOf(profiles, ["profiles"]).map(({ id, form, taxonomy, names }) => ({
      id,
      ...(form !== undefined && { form }),
      name: taxonomy.name,
      names,
    }));
  return writtenOf(messages, options, parties, (adviser) =>
    setPointBlocks(checkedSetPoint(found, profiles.length), [...profiles.keys()], messages, adviser),
  );
}
