import type { OpenQuestion, RuleId, Verdict } from "../../compatibility";
import { overlap, type PartialRange } from "../../ranges";
import { statedOf } from "../../ranges/inner";
import { mostFresh } from "../../species/inner";
import { type Figure, within } from "../figure";
import { alikeIn } from "../matters/alike";
import { type FindingBy, isBy } from "../matters/by-rule";
import { rightFacts, wrongFacts } from "../matters/matters";
import { type SharedWaterRule, sharedWaterRules } from "../matters/water-rules";
import type { Messages } from "../messages/messages";
import type { Teller } from "./teller";

/** The rules of which all that is shared is told in one sentence. */
const inWaterRules = [...sharedWaterRules, "flow"] as const satisfies readonly RuleId[];

/** What speaks for it: the water that all share, what other rules favour, and what of the plan is as it should be. */
export function strengths(verdict: Verdict, teller: Teller, messages: Messages): readonly string[] {
  const { parties, findings } = verdict;
  const favourable = findings.filter(({ weight }) => weight === "favourable");
  const pairs = (parties.length * (parties.length - 1)) / 2;
  const ofAll = <Id extends RuleId>(rule: Id): readonly FindingBy<Id>[] => {
    const ofRule = favourable.filter((finding) => isBy(finding, [rule]));
    return ofRule.length === pairs && pairs > 0 ? ofRule : [];
  };
  const shared = (rule: SharedWaterRule) => teller.figure(sharedBy(ofAll(rule)));
  const { min = 0, max = 0 } = sharedBy(ofAll("salinity")) ?? {};
  const told = {
    ...{ temperature: shared("temperature"), pH: shared("ph"), hardness: shared("general-hardness") },
    salinity: min > 0 || max > mostFresh ? shared("salinity") : "",
    current: ofAll("flow").length > 0,
  };
  const isTold = told.temperature || told.pH || told.hardness || told.salinity || told.current;
  const kinds = new Set(parties.map(({ id }) => id)).size;
  const others = favourable.filter((finding) => !isBy(finding, inWaterRules));
  const facts = rightFacts(verdict);
  const order = Object.keys(messages.conditions);
  const inOrder = [...facts].sort((a, b) => order.indexOf(a) - order.indexOf(b));
  return [
    ...(isTold ? [messages.sharedWater({ kinds, ...told })] : []),
    ...alikeIn(others, (finding) => finding).map((alike) => teller.clauseOf(alike)),
    ...(facts.length >= worthNaming
      ? [messages.alreadyRight(inOrder, wrongFacts(verdict), !verdict.open.some(isMissing))]
      : []),
  ];
}

/** Whether nobody knows a trait, for want of which something may be wrong. */
const isMissing = ({ reason, couldBe }: OpenQuestion): boolean =>
  reason === "missing" && (couldBe === "blocking" || couldBe === "restricting");

/** From how many facts on it is worth saying that they are right. */
const worthNaming = 3;

/** What every two of several share is what all share. */
function sharedBy(favourable: readonly FindingBy<SharedWaterRule>[]): Figure | undefined {
  const spans = favourable.flatMap(({ measures }): readonly Figure[] =>
    measures?.shared ? [measures.shared] : [],
  );
  const [first, ...further] = spans;
  if (!first || further.length + 1 < favourable.length) return undefined;
  const span = further.reduce<PartialRange | undefined>(
    (all, next) => all && overlap(all, statedOf(next)),
    statedOf(first),
  );
  return span && within({ ...span, ...(first.unit !== undefined && { unit: first.unit }) });
}
