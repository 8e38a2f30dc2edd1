import { describe, expect, test } from "vitest";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import type { Verdict } from "../../../../src/compatibility";
import { settlingCompany } from "../../../../src/compatibility/rules/plan/settling-company";
import type { SpeciesProfile, TraitValue as Value } from "../../../../src/species";
import { adults, animal, type Stated } from "../../animals";
import { planBy, weighed } from "../../judging";

const shy = (more: Stated = {}) =>
  animal("shy", {
    "social.settledBy": true,
    "social.settles": false,
    "size.adultLength": adults(6),
    "space.zones": ["midwater"],
    "predation.eats": [],
    ...more,
  });
const calm = (more: Stated = {}) =>
  animal("calm", {
    "social.settledBy": false,
    "social.settles": true,
    "social.group": { least: 6 },
    "size.adultLength": adults(4),
    "space.zones": ["midwater"],
    "predation.eats": [],
    ...more,
  });
const fishEater: Value<"predation.eats"> = [{ prey: "fish" }];
const settled = (company: SpeciesProfile | undefined, species = shy()) =>
  planBy(settlingCompany, [{ species, unsexed: 1 }, ...(company ? [{ species: company, unsexed: 10 }] : [])]);

test("calm fish in the open water bring a shy fish out of hiding", () => {
  expect(weighed(settled(calm()))).toEqual({ findings: [], met: ["restricting"] });
  expect(weighed(settled(calm({ "space.zones": ["bottom", "midwater"] }))).findings).toEqual([]);
});

test("too few of them do not", () => {
  const few = planBy(settlingCompany, [
    { species: shy(), unsexed: 1 },
    { species: calm(), unsexed: 5 },
  ]);
  expect(weighed(few).findings).toEqual(["restricting"]);
});

test("alone it hides", () => {
  expect(settled(undefined).findings).toMatchObject([
    {
      weight: "restricting",
      from: 0,
      condition: { on: "group.company", of: 0, wanted: { oneOf: [true] } },
      watchFor: "hiding",
    },
  ]);
});

test("restless fish, bottom dwellers, its prey and its hunters are no company", () => {
  expect(weighed(settled(calm({ "social.settles": false }))).findings).toEqual(["restricting"]);
  expect(weighed(settled(calm({ "space.zones": ["bottom"] }))).findings).toEqual(["restricting"]);
  expect(weighed(settled(calm({ "predation.eats": fishEater }))).findings).toEqual(["restricting"]);
});

test("who eats fish finds no company but its own, and hides", () => {
  expect(weighed(settled(calm(), shy({ "predation.eats": fishEater }))).findings).toEqual(["advisory"]);
  const own = shy({ "predation.eats": fishEater, "social.settles": true });
  expect(weighed(settled(undefined, own)).findings).toEqual(["restricting"]);
});

test("who is not shy needs none", () => {
  expect(weighed(settled(undefined, shy({ "social.settledBy": false })))).toEqual({ findings: [], met: [] });
});

describe("dense cover in place of company", () => {
  const inCover = (cover: number | undefined, needed: number | undefined) =>
    planBy(
      settlingCompany,
      [{ species: shy(needed === undefined ? {} : { "space.cover": needed }), unsexed: 1 }],
      { tank: { cover } },
    );

  test("settles it more slowly, from one and a half times what it needs", () => {
    expect(inCover(0.6, 0.4)).toMatchObject({
      outcome: "suitable",
      findings: [{ weight: "advisory", measures: { cover: { value: 0.6, unit: "1" } }, watchFor: "hiding" }],
    });
    expect(weighed(inCover(0.59, 0.4)).findings).toEqual(["restricting"]);
    expect(weighed(inCover(undefined, 0.4)).findings).toEqual(["restricting"]);
  });

  test("is as much as the open water leaves that others need, if that is no less than it needs", () => {
    const beside = (openWater: number, cover: number) =>
      planBy(
        settlingCompany,
        [
          { species: shy({ "space.cover": 0.4, "space.openWater": 0 }), unsexed: 1 },
          { species: calm({ "social.settles": false, "space.openWater": openWater }), unsexed: 6 },
        ],
        { tank: { cover } },
      );
    expect(weighed(beside(0.5, 0.5)).findings).toEqual(["advisory"]);
    expect(weighed(beside(0.5, 0.45)).findings).toEqual(["restricting"]);
    expect(weighed(beside(0.3, 0.6)).findings).toEqual(["advisory"]);
    expect(weighed(beside(0.7, 0.4)).findings).toEqual(["restricting"]);
  });

  test("is a full tank of it where nobody knows what it needs, or it needs none", () => {
    for (const needed of [undefined, 0]) {
      expect(weighed(inCover(0.9, needed)).findings).toEqual(["restricting"]);
      expect(weighed(inCover(1, needed)).findings).toEqual(["advisory"]);
    }
  });
});

describe("what nobody knows of the company stays open", () => {
  const ofCompany = (open: Verdict["open"]) => open.filter(({ of }) => of === 1);
  const between = { atBest: "suitable", atWorst: "conditional" };

  const stated: Stated = {
    "social.settledBy": false,
    "social.settles": true,
    "social.group": { least: 6 },
    "space.zones": ["midwater"],
    "predation.eats": [],
  };

  test.each(["social.settles", "social.group", "space.zones", "predation.eats"] as const)(
    "%s missing",
    (path) => {
      const { [path]: _, ...known } = stated;
      const { bounds, open } = settled(animal("calm", known));
      expect(bounds).toEqual(between);
      expect(ofCompany(open)).toMatchObject([{ trait: path, of: 1, reason: "missing" }]);
    },
  );

  test("disputed", () => {
    const { bounds, open } = settled(animal("calm", stated, { also: [{ "social.settles": false }] }));
    expect(bounds).toEqual(between);
    expect(ofCompany(open)).toMatchObject([
      { trait: "social.settles", of: 1, reason: "disputed", values: [true, false] },
    ]);
  });
});

describe("its own group", () => {
  const settlesItself = shy({ "social.settles": true, "social.group": { least: 6 } });

  test("is company where it is large enough", () => {
    const among = (unsexed: number) =>
      weighed(planBy(settlingCompany, [{ species: settlesItself, unsexed }]));
    expect(among(6)).toEqual({ findings: [], met: ["restricting"] });
    expect(among(5)).toEqual({ findings: ["restricting"], met: [] });
  });
});

describe("in a keeper's tank", () => {
  const beside = (species: SpeciesProfile) => settled(species, trichogasterChuna).outcome;

  test("neons and white clouds settle a honey gourami", () => {
    expect(beside(paracheirodonInnesi)).toBe("suitable");
    expect(beside(tanichthysAlbonubes)).toBe("suitable");
  });

  test("a cory is not company for a shy fish, and an oscar is none", () => {
    expect(beside(osteogasterAenea)).toBe("conditional");
    expect(beside(astronotusOcellatus)).toBe("conditional");
  });
});
