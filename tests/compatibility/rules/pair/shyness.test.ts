import { expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import xiphophorusHellerii from "vivary/catalog/xiphophorus-hellerii";
import { shyness } from "../../../../src/compatibility/rules/pair/shyness";
import type { Party } from "../../../../src/plan";
import { adults, animal, type Stated } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const shy = animal("shy", { "temperament.shy": true, "diet.pace": "ordinary", "space.zones": ["midwater"] });
const restless = (more: Stated = {}) =>
  animal("restless", {
    "temperament.shy": false,
    "diet.pace": "fast",
    "social.settles": false,
    "space.zones": ["surface", "midwater"],
    ...more,
  });
const weights = (more?: Stated) =>
  pairBy(shyness, { species: shy }, { species: restless(more) }).findings.map(({ weight }) => weight);

test("restless company keeps a shy fish in hiding", () => {
  expect(weights()).toEqual(["restricting"]);
  expect(weights({ "social.settles": true })).toEqual([]);
  expect(weights({ "diet.pace": "ordinary" })).toEqual([]);
  expect(weights({ "space.zones": ["bottom"] })).toEqual([]);
});

test("of those that are less than half as long only a young one is afraid, which may be as small", () => {
  const beside = (length: number, more: Partial<Party> = {}) =>
    pairBy(
      shyness,
      { species: { ...shy, size: animal("sized", { "size.adultLength": adults(20) }).size }, ...more },
      { species: restless({ "size.adultLength": adults(length) }) },
    ).findings.map(({ weight }) => weight);
  expect(beside(9.9)).toEqual([]);
  expect(beside(10)).toEqual(["restricting"]);
  expect(beside(9.9, { stage: "juvenile" })).toEqual(["restricting"]);
  expect(beside(9.9, { stage: "juvenile", length: 6 })).toEqual(["restricting"]);
});

test("one that is as quick itself is not kept in hiding", () => {
  const dollar = { ...shy, diet: animal("quick", { "diet.pace": "fast" }).diet };
  const beside = (species: typeof shy) =>
    pairBy(shyness, { species }, { species: restless() }).findings.length;
  expect(beside(dollar)).toBe(0);
  expect(beside(shy)).toBe(1);
});

test("its own kind does not", () => {
  const both = animal("both", { "temperament.shy": true, "diet.pace": "fast" });
  expect(pairBy(shyness, { species: both }, { species: both }).findings).toEqual([]);
});

test("cover lets it stay at ease", () => {
  const at = (cover: number) =>
    weighed(
      planBy(
        shyness,
        [
          { species: shy, unsexed: 6 },
          { species: restless(), unsexed: 6 },
        ],
        { tank: { cover } },
      ),
    );
  expect(at(0.29)).toEqual({ findings: ["restricting"], met: [] });
  expect(at(0.3)).toEqual({ findings: [], met: ["restricting"] });
});

test("in a keeper's tank: neons beside danios, not beside guppies or swordtails", () => {
  const beside = (species: typeof danioRerio) =>
    pairBy(shyness, { species: paracheirodonInnesi }, { species }).findings.length;
  expect(beside(danioRerio)).toBe(1);
  expect(beside(poeciliaReticulata)).toBe(0);
  expect(beside(xiphophorusHellerii)).toBe(0);
});
