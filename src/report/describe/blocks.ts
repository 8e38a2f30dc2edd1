import type { Remedies } from "../../advice";
import type { Verdict } from "../../compatibility";
import type { Basis } from "../../species";
import type { Block } from "../layout";
import { isDeed, mayQuarrel } from "../matters/acts";
import { isCaution } from "../matters/by-rule";
import { couldRuleOut, harmPrevented, reasonsOf, sentencesOf } from "../matters/matters";
import { isFarTooSmall } from "../matters/order";
import type { Messages } from "../messages/messages";
import { cautions } from "./cautions";
import { checkedRemedies } from "./checked-remedies";
import { type Demands, demandsTold } from "./demands-told";
import { headline, onlyTooSmall } from "./headline";
import { openQuestions } from "./questions";
import { type Item, type Reason, reasonOf, roomItem, weakest } from "./reasons";
import { remediesTold } from "./remedies-told";
import { signsTold } from "./signs-told";
import { strengths } from "./strengths";
import type { Teller } from "./teller";

/**
 * A part of a report: the answer; the animals; why not; what nobody can tell; what must change; what the plan does not say;
 * what would help; what is worth knowing; the cautions; what it all rests on. Of a suitable plan what is worth knowing and
 * the cautions are one list, `advisory`.
 */
export type ReportPartName =
  | "answer"
  | "parties"
  | "blocking"
  | "deciding"
  | "restricting"
  | "unsaid"
  | "remedies"
  | "advisory"
  | "cautions"
  | "closing";

/** A block, and which part of the report it is. */
export type ReportBlock = Block & { readonly part: ReportPartName };

/**
 * The parts of a report on a verdict, in the order in which a keeper reads them: what decides comes first. Of a suitable
 * plan that is good news: what speaks for it, and the rest in a few lines.
 */
export function blocksOf(
  verdict: Verdict,
  teller: Teller,
  messages: Messages,
  remedies?: Remedies,
): readonly ReportBlock[] {
  const { titles } = messages;
  const { outcome } = verdict;
  const toKnow = reasonsOf(verdict, "advisory");
  const items = (list: ReturnType<typeof reasonsOf>): readonly Item[] =>
    list.map((alike) => ({ clauses: [], reasons: [reasonOf(alike, teller)] }));
  const blocking = blockingItems(verdict, teller, items);
  const inDoubt = toKnow.filter(([finding]) => couldRuleOut(finding));
  const deciding = items(inDoubt);
  const demands: Demands = demandsTold(verdict, teller, messages, blocking);
  const graver = [...deciding, ...demands.wrong, ...demands.unsaid].flatMap(({ reasons }) => reasons);
  const told = new Set(graver.map(({ text }) => text));
  const certain = toKnow.filter(
    (alike) => !inDoubt.includes(alike) && !told.has(reasonOf(alike, teller).text),
  );
  const advisory = sentencesOf(certain).map((group) => {
    const text = messages.gathered(group.map((alike, index) => teller.clauseOf(alike, group[index - 1])));
    return { clauses: [], reasons: [{ text, basis: weakest(group.flat()) }] };
  });
  const prevented = isUnsuitable(verdict) ? [] : harmPrevented(verdict);
  if (prevented.length > 0) {
    const text = messages.keptDown(messages.gathered(prevented.map((alike) => teller.clauseOf(alike))));
    advisory.push({ clauses: [], reasons: [{ text, basis: weakest(prevented.flat()) }] });
  }
  const all = [...blocking, ...deciding, ...demands.wrong, ...demands.unsaid, ...advisory];
  const bases = all.flatMap(({ reasons }) => reasons.flatMap(({ basis }) => basis ?? []));
  const usual = usualBasis(bases);
  const written = (list: readonly Item[]) => [
    ...new Set(list.map((item) => itemText(item, usual, teller, messages))),
  ];
  const suits = outcome === "suitable";
  const titled = (title: string, text: string) => (text ? [`${title}: ${text}`] : []);
  const good = outcome === "unsuitable" ? "" : messages.gathered(strengths(verdict, teller, messages));
  const known = written(advisory);
  const isRuledOut = isUnsuitable(verdict) && verdict.bounds.atBest === "unsuitable";
  const doubts = isRuledOut ? [] : openQuestions(verdict, demands.told, teller, messages);
  const grave = doubts.filter(({ isGrave }) => isGrave).map(({ text }) => text);
  const slight = isUnsuitable(verdict) ? [] : doubts.filter(({ isGrave }) => !isGrave);
  const further = [
    ...titled(
      isUnsuitable(verdict) ? titles.meanwhile : titles.watchFor,
      signsTold([...verdict.findings, ...prevented.flat()], verdict.parties, teller, messages),
    ),
    ...titled(
      titles.ifItStarts,
      !isUnsuitable(verdict) && (mayQuarrel(verdict) || prevented.flat().some(isDeed))
        ? messages.ifItStarts
        : "",
    ),
    ...slight.map(({ text }) => text),
  ];
  const careful = cautions(verdict, teller, messages);
  const closing = [
    ...(usual ? [messages.unlessMarked(usual, new Set(bases))] : []),
    ...(verdict.made.rules.some(isCaution) ? [] : [messages.withoutCautions]),
    messages.closing,
  ].join(" ");
  if (suits)
    return [
      { part: "answer", lead: headline(verdict, teller, messages) },
      {
        part: "advisory",
        items: [
          ...titled(titles.favourable, good),
          ...grave,
          ...titled(titles.advisory, known.join(" ")),
          ...further,
          ...titled(titles.cautions, careful.own.join(" ")),
          ...titled(titles.everyTank, careful.general),
        ],
      },
      { part: "closing", lead: [closing] },
    ];
  return [
    { part: "answer", lead: headline(verdict, teller, messages) },
    { part: "parties", title: titles.parties, items: teller.parties.map(teller.capital) },
    { part: "blocking", title: titles.blocking, items: written(blocking) },
    { part: "deciding", title: titles.deciding, items: written(deciding) },
    {
      part: "restricting",
      title: isUnsuitable(verdict) ? titles.besides : titles.restricting,
      items: written(demands.wrong),
    },
    { part: "unsaid", title: titles.unsaid, items: written(demands.unsaid) },
    ...(remedies === undefined
      ? []
      : [
          {
            part: "remedies" as const,
            ...remediesTold(checkedRemedies(remedies, verdict, messages), verdict, teller, messages),
          },
        ]),
    {
      part: "advisory",
      title: titles.advisory,
      items: [...grave, ...known, ...further, ...titled(titles.favourable, good)],
    },
    {
      part: "cautions",
      title: titles.cautions,
      items: [...careful.own, ...titled(titles.everyTank, careful.general)],
    },
    { part: "closing", lead: [closing] },
  ];
}

const isUnsuitable = ({ outcome }: Verdict) => outcome === "unsuitable";

/** What reasons rest on that are not marked: common practice, or print where more of them rest on that. */
function usualBasis(told: readonly Basis[]): Basis | undefined {
  const count = (basis: Basis) => told.filter((one) => one === basis).length;
  if (told.length === 0) return undefined;
  return count("published") > count("common-practice") ? "published" : "common-practice";
}

function itemText(
  { clauses, reasons }: Item,
  usual: Basis | undefined,
  { capital }: Teller,
  messages: Messages,
): string {
  const marked = ({ text, basis }: Reason) =>
    basis === undefined || basis === usual ? text : messages.supported(text, basis);
  const texts = [...new Set(reasons.map(marked))];
  return capital(clauses.length > 0 ? messages.demand(clauses, texts) : texts.map(capital).join(" "));
}

function blockingItems(
  verdict: Verdict,
  teller: Teller,
  items: (list: ReturnType<typeof reasonsOf>) => readonly Item[],
): readonly Item[] {
  const small = verdict.findings.filter(isFarTooSmall);
  const reasons = reasonsOf(verdict, "blocking").filter(([finding]) => !isFarTooSmall(finding));
  const weight = onlyTooSmall(verdict) ? "restricting" : "blocking";
  const room = small.length > 0 ? [roomItem(small, weight, verdict, teller)] : [];
  return [...room, ...items(reasons)];
}
