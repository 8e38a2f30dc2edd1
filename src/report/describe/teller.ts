import type {
  AimedCondition,
  Finding,
  Measures,
  OpenQuestion,
  Verdict,
  VerdictParty,
} from "../../compatibility";
import type { TraitPath, TraitValue } from "../../species";
import type { Figure } from "../figure";
import type { Messages, Place, Told, ToldCondition, ToldRoom } from "../messages/messages";
import { capitalised, nameIn } from "../names";
import { traitText } from "../profile/trait-text";
import { quantityWriter, type UnitSystem } from "../quantities";

/** Findings that differ only in the parties they are about; at least one. */
export type Alike = readonly [Finding, ...Finding[]];

/** Some parties by name, with the number of their verb. */
interface Named {
  readonly who: string;
  /** The same as the object of a verb. */
  readonly whom: string;
  readonly many: boolean;
}

/** Puts the parts of one verdict into sentences of one language. */
export interface Teller {
  /** All parties with their numbers; those of a pair that are alike once. */
  readonly parties: readonly string[];
  /** Some parties by name. */
  readonly named: (indices: readonly (number | undefined)[]) => Named;
  readonly listed: (texts: readonly string[]) => string;
  readonly figure: (figure: Figure | undefined) => string;
  /** One sentence for findings that differ only in the parties they are about. */
  readonly findings: (alike: Alike) => string;
  /** The same without a capital, so that it can stand in another sentence. */
  readonly clauseOf: (alike: Alike, before?: Alike) => string;
  /** What to do that a condition be met, as a clause. */
  readonly clause: (condition: AimedCondition) => string;
  readonly condition: (condition: AimedCondition) => string;
  /** What one and what several of a party are called, without an article. */
  readonly kinds: (of: number | undefined) => { readonly one: string; readonly several: string };
  /** What questions of one topic ask, as a part of a sentence. */
  readonly question: (alike: Questions) => string;
  readonly capital: (text: string) => string;
  /** Phrases as one sentence without a capital; empty where there are none. */
  readonly sentence: (phrases: readonly string[]) => string;
  readonly room: (told: Omit<ToldRoom, keyof Named> & Named) => string;
  /** On whom findings fall; empty where that is whoever is there. */
  readonly sufferers: (findings: readonly Finding[]) => string;
  /** Those of a hazard. */
  readonly hazards: (findings: Alike) => string;
}

/** Questions that differ only in the parties they are about; at least one. */
export type Questions = readonly [OpenQuestion, ...OpenQuestion[]];

/** Puts the parts of a verdict into the sentences of a language. Refuses an unknown system of units. */
export function tellerOf(verdict: Verdict, messages: Messages, units: UnitSystem): Teller {
  const { language } = messages;
  const figure = quantityWriter(messages, units);
  const lists = new Intl.ListFormat(language, { type: "conjunction" });
  const listed = (texts: readonly string[]) => lists.format(texts.filter(Boolean));
  const capital = (text: string) => capitalised(text, language);
  const kinds = new Set(verdict.parties.map(({ id }) => id)).size;
  const partyAt = (index: number | undefined) => (index === undefined ? undefined : verdict.parties[index]);
  const bare = ({ names, name }: VerdictParty) => nameIn(language, names, name);
  /** A scientific name has no plural. */
  const several = (party: VerdictParty) =>
    bare(party) === party.name ? party.name : messages.several(bare(party));
  const isOne = ({ id, count }: VerdictParty) =>
    count === 1 && verdict.parties.filter((party) => party.id === id).length === 1;

  const named = (indices: readonly (number | undefined)[]): Named => {
    const parties = [...new Set(indices)].flatMap((index) => partyAt(index) ?? []);
    const textsAs = (place: Place) => [
      ...new Set(parties.map((party) => (isOne(party) ? messages.this(bare(party), place) : several(party)))),
    ];
    const texts = textsAs("subject");
    const [first] = parties;
    return {
      who: listed(texts),
      whom: listed(textsAs("object")),
      many: texts.length > 1 || (first !== undefined && !isOne(first)),
    };
  };
  const lengthOf = (party: VerdictParty | undefined) =>
    party?.length === undefined ? "" : figure({ value: party.length, unit: "cm" });

  /** Whom findings fall on; where that is everyone else in a tank of many, not each by name. */
  const targets = (alike: Alike, onOthers: readonly Finding[]): Named => {
    const to = new Set(onOthers.map((one) => one.to));
    const from = new Set(alike.map((one) => one.from));
    const others = [...verdict.parties.keys()].filter((index) => !from.has(index));
    const isAll = others.length >= manyOthers && others.every((index) => to.has(index));
    const all = { who: messages.theOthers, whom: messages.theOthers, many: true };
    return isAll ? all : named([...to]);
  };

  const clauseOf = (alike: Alike, before?: Alike) => {
    const [own = alike[0]] = alike;
    const finding = alike.find(({ rule }) => rule !== ownKind) ?? own;
    const onOthers = alike.filter(({ rule }) => rule === finding.rule);
    const from = named(alike.map((one) => one.from));
    const to = targets(alike, onOthers);
    const first = partyAt(finding.from);
    const told = {
      weight: finding.weight,
      from: from.who,
      fromObject: from.whom,
      fromMany: from.many,
      to: to.who,
      toObject: to.whom,
      toMany: to.many,
      oneKind: alike.every(({ from: one, to: other }) => named([one]).who === named([other]).who),
      again: before !== undefined && isAbout(alike, before),
      ownToo: onOthers.length < alike.length,
      fromNow: first?.stage === "juvenile" ? lengthOf(first) : "",
      measures: finding.measures ?? {},
      figure,
    };
    const { rules, otherRule } = messages;
    // The verdict's type ties the measures of a finding to its rule, and the messages tie the sentence to the measures.
    const say = Object.hasOwn(rules, finding.rule)
      ? (rules[finding.rule as keyof typeof rules] as (told: Told<unknown>) => string)
      : undefined;
    return say ? say(told) : otherRule(finding.rule, told as never);
  };

  const clause = ({ on, of, wanted, aim }: AimedCondition) => {
    const [words, range] = "oneOf" in wanted ? [wanted.oneOf, {}] : [[], wanted];
    const party = partyAt(of);
    const { who, whom, many: areMany } = named([of]);
    const told: ToldCondition = {
      of: who,
      ofObject: whom,
      many: areMany,
      one: party ? bare(party) : "",
      several: party ? several(party) : "",
      wanted: "oneOf" in wanted ? "" : figure({ ...(aim ?? wanted), unit: wanted.unit }),
      words,
      min: range.min,
      max: range.max,
      figure,
    };
    return messages.conditions[on](told);
  };

  const partyTold = (party: VerdictParty) => {
    const { name: scientific, sex, stage, temper, count, males, females } = party;
    return messages.party({
      name: bare(party),
      several: several(party),
      scientific,
      length: lengthOf(party),
      ...(sex && { sex }),
      ...(stage && { stage }),
      ...(temper && { temper }),
      ...(count !== undefined && { count }),
      ...(males !== undefined && { males }),
      ...(females !== undefined && { females }),
    });
  };
  const partyTexts = verdict.parties.map(partyTold);

  return {
    parties: partyTexts.filter(
      (text, index) => partyAt(index)?.count !== undefined || partyTexts.indexOf(text) === index,
    ),
    kinds: (of) => {
      const party = partyAt(of);
      return { one: party ? bare(party) : "", several: party ? several(party) : "" };
    },
    named,
    listed,
    figure,
    findings: (alike) => capital(clauseOf(alike)),
    clauseOf,
    clause,
    capital,
    sentence: (phrases) => (phrases.length > 0 ? messages.demand([phrases.join(", ")], []) : ""),
    condition: (condition) => messages.demand([capital(clause(condition))], []),
    question: (alike) => {
      const [question] = alike;
      const { who, many } = named(alike.map(({ of }) => of));
      const { open, traits } = messages;
      const valuesOf = (path: TraitPath, values: readonly unknown[]) => {
        if (path === "size.lengthWeight") return [];
        if (path === "size.adultLength") return [figure(disputedLengths(values as AdultLengths))];
        const texts = [...new Set(values.map((value) => traitText(path, keptOf(value), messages, figure)))];
        return texts.length > 1 && texts.join("").length <= mostSaid ? texts : [];
      };
      return {
        missing: () =>
          open.missing([...new Set(alike.flatMap((one) => ("trait" in one ? traits[one.trait] : [])))], who),
        disputed: () =>
          "trait" in question && "values" in question
            ? open.disputed(
                traits[question.trait],
                who,
                valuesOf(question.trait, question.values),
                plannedOf(verdict, question, figure),
              )
            : "",
        "not-given": () =>
          open.notGiven(
            alike.flatMap((one) => ("input" in one ? one.input : [])),
            who,
          ),
        "outside-domain": () => open.outsideDomain(who),
        individual: () => open.individual(who, many),
      }[question.reason]();
    },
    room: messages.room,
    sufferers: (shown) => {
      const who = new Set(shown.flatMap(sufferers).map((index) => partyAt(index)?.id));
      return who.size < kinds ? named(shown.flatMap(sufferers)).who : "";
    },
    hazards: (shown) => {
      const hazardOf = ({ measures = {} }: Finding) => measures as Measures["caution-hazards"];
      const families = new Map<string, Finding[]>();
      for (const finding of shown) {
        const family = hazardOf(finding).family?.value ?? "";
        families.set(family, [...(families.get(family) ?? []), finding]);
      }
      const of = [...families].map(([family, found]) => ({
        ...named(found.map(({ from }) => from)),
        family,
      }));
      return messages.hazards(hazardOf(shown[0]).hazard?.value ?? "bite", of);
    },
  };
}

/** Whether findings are about the same parties, and about the same sex of them, as those before. */
function isAbout(alike: Alike, before: Alike): boolean {
  const doerOf = ({ measures = {} }: Finding) =>
    JSON.stringify((measures as { readonly doer?: unknown }).doer);
  const partiesOf = (those: Alike) => [...new Set(those.map(({ from }) => from))].sort().join(" ");
  return partiesOf(alike) === partiesOf(before) && doerOf(alike[0]) === doerOf(before[0]);
}

/** How many others are not told one by one. */
const manyOthers = 3;

/** The rule about what animals do to their own kind. */
const ownKind = "acts-own-kind";

/** Who shows the sign of a finding: whom it falls on, of a contest both, and of shyness whoever is shy. */
function sufferers({ rule, from, to }: Finding): readonly (number | undefined)[] {
  if (rule === "shyness") return [from];
  return rule === "territory-contest" ? [from, to] : [to ?? from];
}

/** Of figures of water what an animal is kept in. */
const keptOf = (value: unknown): unknown =>
  typeof value === "object" && value !== null && "kept" in value ? { kept: value.kept } : value;

type AdultLengths = readonly TraitValue<"size.adultLength">[];

/** Between which total lengths those lie that sources do not have in common. */
function disputedLengths(values: AdultLengths): Figure {
  const texts = values.map((lengths) => lengths.map((length) => JSON.stringify(length)));
  const isCommon = (length: unknown) => texts.every((those) => those.includes(JSON.stringify(length)));
  const totals = values.flat().flatMap((length) => (isCommon(length) ? [] : [length.total]));
  return {
    min: Math.min(...totals.map(({ min }) => min)),
    max: Math.max(...totals.map(({ max }) => max)),
    unit: "cm",
  };
}

/** How many characters what sources say may take together. */
const mostSaid = 90;

/** The planned figure of a trait of water that sources dispute, if the verdict tells it. */
function plannedOf(
  { findings, met }: Verdict,
  { trait }: { readonly trait: TraitPath },
  figure: (figure: Figure | undefined) => string,
): string {
  const rules: { readonly [Path in TraitPath]?: string } = {
    "water.temperature": "water-temperature",
    "water.pH": "water-ph",
    "water.generalHardness": "water-hardness",
  };
  const [planned] = [...findings, ...met].flatMap(({ rule, measures = {} }) =>
    rule === rules[trait] && "planned" in measures ? ((measures.planned as Figure | undefined) ?? []) : [],
  );
  return figure(planned);
}
