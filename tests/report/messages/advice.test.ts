import { expect, describe as suite, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import trichogasterLalius from "vivary/catalog/trichogaster-lalius";
import {
  type EntryReason,
  entryOrder,
  feedingPlan,
  looks,
  type NoEntryOrder,
  type Suspect,
  seenSigns,
  suspects,
} from "../../../src/advice";
import { pairRules, planRules } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import {
  type AdviceMessages,
  describeEntryOrderIn,
  describeFeedingPlanIn,
  describeSuspectsIn,
  englishAdvice,
} from "../../../src/report";
import { germanAdvice } from "../../../src/report/de";
import { classes } from "../../../src/species";
import { advised, alteredFeedings, groupsOf } from "../describe/advised";
import { pseudoAdvice, unmarked } from "./pseudo";

/** A gap where a name, a figure or a word is missing, or a word of the machine's. */
const gap = /undefined|null|NaN|Infinity|\[object| {2}| [.,;:)]|\( |\(\)|[,;:] ?\./;

const languages = { English: englishAdvice, German: germanAdvice };
const rules = [...pairRules, ...planRules].map(({ id }) => id);
const words = <Class extends string>(of: Readonly<Record<Class, string>>) => Object.keys(of) as Class[];

/** Every food, place and hour, with and without whoever would take it. */
const offerings = words(classes.food).flatMap((food) =>
  words(classes.zone).flatMap((place) =>
    words(classes.light).map((light, index) => ({
      food,
      place,
      light,
      apart: index > 0,
      ...(index > 0 && { holdBack: [0] }),
    })),
  ),
);

/** Every reason for a place in an order, about all groups. */
const reasonsAbout = (groups: readonly number[]): readonly EntryReason[] => [
  ...(["filter-ripens", "quarantine", "filter-follows", "plants-grow-in", "stated-day"] as const).map(
    (reason) => ({ reason, day: 40 }),
  ),
  { reason: "others-grow", group: 0, length: 3.2 },
  { reason: "others-grow", group: 0, length: 3.2, day: 90 },
  ...rules.map((rule) => ({ reason: "others-first", groups, rules: [rule, "x-own-rule"] }) as const),
  { reason: "others-first", groups, rules: [] },
  { reason: "defends-place" },
  { reason: "may-eat", groups },
  { reason: "together" },
];

/** Every reason why there is no order. */
const refusals = (groups: readonly number[]): readonly NoEntryOrder[] =>
  (["unsuitable", "others-there", "both-grow-first", "worse-before", "not-found"] as const).flatMap(
    (reason) => [
      { reason, groups, rules: [...rules, "conditions-exclude", "x-own-rule"] },
      { reason, groups: [0], rules: [] },
    ],
  );

/** What is suspected of a plan by each sign alone and by all of them; each look with each thing to do. */
function* suspectedOf(plan: Plan): Generator<readonly Suspect[]> {
  const all = suspects(plan, seenSigns);
  yield all;
  yield [];
  for (const sign of seenSigns) yield suspects(plan, [sign]);
  const [one] = all;
  if (!one) return;
  for (const look of looks)
    yield (["part", "rehouse", "change-water", "watch"] as const).map((act) => ({
      ...one,
      look,
      act: { do: act },
    }));
}

/** A plan whose names are other words in German than in English. */
const fixedPlan: Plan = {
  tank: { base: { shape: "rectangle", length: 100, width: 40 }, filter: { mediaArea: 3, age: 0 } },
  water: { temperature: 8 },
  groups: [
    { species: danioRerio, unsexed: 10 },
    { species: trichogasterLalius, juveniles: 6 },
  ],
};
const fixed: typeof advised = [
  { plan: fixedPlan, feeding: feedingPlan(fixedPlan), order: entryOrder(fixedPlan) },
];

/** All that can be told of the plans, in a language. */
function* toldIn(
  messages: AdviceMessages,
  of = advised,
): Generator<{ readonly text: string; readonly plan: Plan }> {
  for (const [index, one] of of.entries()) {
    const { plan, feeding, order } = one;
    const units = (["metric", "us", "imperial"] as const)[index % 3];
    yield { plan, text: describeFeedingPlanIn(messages, feeding, { units }) };
    yield { plan, text: describeEntryOrderIn(messages, order, plan, { units }) };
  }
  for (const { plan, feeding } of of.slice(0, 12)) {
    const some = offerings.filter((_, index) => index % 5 === feeding.offerings.length % 5);
    for (const altered of alteredFeedings({ plan, feeding }, some))
      yield { plan, text: describeFeedingPlanIn(messages, altered) };
    const groups = groupsOf(plan);
    for (const order of refusals(groups)) yield { plan, text: describeEntryOrderIn(messages, order, plan) };
    for (const suspected of suspectedOf(plan))
      yield { plan, text: describeSuspectsIn(messages, suspected, plan) };
    const because = reasonsAbout(groups);
    for (const outcome of ["suitable", "conditional", "undetermined", "unsuitable"] as const) {
      const order = { steps: [{ day: 90, groups, because, outcome }] };
      yield { plan, text: describeEntryOrderIn(messages, order, plan) };
    }
  }
}

const lines = (text: string) => text.replaceAll("\n  ", " ").split("\n").filter(Boolean);
const titlesOf = ({ advice: { feeding } }: AdviceMessages): readonly string[] =>
  Object.values(feeding.titles);

suite.each(Object.entries(languages))("what advice says in %s", (_, messages) => {
  const told = [...toldIn(messages)];

  test("has no gap, and every item is a sentence", () => {
    expect(told.length).toBeGreaterThan(200);
    for (const { text } of told) {
      for (const line of lines(text)) expect(line).not.toMatch(gap);
      for (const item of lines(text).filter((line) => line.startsWith("- ")))
        expect(item).toMatch(/^- [\p{Lu}\d].*[.)]$/u);
    }
  });

  test("names every group of a plan", () => {
    for (const { plan, feeding, order } of advised) {
      const texts = [
        describeFeedingPlanIn(messages, feeding),
        ...(order.steps ? [describeEntryOrderIn(messages, order, plan)] : []),
      ].map((text) => text.replaceAll(/\s+/g, " "));
      for (const { species } of plan.groups)
        for (const text of texts) expect(text).toContain(species.taxonomy.name);
    }
  });

  test("says the caution once, and no title without items", () => {
    for (const { feeding } of advised) {
      const text = lines(describeFeedingPlanIn(messages, feeding));
      for (const [index, line] of text.entries())
        if (titlesOf(messages).includes(line)) expect(text[index + 1]).toMatch(/^- /);
      const joined = text.join(" ").replaceAll(/\s+/g, " ");
      expect(joined.split(messages.advice.feeding.closing)).toHaveLength(2);
    }
  });

  test("has a word or two for every rule", () => {
    for (const rule of rules) expect(messages.advice.entry.topics[rule].length).toBeGreaterThan(1);
  });
});

test("no word of advice lives outside the language", () => {
  for (const { text } of toldIn(pseudoAdvice)) {
    expect(unmarked(text).replaceAll("x-own-rule", "")).not.toMatch(/\p{L}/u);
  }
});

/** Words that German and English write alike. */
const alike = new Set("an cm detritus dh die filter in kg mg own ph plan plankton rule so was".split(" "));

/** The words of a text, but for scientific names. */
const wordsOf = (text: string) =>
  text
    .replaceAll(/\([A-Z][a-z]+\s+[a-z]+[);]/g, "")
    .toLowerCase()
    .match(/\p{L}{2,}/gu) ?? [];

test("no English is left in German", () => {
  const english = [...toldIn(englishAdvice, fixed)].map(({ text }) => text);
  const german = [...toldIn(germanAdvice, fixed)].map(({ text }) => text);
  const known = new Set(english.flatMap(wordsOf));
  const left = german.flatMap(wordsOf).filter((word) => known.has(word) && !alike.has(word));
  expect([...new Set(left)]).toEqual([]);
  expect(known.size).toBeGreaterThan(200);
});
