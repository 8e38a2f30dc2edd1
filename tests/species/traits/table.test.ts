import { describe, expect, test } from "vitest";
import { classes, essentialTraits, traitPaths, traitTable } from "../../../src/species";
import { problemsWith } from "../../schema/problems";

test("without temperature, length, prey, way of living and zones a record is incomplete", () => {
  expect([...essentialTraits].sort()).toStrictEqual([
    "predation.eats",
    "size.adultLength",
    "social.living",
    "space.zones",
    "water.temperature",
  ]);
});

test("classes that can be ranked stand in ascending order", () => {
  expect(Object.keys(classes.flow)).toStrictEqual(["still", "gentle", "moderate", "strong"]);
  expect(Object.keys(classes.oxygenNeed)).toStrictEqual(["low", "ordinary", "high"]);
  expect(Object.keys(classes.airBreathing)).toStrictEqual(["none", "facultative", "obligate"]);
  expect(Object.keys(classes.jumps)).toStrictEqual(["seldom", "startled", "readily"]);
  expect(Object.keys(classes.pace)).toStrictEqual(["slow", "ordinary", "fast"]);
});

test.each(Object.entries(classes))("each class of %s has a sentence of its own", (_, sentences) => {
  const told = Object.values(sentences);
  for (const sentence of told) expect(sentence).toMatch(/^[A-Z].+\.$/s);
  expect(new Set(told).size).toBe(told.length);
});

describe.each(traitPaths)("%s", (trait) => {
  const { label, about, term } = traitTable[trait];
  const [section = "", name = ""] = trait.split(".");

  test("has a label of its own and a sentence", () => {
    const same = traitPaths.filter((other) => traitTable[other].label === label);
    expect(same).toStrictEqual([trait]);
    expect(about).toMatch(/\.$/);
    if (term) expect(URL.canParse(term)).toBe(true);
  });

  test("is a field of records that may not be empty", () => {
    expect(problemsWith({ [section]: { [name]: [] } })).toStrictEqual([[trait, "at least 1 entry"]]);
  });
});
