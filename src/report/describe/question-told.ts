import type { OpenQuestion, Verdict } from "../../compatibility";
import { plannedWaters } from "../../compatibility/inner";
import type { TraitPath, TraitValue } from "../../species";
import type { Figure } from "../figure";
import { isBy } from "../matters/by-rule";
import { plannedWaterRules } from "../matters/water-rules";
import { traitText } from "../profile/trait-text";
import type { Means } from "./means";

/** Questions that differ only in the parties they are about; at least one. */
export type Questions = readonly [OpenQuestion, ...OpenQuestion[]];

/** What questions of one topic ask, as a part of a sentence. */
export function questionTold(alike: Questions, verdict: Verdict, means: Means): string {
  const [question] = alike;
  const { messages, figure, named } = means;
  const { who, many } = named(alike.map(({ of }) => of));
  const { open, traits } = messages;
  switch (question.reason) {
    case "missing":
      return open.missing(
        [...new Set(alike.flatMap((one) => ("trait" in one ? traits[one.trait] : [])))],
        who,
      );
    case "disputed":
      return "trait" in question && "values" in question
        ? open.disputed(
            traits[question.trait],
            who,
            valuesTold(question, means),
            figure(plannedFigure(verdict, question.trait)),
          )
        : "";
    case "not-given":
      return open.notGiven(
        alike.flatMap((one) => ("on" in one ? one.on : [])),
        who,
      );
    case "outside-domain":
      return open.outsideDomain(who);
    case "individual":
      return open.individual(who, many);
  }
}

type Disputed = Extract<OpenQuestion, { readonly reason: "disputed" }>;

/** What sources say of a trait, where they can be told apart in a few words. */
function valuesTold({ trait, values }: Disputed, { messages, figure }: Means): readonly string[] {
  if (trait === "size.lengthWeight") return [];
  if (trait === "size.adultLength") return [figure(disputedLengths(values))];
  const told: readonly unknown[] = trait === "social.group" ? fullest(values) : values;
  const texts = [...new Set(told.map((value) => traitText(trait, keptOf(value), messages, figure)))];
  const differ = texts.length > 1 || told.length < values.length;
  return differ && texts.join("").length <= mostSaid ? texts : [];
}

type GroupSize = TraitValue<"social.group">;

/** Of group sizes with the same least number that which says most: the others only leave out which numbers do worst. */
const fullest = (values: readonly GroupSize[]): readonly GroupSize[] =>
  values.filter((value) => value.avoid || !values.some(({ least, avoid }) => avoid && least === value.least));

/** How many characters what sources say may take together. */
const mostSaid = 90;

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

/** The planned figure of a trait of water that sources dispute, if the verdict tells it. */
function plannedFigure({ findings, met }: Verdict, trait: TraitPath): Figure | undefined {
  const [planned] = [...findings, ...met].flatMap((finding): readonly Figure[] => {
    if (!isBy(finding, plannedWaterRules) || plannedWaters[finding.rule] !== trait) return [];
    return finding.measures?.planned ? [finding.measures.planned] : [];
  });
  return planned;
}
