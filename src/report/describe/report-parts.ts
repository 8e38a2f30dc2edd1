import { objectOf, refuseOthers } from "../../checks";
import type { Verdict } from "../../compatibility";
import { oneLine } from "../layout";
import { checkedMessages } from "../messages/checked-messages";
import { english } from "../messages/english";
import type { Messages } from "../messages/messages";
import { blocksOf, type ReportPartName } from "./blocks";
import { checkedVerdict } from "./checked-verdict";
import type { DescribeOptions, WritingOptions } from "./describe";
import { tellerOf } from "./teller";

/** In which language and units, and what would help, if that is to be told. */
export interface ReportPartsOptions extends Pick<DescribeOptions, "units" | "messages" | "remedies"> {}

/** A part of a report, for an app that lays it out itself. */
export interface ReportPart {
  readonly part: ReportPartName;
  /** Absent where the part needs none. */
  readonly title?: string;
  /** At least one, each on one line, without marks of any format. */
  readonly items: readonly string[];
}

/**
 * What {@link describe} writes, as data: its parts in their order, for an app that lays them out itself and puts something of
 * its own in place of some, such as buttons in place of what must change. Parts with nothing to say are left out.
 *
 * @throws InvalidInputError for what is no verdict, remedies of another plan, and an unknown unit system.
 *
 * @example
 * ```ts
 * import { assessPair } from "vivary/compatibility";
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import { reportParts } from "vivary/report";
 *
 * const male = { species: bettaSplendens, sex: "male" } as const;
 * const parts = reportParts(assessPair(male, male));
 * parts.map(({ part }) => part); // => ["answer", "parties", "blocking", "advisory", "closing"]
 * parts[2]?.title; // => "Why not"
 * ```
 */
export function reportParts(verdict: Verdict, options: ReportPartsOptions = {}): readonly ReportPart[] {
  const { messages = english, ...writing } = objectOf(options, "options");
  return reportPartsIn(checkedMessages(messages, "options.messages"), verdict, writing);
}

/** The parts of a report in the words of a language, as {@link reportParts} gives them, without shipping English. */
export function reportPartsIn(
  messages: Messages,
  verdict: Verdict,
  options: Pick<WritingOptions, "units" | "remedies"> = {},
): readonly ReportPart[] {
  const { units = "metric", remedies, ...others } = objectOf(options, "options");
  refuseOthers(others);
  checkedMessages(messages, "messages");
  const teller = tellerOf(checkedVerdict(verdict, messages), messages, units);
  return blocksOf(verdict, teller, messages, remedies).flatMap((block): readonly ReportPart[] => {
    const items = ("lead" in block ? block.lead : block.items).map(oneLine);
    const title = "title" in block ? { title: block.title } : {};
    return items.length > 0 ? [{ part: block.part, ...title, items }] : [];
  });
}
