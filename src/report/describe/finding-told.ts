import type { Finding } from "../../compatibility";
import { type Figure, noLess, within } from "../figure";
import { doerOf } from "../matters/acts";
import type { Alike } from "../matters/alike";
import { isBy } from "../matters/by-rule";
import { sharedWaterRules } from "../matters/water-rules";
import type { Told } from "../messages/messages";
import { lengthTold, type Means } from "./means";
import type { Named } from "./naming";

/** One sentence without a capital for findings that differ only in the parties they are about. */
export function findingTold(alike: Alike, means: Means, before?: Alike): string {
  const { verdict, messages, figure, named } = means;
  const [own = alike[0]] = alike;
  const finding = alike.find(({ rule }) => rule !== "acts-own-kind") ?? own;
  const speciesOf = (index: number | undefined) => verdict.parties[index ?? -1]?.id;
  const isOfOwnKind = ({ rule, from: one, to: other }: Finding) =>
    rule === "acts-own-kind" || (other !== undefined && speciesOf(one) === speciesOf(other));
  const beyondOwn = alike.filter((one) => one.rule === finding.rule && !isOfOwnKind(one));
  const onOthers = beyondOwn.length > 0 ? beyondOwn : alike.filter(({ rule }) => rule === finding.rule);
  const from = named(alike.map((one) => one.from));
  const to = targets(alike, onOthers, means);
  const first = finding.from === undefined ? undefined : verdict.parties[finding.from];
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
    inDoubt: "couldBe" in finding,
    fromNow: first?.stage === "juvenile" ? lengthTold(first, means) : "",
    measures: measuresOf(finding, alike),
    figure,
  };
  const { rules, otherRule } = messages;
  // The verdict's type ties the measures of a finding to its rule, and the messages tie the sentence to the measures.
  const say = Object.hasOwn(rules, finding.rule)
    ? (rules[finding.rule as keyof typeof rules] as (told: Told<unknown>) => string)
    : undefined;
  return say ? say(told) : otherRule(finding.rule, told as never);
}

/**
 * What a finding measures, what is needed as no less than it is, and spans as those to stay within, but for those of two that
 * meet, whose ends are told as near as can be; of a cool season that is too cold for several, not what one of these is kept in.
 */
function measuresOf(finding: Finding, alike: Alike): object {
  if (finding.rule === "season" && alike.length > 1) {
    const { season } = finding.measures ?? {};
    return season ? { season: within(season) } : {};
  }
  if (isBy(finding, sharedWaterRules) && finding.measures?.shared) {
    const { shared, ...kept } = finding.measures;
    return { ...kept, shared: finding.weight === "blocking" ? shared : within(shared) };
  }
  // Which measures there are hangs on the rule; those without a value are spans, and all numbers called needed the least.
  const measures: readonly (readonly [string, Measure])[] = Object.entries(finding.measures ?? {});
  return Object.fromEntries(
    measures.map(([name, measure]) => {
      const { value } = measure;
      if (value === undefined) return [name, within(measure)];
      return [name, name === "needed" && typeof value === "number" ? noLess({ ...measure, value }) : measure];
    }),
  );
}

/** A figure, or what is told in words. */
type Measure = Omit<Figure, "value"> & { readonly value?: unknown };

/** Whom findings fall on; where that is everyone else in a tank of many, not each by name. */
function targets(alike: Alike, onOthers: readonly Finding[], { verdict, messages, named }: Means): Named {
  const to = new Set(onOthers.map((one) => one.to));
  const from = new Set(alike.map((one) => one.from));
  const others = [...verdict.parties.keys()].filter((index) => !from.has(index));
  const isAll = others.length >= manyOthers && others.every((index) => to.has(index));
  const all = { who: messages.theOthers, whom: messages.theOthers, many: true };
  return isAll ? all : named([...to]);
}

/** How many others are not told one by one. */
const manyOthers = 3;

/** Whether findings are about the same parties, and about the same sex of them, as those before. */
function isAbout(alike: Alike, before: Alike): boolean {
  const partiesOf = (those: Alike) => [...new Set(those.map(({ from }) => from))].sort().join(" ");
  return partiesOf(alike) === partiesOf(before) && doerOf(alike[0]) === doerOf(before[0]);
}
