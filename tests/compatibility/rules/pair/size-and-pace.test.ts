import { expect, test } from "vitest";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import xiphophorusHellerii from "vivary/catalog/xiphophorus-hellerii";
import { sizeAndPace } from "../../../../src/compatibility/rules/pair/size-and-pace";
import type { Kind, TraitValue as Value } from "../../../../src/species";
import { adults, animal, type Stated } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const swimmer = (
  id: string,
  length: number,
  pace: Value<"diet.pace">,
  more: Stated = {},
  kind: Kind = "fish",
) =>
  animal(
    id,
    { "size.adultLength": adults(length), "diet.pace": pace, "space.zones": ["midwater"], ...more },
    { kind },
  );
const weights = (large: ReturnType<typeof animal>, small: ReturnType<typeof animal>) =>
  pairBy(sizeAndPace, { species: large }, { species: small }).findings.map(({ weight }) => weight);

const rusher = swimmer("rusher", 20, "fast");

test("a quick fish four times as long pushes a small one aside", () => {
  expect(weights(rusher, swimmer("small", 5, "ordinary"))).toEqual(["restricting"]);
  expect(weights(rusher, swimmer("small", 5.1, "ordinary"))).toEqual([]);
});

test("so does one of ordinary pace; a slow one does not, nor one that keeps to another part of the tank", () => {
  expect(weights(swimmer("large", 20, "ordinary"), swimmer("small", 5, "ordinary"))).toEqual(["restricting"]);
  expect(weights(swimmer("calm", 50, "slow"), swimmer("small", 3, "ordinary"))).toEqual([]);
  expect(weights(rusher, swimmer("small", 3, "slow", { "space.zones": ["bottom"] }))).toEqual([]);
});

test("its own kind is not pushed aside, and who still grows counts as grown", () => {
  expect(pairBy(sizeAndPace, { species: rusher }, { species: rusher, length: 3 }).findings).toEqual([]);
  expect(
    pairBy(sizeAndPace, { species: rusher, length: 6 }, { species: swimmer("small", 5, "ordinary") })
      .findings,
  ).toHaveLength(1);
});

test("cover is asked for no further than the open water leaves it", () => {
  expect(
    pairBy(
      sizeAndPace,
      { species: rusher },
      { species: swimmer("small", 5, "ordinary", { "space.openWater": 0.9 }) },
    ).findings,
  ).toMatchObject([{ condition: { on: "tank.cover", wanted: { min: 0.1 } } }]);
});

test("shrimps and snails are not pushed aside by fish that do not eat them", () => {
  expect(weights(rusher, swimmer("shrimp", 2, "ordinary", {}, "shrimp"))).toEqual([]);
});

test("cover lets the small ones withdraw", () => {
  const at = (cover: number) =>
    planBy(
      sizeAndPace,
      [
        { species: rusher, unsexed: 1 },
        { species: swimmer("small", 4, "ordinary"), unsexed: 6 },
      ],
      { tank: { cover } },
    );
  expect(at(0.29).findings).toMatchObject([
    { condition: { on: "tank.cover", wanted: { min: 0.3 } }, watchFor: "hiding" },
  ]);
  expect(weighed(at(0.3))).toEqual({ findings: [], met: ["restricting"] });
});

test("young of no stated length count as small", () => {
  const young = { species: swimmer("small", 9, "ordinary"), stage: "juvenile" } as const;
  expect(pairBy(sizeAndPace, { species: rusher }, young).findings).toHaveLength(1);
});

test("in a keeper's tank: a goldfish beside neons, not a danio or a swordtail", () => {
  expect(weights(carassiusAuratus, paracheirodonInnesi)).toEqual(["restricting"]);
  expect(weights(danioRerio, paracheirodonInnesi)).toEqual([]);
  expect(weights(xiphophorusHellerii, paracheirodonInnesi)).toEqual([]);
});
