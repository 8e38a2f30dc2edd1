import { describe, expect, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { territories } from "../../../../src/compatibility/rules/plan/territories";
import type { Group, PlannedTank } from "../../../../src/plan";
import type { TraitValue as Value } from "../../../../src/species";
import { animal, inAnyNumber } from "../../animals";
import { planBy } from "../../judging";

type Holder = Exclude<Value<"space.territory">, "none">["holder"];

const holder = (id: string, area: number, who: Holder, zone: "bottom" | "surface" = "bottom") =>
  animal(id, { ...inAnyNumber, "space.territory": { area, zone, holder: who } });
/** What is asked of a floor of 200 × 60 cm without anything on it. */
const asked = (groups: readonly Group[], tank: Partial<PlannedTank> = {}) =>
  planBy(territories, groups, { tank }).findings.map((finding) =>
    finding.weight === "restricting" && "min" in finding.condition.wanted
      ? [finding.from, finding.condition.on, finding.condition.wanted.min]
      : finding.weight,
  );

describe("how many territories are held", () => {
  test("one for each male, for each animal, or for each pair", () => {
    const bare = { sightBreaks: 0 };
    expect(asked([{ species: holder("a", 9000, "male"), males: 2, females: 4 }], bare)).toEqual([
      [0, "tank.footprint", 18000],
      [0, "tank.sightBreaks", 1],
    ]);
    expect(asked([{ species: holder("a", 9000, "each"), unsexed: 3 }], bare)).toEqual([
      [0, "tank.footprint", 27000],
      [0, "tank.sightBreaks", 2],
    ]);
    expect(asked([{ species: holder("a", 9000, "pair"), males: 2, females: 3 }], bare)).toEqual([
      [0, "tank.footprint", 18000],
      [0, "tank.sightBreaks", 1],
    ]);
  });

  test("of animals nobody has sexed, half count as males", () => {
    expect(asked([{ species: holder("a", 9000, "male"), unsexed: 4 }], { sightBreaks: 1 })).toEqual([
      [0, "tank.footprint", 18000],
    ]);
  });

  test("beside known males, half of those nobody has sexed, and both of two", () => {
    const [species, sightBreaks] = [holder("a", 1000, "male"), 9];
    const floor = (group: Omit<Group, "species">) => asked([{ species, ...group }], { sightBreaks });
    const wide = (males: number) => [[0, "tank.footprint", 1000 * males]];
    const small = { base: { shape: "rectangle", length: 20, width: 20 }, sightBreaks } as const;
    expect(asked([{ species, males: 5, unsexed: 1 }], small)).toEqual(wide(6));
    expect(asked([{ species, males: 1, unsexed: 4 }], small)).toEqual(wide(3));
    expect(asked([{ species, females: 5, unsexed: 2 }], small)).toEqual(wide(2));
    expect(floor({ females: 5, unsexed: 1 })).toEqual([]);
  });

  test("none, where one animal or one sex is kept", () => {
    expect(asked([{ species: holder("a", 90000, "male"), males: 1 }])).toEqual([]);
    expect(asked([{ species: holder("a", 90000, "male"), females: 5 }])).toEqual([]);
    expect(asked([{ species: holder("a", 90000, "pair"), males: 1, females: 1 }])).toEqual([]);
  });
});

describe("what the floor yields", () => {
  const two = [
    { species: holder("a", 7000, "male"), males: 1 },
    { species: holder("b", 6000, "each"), unsexed: 1 },
  ];

  test("room for all of them, and a break of sight between each two", () => {
    expect(asked(two, { sightBreaks: 0 })).toEqual([
      [0, "tank.footprint", 13000],
      [0, "tank.sightBreaks", 1],
      [1, "tank.footprint", 13000],
      [1, "tank.sightBreaks", 1],
    ]);
    const large = { base: { shape: "rectangle", length: 220, width: 60 }, sightBreaks: 1 } as const;
    expect(asked(two, large)).toEqual([]);
  });

  test("nests at the surface do not meet caves on the ground", () => {
    const parted = [two[0] as Group, { species: holder("b", 90000, "male", "surface"), males: 1 }];
    expect(asked(parted, { sightBreaks: 0 })).toEqual([]);
  });

  test("a species in two groups counts once, with all its animals", () => {
    const species = holder("a", 9000, "male");
    expect(
      asked(
        [
          { species, males: 1 },
          { species, males: 1, females: 2 },
        ],
        { sightBreaks: 1 },
      ),
    ).toEqual([
      [0, "tank.footprint", 18000],
      [1, "tank.footprint", 18000],
    ]);
  });
});

test("a group of which nobody knows whether it holds leaves the question open", () => {
  const { bounds, open } = planBy(territories, [
    { species: holder("a", 700, "male"), males: 1 },
    { species: animal("b"), unsexed: 1 },
  ]);
  expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
  expect(open).toMatchObject([{ of: 1, trait: "space.territory", reason: "missing" }]);
});

test("two pairs of convicts have no room on 60 × 30 cm, whoever else moves in", () => {
  const tank = { base: { shape: "rectangle", length: 60, width: 30 }, sightBreaks: 0 } as const;
  const convicts = { species: amatitlaniaNigrofasciata, males: 2, females: 2 };
  const stranger = { species: animal("stranger"), unsexed: 6 };
  for (const groups of [[convicts], [convicts, stranger], [stranger, convicts]]) {
    const { outcome, bounds } = planBy(territories, groups, { tank });
    expect(outcome).toBe("conditional");
    expect(bounds).toEqual({ atBest: "conditional", atWorst: "conditional" });
  }
});

test("in a keeper's tank: convicts beside yellow cichlids need ground and rocks, neons none", () => {
  const convicts = { species: amatitlaniaNigrofasciata, males: 1, females: 1 };
  const beside = (group: Group) => asked([convicts, group], { sightBreaks: 0 }).length > 0;
  expect(beside({ species: labidochromisCaeruleus, males: 1, females: 3 })).toBe(true);
  expect(beside({ species: paracheirodonInnesi, unsexed: 12 })).toBe(false);
});
