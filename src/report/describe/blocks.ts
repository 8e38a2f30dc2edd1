import type { Finding, OpenQuestion, Sign, Verdict, Weight } from "../../compatibility";
import type { Block } from "../layout";
import type { Messages } from "../messages/messages";
import type { Alike, Teller } from "./teller";

/** The parts of a report on a verdict, in the order in which a keeper reads them. */
export function blocksOf(verdict: Verdict, teller: Teller, messages: Messages): readonly Block[] {
  const { titles } = messages;
  const reasons = folded(
    verdict.findings.filter((finding) => !isCaution(finding)),
    overTargets,
  );
  const cautions = folded(verdict.findings.filter(isCaution), overParties);
  const sentences = (weight: Weight) =>
    reasons.filter(([finding]) => finding.weight === weight).map((alike) => [teller.reason(alike)]);
  return [
    { lead: headline(verdict, messages) },
    { title: titles.parties, items: verdict.parties.map((party) => [teller.party(party)]) },
    { title: titles.blocking, items: sentences("blocking") },
    {
      title: verdict.outcome === "unsuitable" ? titles.besides : titles.restricting,
      items: conditions(verdict, reasons, teller),
    },
    { title: titles.advisory, items: sentences("advisory") },
    { title: titles.favourable, items: favourable(verdict.findings, teller) },
    { title: titles.watchFor, items: signs(verdict.findings, teller) },
    { title: titles.open, items: mostDecisive(verdict.open, teller, messages) },
    { title: titles.met, items: verdict.met.length > 0 ? [[messages.metSummary(verdict.met.length)]] : [] },
    { title: titles.cautions, items: cautions.map((alike) => [teller.findings(alike)]) },
    { lead: [messages.closing] },
  ];
}

const isCaution = ({ rule }: Finding) => rule.startsWith("caution-");

function headline({ outcome, bounds }: Verdict, messages: Messages): readonly string[] {
  const certain = bounds.atBest === bounds.atWorst && bounds.atBest === outcome;
  return [messages.outcome[outcome], ...(certain ? [] : [messages.bounds(bounds.atBest, bounds.atWorst)])];
}

/** What may differ in findings that are told together: whom they fall on, or also whom they start from. */
const overTargets = (finding: Finding) => ({ ...finding, to: finding.to !== undefined });
const overParties = (finding: Finding) => ({ ...finding, from: undefined, basis: undefined });

function folded(findings: readonly Finding[], apartFrom: (finding: Finding) => object): readonly Alike[] {
  const alike = new Map<string, [Finding, ...Finding[]]>();
  for (const finding of findings) {
    const key = JSON.stringify(apartFrom(finding));
    const known = alike.get(key);
    if (known) known.push(finding);
    else alike.set(key, [finding]);
  }
  return [...alike.values()];
}

/** What speaks for it: where a rule favours every two of several parties, in one sentence. */
function favourable(findings: readonly Finding[], teller: Teller): readonly (readonly string[])[] {
  const speaking = findings.filter(({ weight }) => weight === "favourable");
  return folded(speaking, ({ rule }) => ({ rule })).flatMap((ofRule) => {
    const parties = new Set(ofRule.flatMap(({ from, to }) => [from, to])).size;
    const everyTwo = parties > 2 && ofRule.length === (parties * (parties - 1)) / 2;
    const told = everyTwo ? teller.together(ofRule) : undefined;
    return told === undefined ? ofRule.map((finding) => [teller.reason([finding])]) : [[told]];
  });
}

/** Every condition once, after the reasons for it; conditions on two parties of one name are told as one. */
function conditions(
  { findings, conditions }: Verdict,
  reasons: readonly Alike[],
  teller: Teller,
): readonly (readonly string[])[] {
  const asked = new Map<string, readonly string[]>();
  for (const condition of conditions) {
    const asking = new Set(condition.findings.map((index) => findings[index]));
    const lines = reasons.filter((alike) => alike.some((finding) => asking.has(finding))).map(teller.reason);
    const told = teller.condition(condition);
    asked.set(told, [...(asked.get(told) ?? []), ...lines]);
  }
  return [...asked].map(([told, lines]) => [...new Set(lines), told]);
}

/** Every sign to look for once, with those who would show it. */
function signs(findings: readonly Finding[], teller: Teller): readonly (readonly string[])[] {
  const shown = new Map<Sign, Finding[]>();
  for (const finding of findings) {
    const { watchFor } = finding;
    if (watchFor) shown.set(watchFor, [...(shown.get(watchFor) ?? []), finding]);
  }
  return [...shown].map(([sign, ofSign]) => [teller.sign(sign, ofSign)]);
}

/** How many questions a report names: more would hide the decisive ones. */
const named = 5;

function mostDecisive(open: readonly OpenQuestion[], teller: Teller, messages: Messages) {
  const questions = eachOnce(open);
  const further = questions.length - named;
  const items = questions.slice(0, named).map((question) => [teller.question(question)]);
  return further > 0 ? [...items, [messages.open.further(further)]] : items;
}

/** The questions with the gravest of those about one trait or input only. */
function eachOnce(open: readonly OpenQuestion[]): readonly OpenQuestion[] {
  const topics = new Map<string, OpenQuestion>();
  for (const question of open) {
    const { rule: _, couldBe: __, ...topic } = question;
    const key = JSON.stringify(topic);
    if (!topics.has(key)) topics.set(key, question);
  }
  return [...topics.values()];
}
