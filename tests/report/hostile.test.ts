import { expect, describe as suite, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import { entryOrder, feedingPlan, seenSigns, suspects } from "../../src/advice";
import { assessPair, assessPlan } from "../../src/compatibility";
import { InvalidInputError } from "../../src/errors";
import { type Plan, safeParsePlan } from "../../src/plan";
import {
  describe,
  describeEntryOrder,
  describeFeedingPlan,
  describeRequirements,
  describeSuspects,
  profileMarkdown,
  sentence,
} from "../../src/report";
import type { SpeciesProfile } from "../../src/species";
import { type OfficialRequirement, officialRequirements } from "../../src/standards";
import { hostileTexts } from "./hostile";

/** A species whose every text is this one. */
const hostileSpecies = (text: string): SpeciesProfile => ({
  ...danioRerio,
  names: { en: [text] },
  taxonomy: { ...danioRerio.taxonomy, name: text, authority: text, family: text, order: text },
  origin: { regions: { value: [text], basis: "published", also: [[text]] } },
  reproduction: { interbreedsWith: { value: [text], basis: "published" } },
  care: { rehoming: { value: { en: text, de: text }, basis: "curated" } },
  listings: [
    { code: "eu", jurisdiction: text, instrument: text, date: text, effect: text, basis: "memory", at: text },
  ],
});

const planOf = (species: SpeciesProfile): Plan => ({
  tank: { base: { shape: "rectangle", length: 60, width: 30 } },
  groups: [
    { species, unsexed: 6 },
    { species: bettaSplendens, males: 1 },
  ],
});

/** What is asked of a plan, every text the name of its first species. */
const requirementsOf = (plan: Plan): readonly OfficialRequirement[] => {
  const text = plan.groups[0]?.species.taxonomy.name ?? "";
  const texts = {
    jurisdiction: text,
    instrument: text,
    date: text,
    article: text,
    asks: text,
    caution: text,
  };
  return officialRequirements(plan).map((row, index) => ({
    ...row,
    ...texts,
    ...(row.note && { note: `${text} ${index % 5}` }),
  }));
};

const harmless = hostileSpecies("harmless");
/** Lines with what stands before the text of each: heading, list mark, table. */
const frame = (page: string) =>
  page.split("\n").map((line) => line.match(/^(#{1,2} |- | {2}|\| )?/)?.[0] ?? "");

/** What Markdown would make something of. The marks of the page itself stand before its text. */
const live = /(?<!\\)(?:\\\\)*[*_{}[\]<>#&~@`]|(?<!\\):\/\/|\bwww\./iu;
const bodies = (page: string) =>
  page
    .split("\n")
    .map((line) => line.replace(/^(#{1,2} |- | {2})/, "").replace(/^\*((?:\\.|[^*\\])*)\* /, "$1 "));
const steering = /(?![\n\u200c\u200d])\p{C}|[\u2028\u2029]/u;

suite.each(hostileTexts)("%s in every text of a species", (_, text) => {
  const species = hostileSpecies(text);
  const verdict = assessPlan(planOf(species));

  test("breaks no description in Markdown", () => {
    const page = describe(verdict, { format: "markdown" });
    expect(page).not.toMatch(steering);
    for (const body of bodies(page)) {
      expect(body).not.toMatch(live);
      expect(body).not.toMatch(/(?<!\\)(?:\\\\)*\|/);
      expect(body).not.toMatch(/^(\d+[.)](\s|$)|[-=+])/);
    }
    expect(frame(page)).toEqual(frame(describe(assessPlan(planOf(harmless)), { format: "markdown" })));
  });

  test("breaks no advice in Markdown or plain text", () => {
    const told = (of: SpeciesProfile, format: "text" | "markdown") => {
      const plan = planOf(of);
      return [
        describeFeedingPlan(feedingPlan(plan), { format }),
        describeEntryOrder(entryOrder(plan), plan, { format }),
        describeSuspects(suspects(plan, seenSigns), plan, { format }),
        describeRequirements(requirementsOf(plan), plan, { format }),
      ].join("\n");
    };
    const page = told(species, "markdown");
    expect(page).not.toMatch(steering);
    for (const body of bodies(page)) expect(body).not.toMatch(live);
    expect(frame(page)).toEqual(frame(told(harmless, "markdown")));
    const plain = told(species, "text");
    expect(plain).not.toMatch(steering);
    for (const line of plain.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
  });

  test("breaks no page of the species", () => {
    const page = profileMarkdown(species);
    expect(page).not.toMatch(steering);
    for (const body of bodies(page)) expect(body).not.toMatch(live);
    expect(frame(page)).toEqual(frame(profileMarkdown(harmless)));
    const cells = page.split("\n").map((line) => line.split(/(?<!\\)(?:\\\\)*\|/).length);
    expect(new Set(cells)).toEqual(new Set([1, 6]));
  });

  test("breaks no line of plain text, which fits 80 columns", () => {
    const told = describe(verdict);
    expect(told).not.toMatch(steering);
    for (const line of told.split("\n")) expect([...line].length).toBeLessThanOrEqual(80);
    const titles = (report: string) =>
      report
        .split("\n\n")
        .map((part) => part.split("\n")[0])
        .filter((line) => /^[A-Z][a-z ]+$/.test(line ?? ""));
    expect(titles(told)).toEqual(titles(describe(assessPlan(planOf(harmless)))));
  });

  test("steers nothing in a sentence", () => {
    for (const part of [...verdict.findings, ...verdict.open, ...verdict.conditions]) {
      const said = sentence(verdict, part);
      expect(said).not.toMatch(steering);
      expect(said).not.toContain("\n");
    }
  });

  test("steers nothing in a problem", () => {
    const tank = { base: { shape: "rectangle", length: 60, width: 30 }, [text]: text, plants: text };
    const parsed = safeParsePlan(
      { tank, groups: [{ species: text, form: text, id: text, unsexed: text }] },
      () => undefined,
    );
    expect(parsed.success).toBe(false);
    const { message } = new InvalidInputError(parsed.success ? [] : parsed.problems);
    expect(message).not.toMatch(/(?!\n)\p{Cc}|\p{Cf}|\p{Cs}|[\u2028\u2029]/u);
    for (const line of message.split("\n")) expect(line.length).toBeLessThan(1000);
  });
});

test("joiners stay in names that need them", () => {
  const name = "می\u200cخواهم";
  const species = { ...danioRerio, names: { en: [name] } };
  const verdict = assessPair({ species }, { species });
  for (const told of [
    describe(verdict),
    describe(verdict, { format: "markdown" }),
    profileMarkdown(species),
  ]) {
    expect(told).toContain(name);
  }
});
