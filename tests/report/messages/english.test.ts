import { describe, expect, test } from "vitest";
import {
  type Finding,
  type MeasureKind,
  type MeasureKinds,
  pairRules,
  planRules,
  type Verdict,
  type WordKind,
} from "../../../src/compatibility";
import { facts } from "../../../src/plan";
import { english, sentence } from "../../../src/report";
import { traitPaths } from "../../../src/species";
import { onEachRule } from "../each-rule";
import { pairVerdicts, planVerdicts } from "../verdicts";

const verdicts: readonly Verdict[] = [...onEachRule, ...pairVerdicts, ...planVerdicts];

/** A gap where a name, a figure or a word is missing, or a word of the machine's. */
const gap = /undefined|null|NaN|Infinity|\[object| {2}| [.,;:)]|\( |\(\)|[,;:] ?\.|^ | $/;

const told = verdicts.flatMap((verdict) =>
  [...verdict.findings, ...verdict.met].map((finding) => ({
    verdict,
    finding,
    text: sentence(verdict, finding),
  })),
);

/** Which of a rule's measures a finding has, and its weight: a way in which its sentence may be told. */
const wayOf = ({ rule, weight, measures = {} }: Finding) =>
  [rule, weight, ...Object.keys(measures).sort()].join(" ");

/** The first of those told alike. */
const eachWayOnce = (list: typeof told) => [
  ...new Map(list.map((one) => [wayOf(one.finding), one])).values(),
];

/** A measure of a kind. */
function someOf(kind: MeasureKind): object {
  if (kind === "text") return { value: "some text" };
  const word = (of: WordKind) => Object.keys(english.words[of])[0];
  if (typeof kind !== "string") return { value: kind.map(word) };
  return kind in english.words ? { value: word(kind as WordKind) } : { value: 3, unit: kind };
}

describe("every finding over some thousand verdicts", () => {
  test("is a sentence without a gap", () => {
    expect(told.length).toBeGreaterThan(10_000);
    for (const { finding, text } of told) {
      expect(text, wayOf(finding)).not.toMatch(gap);
      expect(text, wayOf(finding)).toMatch(/^[\p{Lu}\d].*[.)]$/u);
    }
  });

  const rules = [...pairRules, ...planRules].map((rule) => [rule.id, rule] as const);

  test.each(rules)("tells of %s, and of each measure it declares, seen or not", (id, rule) => {
    const kinds: MeasureKinds = "measures" in rule ? (rule.measures ?? {}) : {};
    const ofRule = told.filter(({ finding }) => finding.rule === id);
    expect(ofRule.length).toBeGreaterThan(0);
    const seen = new Set(ofRule.flatMap(({ finding: { measures = {} } }) => Object.keys(measures)));
    const unseen = Object.entries(kinds).filter(([name]) => !seen.has(name));
    const made = Object.fromEntries(unseen.map(([name, kind]) => [name, someOf(kind)]));
    for (const { finding, verdict } of eachWayOnce(ofRule)) {
      const whole = { ...finding, measures: { ...made, ...finding.measures } } as Finding;
      expect(sentence(verdict, whole), wayOf(whole)).not.toMatch(gap);
    }
  });

  test("names each party it is about", () => {
    let named = 0;
    for (const verdict of planVerdicts.slice(0, 100)) {
      for (const finding of verdict.findings) {
        const party = finding.from === undefined ? undefined : verdict.parties[finding.from];
        if (!party || finding.rule.startsWith("caution")) continue;
        const name = party.names.en?.[0] ?? party.name;
        const told = sentence(verdict, finding).toLowerCase();
        const names = [name, english.several(name)].map((one) => one.toLowerCase());
        expect(
          names.some((one) => told.includes(one)),
          told,
        ).toBe(true);
        named += 1;
      }
    }
    expect(named).toBeGreaterThan(100);
  });
});

describe("every question and condition over some thousand verdicts", () => {
  test("is a sentence without a gap", () => {
    for (const verdict of verdicts) {
      for (const part of [...verdict.open, ...verdict.conditions]) {
        const text = sentence(verdict, part);
        expect(text, JSON.stringify(part)).not.toMatch(gap);
        expect(text, JSON.stringify(part)).toMatch(/^[\p{Lu}\d].*\.$/u);
      }
    }
  });

  test("is one of every fact that a verdict asks for, in every system of units", () => {
    const asked = new Set<string>();
    for (const verdict of verdicts) {
      for (const condition of verdict.conditions) {
        if (asked.has(condition.on)) continue;
        asked.add(condition.on);
        for (const units of ["metric", "us", "imperial"] as const) {
          expect(sentence(verdict, condition, { units })).toMatch(/^[A-Z][a-z]+ \S.*\S\.$/);
        }
      }
    }
    expect(asked.size).toBeGreaterThan(20);
  });
});

test("one place is not places, and one male is not males", () => {
  const [verdict] = onEachRule;
  if (!verdict) throw new Error("no verdict");
  const name = verdict.parties[0]?.names.en?.[0] ?? "";
  const works = (condition: Parameters<typeof sentence>[1]) => sentence(verdict, condition);
  expect(works({ on: "tank.sightBreaks", wanted: { min: 1 } })).toContain("in at least 1 place.");
  expect(works({ on: "tank.sightBreaks", wanted: { min: 3 } })).toContain("in at least 3 places.");
  expect(works({ on: "group.males", of: 0, wanted: { max: 1 } })).toBe(`Keep no more than 1 male ${name}.`);
  expect(works({ on: "group.males", of: 0, wanted: { max: 2 } })).toBe(
    `Keep no more than 2 male ${english.several(name)}.`,
  );
  expect(works({ on: "group.males", of: 0, wanted: { max: 0 } })).toBe(`Keep no male ${name}.`);
});

test("figures of the text are in the reader's units too", () => {
  const [verdict] = onEachRule;
  const media = { on: "tank.filter.ripeArea", wanted: { min: 2, unit: "m2" } } as const;
  expect(verdict && sentence(verdict, media)).toContain("about 2 L of coarse foam");
  const more = { on: "tank.filter.ripeArea", wanted: { min: 2.2, unit: "m2" } } as const;
  expect(verdict && sentence(verdict, more)).toContain("about 3 L of coarse foam");
  expect(verdict && sentence(verdict, media, { units: "us" })).not.toMatch(/ L /);
});

test("every trait and every fact has its name", () => {
  for (const path of traitPaths) expect(english.traits[path].length).toBeGreaterThan(1);
  expect(Object.keys(english.conditions).sort()).toEqual(Object.keys(facts).sort());
});

test("every word of every trait has its word, without hyphens", () => {
  for (const table of Object.values(english.words)) {
    expect(Object.keys(table).length).toBeGreaterThan(0);
    for (const word of Object.values(table)) expect(word).toMatch(/^[^-\s][^-]*$/);
  }
});

test.each([
  ["neon tetra", "neon tetras"],
  ["guppy", "guppies"],
  ["molly", "mollies"],
  ["clown loach", "clown loaches"],
  ["Jack Dempsey", "Jack Dempseys"],
  ["forktail blue-eye", "forktail blue-eyes"],
  ["bronze corydoras", "bronze corydoras"],
  ["discus", "discus"],
  ["goldfish", "goldfish"],
  ["koi", "koi"],
  ["lyretail panchax", "lyretail panchax"],
  ["Siamese flying fox", "Siamese flying foxes"],
  ["princess of Burundi", "princesses of Burundi"],
  ["guppy-Endler cross", "guppy-Endler crosses"],
  ["blue form of the red zebra", "blue forms of the red zebra"],
  ["Zebrabärbling!", "Zebrabärbling!"],
])("several of %s are %s", (one, several) => {
  expect(english.several(one)).toBe(several);
});
