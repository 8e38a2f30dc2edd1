import { describe, expect, test } from "vitest";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import potamotrygonMotoro from "vivary/catalog/potamotrygon-motoro";
import { footprint } from "../../../../src/compatibility/rules/plan/footprint";
import { adults, adultsBySex, animal, inAnyNumber, type Stated } from "../../animals";
import { planBy, weighed } from "../../judging";

const needing = (more: Stated = {}) =>
  animal("fish", {
    ...inAnyNumber,
    "size.adultLength": adults(5),
    "space.footprint": [{ least: 2000, for: 4 }],
    "space.furtherFootprint": 250,
    ...more,
  });
const floor = (length: number, width: number) => ({
  tank: { base: { shape: "rectangle", length, width }, height: 40 } as const,
});
const inTank = (length: number, width: number, unsexed: number, species = needing()) =>
  planBy(footprint, [{ species, unsexed }], floor(length, width));

describe("the floor a group needs", () => {
  test("is the stated one for the stated number", () => {
    expect(weighed(inTank(50, 40, 4))).toEqual({ findings: [], met: ["restricting"] });
    expect(weighed(inTank(42, 40, 4)).findings).toEqual(["restricting"]);
  });

  test("counts as there where hardly anything is missing, which is worth knowing", () => {
    for (const length of [42.5, 49])
      expect(weighed(inTank(length, 40, 4))).toEqual({ findings: ["advisory"], met: [] });
  });

  test("shrinks by the stated floor for each fewer, never below half", () => {
    const floorFor = (count: number, species = needing()) =>
      inTank(20, 40, count, species).findings.flatMap((finding) =>
        finding.weight === "restricting" ? [finding.condition] : [],
      );
    expect(floorFor(3)).toMatchObject([{ wanted: { min: 1750 } }]);
    expect(floorFor(1)).toMatchObject([{ wanted: { min: 1250 } }]);
    expect(floorFor(1, needing({ "space.furtherFootprint": 500 }))).toMatchObject([
      { wanted: { min: 1000 } },
    ]);
  });

  test("lies between two stated ones for a number between them", () => {
    const species = needing({
      "space.footprint": [
        { least: 2000, for: 4 },
        { least: 3200, for: 8 },
      ],
    });
    expect(inTank(50, 40, 6, species).findings).toMatchObject([
      { condition: { on: "tank.footprint", wanted: { min: 2600 } } },
    ]);
  });

  test("grows by the stated floor for each more", () => {
    expect(inTank(50, 40, 6).findings).toMatchObject([
      {
        weight: "restricting",
        condition: { on: "tank.footprint", wanted: { min: 2500 } },
        measures: { needed: { value: 2500, unit: "cm2" }, planned: { value: 2000, unit: "cm2" } },
      },
    ]);
    expect(weighed(inTank(62.5, 40, 6)).findings).toEqual([]);
  });

  test("is that of the number that belongs together, so that more animals bring no further condition", () => {
    const shoal = needing({ "social.living": "shoal", "social.group": { least: 8 } });
    const asked = (unsexed: number) =>
      inTank(50, 40, unsexed, shoal).findings.flatMap((finding) =>
        finding.weight === "restricting" ? [finding.condition] : [],
      );
    for (const few of [1, 4, 8]) expect(asked(few)).toMatchObject([{ wanted: { min: 3000 } }]);
    expect(asked(10)).toMatchObject([{ wanted: { min: 3500 } }]);
  });

  test("is refused on less than 0.45 of it, which nothing mends", () => {
    expect(weighed(inTank(50, 18, 4)).findings).toEqual(["restricting"]);
    expect(inTank(50, 17.8, 4).findings).toMatchObject([
      {
        weight: "blocking",
        measures: { needed: { value: 2000, unit: "cm2" }, planned: { value: 890, unit: "cm2" } },
      },
    ]);
  });

  test("grows by a full share for each more where nothing is stated, which stays open", () => {
    const unstated: Stated = {
      ...inAnyNumber,
      "size.adultLength": adults(5),
      "space.footprint": [{ least: 2000, for: 4 }],
    };
    const { findings, bounds } = inTank(50, 40, 6, animal("fish", unstated));
    expect(findings).toMatchObject([{ condition: { wanted: { min: 3000 } } }]);
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
  });

  test("may be more than is known where nobody knows how many belong together", () => {
    const { "social.group": _, ...stated } = inAnyNumber;
    const species = animal("fish", {
      ...stated,
      "size.adultLength": adults(5),
      "size.bodyShape": "fusiform",
      "space.footprint": [{ least: 2000, for: 4 }],
      "space.furtherFootprint": 250,
    });
    expect(inTank(50, 40, 4, species)).toMatchObject({
      outcome: "suitable",
      bounds: { atBest: "suitable", atWorst: "unsuitable" },
      open: [{ trait: "social.group", reason: "missing", couldBe: "blocking" }],
    });
    expect(inTank(40, 40, 4, species).bounds).toEqual({ atBest: "conditional", atWorst: "unsuitable" });
  });

  test("counts by the size the tank is sold as", () => {
    const tank = { ...floor(50, 40).tank, measured: "outer", glass: 1 } as const;
    expect(weighed(planBy(footprint, [{ species: needing(), unsexed: 4 }], { tank })).findings).toEqual([]);
  });
});

describe("an animal that cannot turn", () => {
  test("is longer than the tank is wide inside", () => {
    const long = needing({ "size.adultLength": adults(30, 45) });
    expect(weighed(inTank(200, 30, 1, long)).findings).toEqual([]);
    expect(inTank(200, 29.9, 1, long).findings).toMatchObject([
      {
        weight: "blocking",
        measures: { length: { value: 30, unit: "cm" }, width: { value: 29.9, unit: "cm" } },
      },
    ]);
    const glass = { ...floor(200, 30).tank, measured: "outer", glass: 1 } as const;
    expect(planBy(footprint, [{ species: long, unsexed: 1 }], { tank: glass }).outcome).toBe("unsuitable");
  });

  test("is not one as supple as an eel, if it has room to bend", () => {
    const eel = needing({ "size.adultLength": adults(40), "size.bodyShape": "eel-like" });
    expect(inTank(200, 30, 1, eel).outcome).toBe("suitable");
    expect(weighed(inTank(200, 12, 1, eel)).findings).not.toContain("blocking");
    expect(weighed(inTank(200, 11.9, 1, eel)).findings).toContain("blocking");
    const spindle = needing({ "size.adultLength": adults(40), "size.bodyShape": "elongated" });
    expect(inTank(200, 30, 1, spindle).outcome).toBe("unsuitable");
  });

  test("counts at the larger sex, unless only the smaller is kept", () => {
    const species = needing({ "size.adultLength": adultsBySex(20, 40) });
    const among = (sexes: { males?: number; females?: number }) =>
      planBy(footprint, [{ species, ...sexes }], floor(200, 30)).outcome;
    expect(among({ males: 1, females: 1 })).toBe("unsuitable");
    expect(among({ males: 2 })).toBe("suitable");
  });
});

test("an oscar cannot turn in a tank 25 cm wide, a stingray not in 50", () => {
  expect(inTank(100, 25, 1, astronotusOcellatus).outcome).toBe("unsuitable");
  expect(inTank(150, 50, 1, potamotrygonMotoro).outcome).toBe("unsuitable");
  expect(inTank(80, 35, 10, paracheirodonInnesi).outcome).toBe("suitable");
});

test("a young animal needs the room of a grown one, a longer one its own", () => {
  const species = needing({ "size.adultLength": adults(30) });
  const ofLength = (length: number) =>
    planBy(footprint, [{ species, juveniles: 1, length }], floor(200, 29)).findings;
  expect(ofLength(5)).toMatchObject([{ weight: "blocking", measures: { length: { value: 30 } } }]);
  expect(ofLength(34)).toMatchObject([{ weight: "blocking", measures: { length: { value: 34 } } }]);
});
