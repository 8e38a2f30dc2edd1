import type { Finding, OpenQuestion, Sign, Verdict, VerdictParty } from "../../compatibility";
import type { Condition } from "../../plan";
import type { Messages, Told } from "../messages/messages";
import { capitalised, nameIn } from "../names";
import { quantityWriter, type UnitSystem } from "../quantities";

/** Findings that differ only in the parties they are about; at least one. */
export type Alike = readonly [Finding, ...Finding[]];

/** Puts the parts of one verdict into sentences of one language. */
export interface Teller {
  readonly party: (party: VerdictParty) => string;
  /** One sentence for findings that differ only in the parties they are about. */
  readonly findings: (alike: Alike) => string;
  /** The same, with what it rests on. */
  readonly reason: (alike: Alike) => string;
  /** What speaks for each two of some parties by one rule; undefined where the language tells it one by one. */
  readonly together: (favourable: Alike) => string | undefined;
  readonly condition: (condition: Condition) => string;
  readonly question: (question: OpenQuestion) => string;
  /** A sign to look for, in the parties on which findings fall. */
  readonly sign: (sign: Sign, findings: readonly Finding[]) => string;
}

/** Puts the parts of a verdict into the sentences of a language. Refuses an unknown system of units. */
export function tellerOf(verdict: Verdict, messages: Messages, units: UnitSystem): Teller {
  const { language } = messages;
  const figure = quantityWriter(messages, units);
  const lists = new Intl.ListFormat(language, { type: "conjunction" });
  const listed = (names: readonly string[]) => lists.format(new Set(names.filter(Boolean)));
  const nameOf = (index: number | undefined) => {
    const party = index === undefined ? undefined : verdict.parties[index];
    return party ? nameIn(language, party.names, party.name) : "";
  };
  const sentence = (text: string) => capitalised(text, language);

  const findings = (alike: Alike) => {
    const [finding] = alike;
    const told = {
      weight: finding.weight,
      from: listed(alike.map(({ from }) => nameOf(from))),
      to: listed(alike.map(({ to }) => nameOf(to))),
      measures: finding.measures ?? {},
      figure,
    };
    const { rules, otherRule } = messages;
    // The verdict's type ties the measures of a finding to its rule, and the messages tie the sentence to the measures.
    const say = Object.hasOwn(rules, finding.rule)
      ? (rules[finding.rule as keyof typeof rules] as (told: Told<unknown>) => string)
      : undefined;
    return sentence(say ? say(told) : otherRule(finding.rule, told as never));
  };

  return {
    party: ({ names, name: scientific, sex, stage, count, males, females }) =>
      messages.party({
        name: nameIn(language, names, scientific),
        scientific,
        ...(sex && { sex }),
        ...(stage && { stage }),
        ...(count !== undefined && { count }),
        ...(males !== undefined && { males }),
        ...(females !== undefined && { females }),
      }),
    findings,
    together: (favourable) => {
      const [{ rule }] = favourable;
      const { together } = messages;
      const say = Object.hasOwn(together, rule) ? together[rule as keyof typeof together] : undefined;
      return say?.(listed(favourable.flatMap(({ from, to }) => [nameOf(from), nameOf(to)])));
    },
    reason: (alike) => findings(alike) + messages.support(alike[0].basis),
    condition: ({ on, of, wanted }) => {
      const [words, range] = "oneOf" in wanted ? [wanted.oneOf, {}] : [[], wanted];
      const clause = messages.conditions[on]({
        of: nameOf(of),
        wanted: "oneOf" in wanted ? "" : figure(wanted),
        words,
        min: range.min,
        max: range.max,
        figure,
      });
      return messages.worksIf(clause);
    },
    question: (question) => {
      const of = nameOf(question.of);
      const { open, traits } = messages;
      const text = {
        missing: () => open.missing("trait" in question ? traits[question.trait] : "", of),
        disputed: () => open.disputed("trait" in question ? traits[question.trait] : "", of),
        "not-given": () => ("input" in question ? open.notGiven(question.input, of) : ""),
        "outside-domain": () => open.outsideDomain(of),
        individual: () => open.individual(of),
      }[question.reason]();
      return sentence(open.couldBe(text, question.couldBe));
    },
    sign: (sign, shown) =>
      sentence(messages.signs[sign](listed(shown.map(({ from, to }) => nameOf(to ?? from))))),
  };
}
