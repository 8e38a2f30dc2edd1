import { describe, expect, test } from "vitest";
import { hidingPlaces } from "../../../../src/compatibility/rules/plan/hiding-places";
import type { Group, PlannedTank } from "../../../../src/plan";
import type { TraitValue as Value } from "../../../../src/species";
import { animal, inAnyNumber, type Stated } from "../../animals";
import { planBy, weighed } from "../../judging";

type Need = Value<"space.hides">[number];

const hider = (id: string, needs: readonly Need[], more: Stated = {}) =>
  animal(id, { ...inAnyNumber, "space.hides": needs, ...more });
const inTank = (groups: readonly Group[], hides?: PlannedTank["hides"]) =>
  planBy(hidingPlaces, groups, { tank: { hides } });
const asked = (groups: readonly Group[]) =>
  inTank(groups).findings.map((finding) =>
    finding.weight === "restricting" && "min" in finding.condition.wanted
      ? [finding.from, finding.condition.wanted.min]
      : finding.weight,
  );

const cave: Need = { anyOf: ["caves"], each: 1, holder: "male" };

describe("how many are needed", () => {
  test("one for each male, each pair or each animal, or as many as are stated for each", () => {
    expect(asked([{ species: hider("a", [cave]), males: 2, females: 4 }])).toEqual([[0, 2]]);
    expect(asked([{ species: hider("a", [{ ...cave, holder: "pair" }]), males: 2, females: 3 }])).toEqual([
      [0, 2],
    ]);
    expect(asked([{ species: hider("a", [{ ...cave, holder: "each", each: 3 }]), unsexed: 4 }])).toEqual([
      [0, 12],
    ]);
  });

  test("at least one, for whoever is there", () => {
    expect(asked([{ species: hider("a", [cave]), females: 2 }])).toEqual([[0, 1]]);
  });

  test("for the number that belongs together", () => {
    const shoal: Stated = { "social.living": "group", "social.group": { least: 6 } };
    const species = hider("a", [{ ...cave, holder: "each" }], shoal);
    expect(asked([{ species, unsexed: 2 }])).toEqual([[0, 6]]);
  });

  test("fewer of those that lie together", () => {
    const shared: Need = { ...cave, holder: "each", sharedBy: 3 };
    expect(asked([{ species: hider("a", [shared]), unsexed: 6 }])).toEqual([[0, 2]]);
    expect(asked([{ species: hider("a", [shared]), unsexed: 7 }])).toEqual([[0, 3]]);
  });

  test("beside others that use such places, for all of them, and how many are its own", () => {
    const [a, b] = [hider("a", [cave]), hider("b", [{ ...cave, anyOf: ["caves", "wood"] }])];
    const measuresOf = (groups: readonly Group[]) =>
      inTank(groups).findings.map(({ measures }) => measures as object);
    expect(
      measuresOf([
        { species: a, males: 2 },
        { species: b, males: 3 },
      ]),
    ).toMatchObject([
      { needed: { value: 5 }, own: { value: 2 } },
      { needed: { value: 5 }, own: { value: 3 } },
    ]);
    expect(measuresOf([{ species: a, males: 2 }])).toEqual([
      { kinds: { value: ["caves"] }, needed: { value: 2 } },
    ]);
  });

  test("for males and for females, where it is said of each, and never more than there are animals", () => {
    const species = hider("a", [cave, { anyOf: ["caves", "wood"], each: 1, holder: "female" }]);
    expect(asked([{ species, males: 3, females: 3 }])).toEqual([[0, 6]]);
    expect(asked([{ species, males: 1, females: 3 }])).toEqual([[0, 4]]);
    expect(asked([{ species, males: 1 }])).toEqual([[0, 1]]);
    expect(asked([{ species, unsexed: 3 }])).toEqual([[0, 3]]);
  });

  test("none where none are stated", () => {
    expect(weighed(inTank([{ species: hider("a", []), unsexed: 4 }]))).toEqual({ findings: [], met: [] });
  });
});

describe("what serves", () => {
  const group = { species: hider("a", [{ anyOf: ["caves", "wood"], each: 1, holder: "each" }]), unsexed: 3 };

  test("is any of the kinds that are named, together", () => {
    expect(weighed(inTank([group], { caves: 1, wood: 2 }))).toEqual({ findings: [], met: ["restricting"] });
    expect(weighed(inTank([group], { caves: 2, shells: 9 })).findings).toEqual(["restricting"]);
    expect(inTank([group], {}).findings).toMatchObject([
      {
        condition: { on: "tank.hides", of: 0, wanted: { min: 3 } },
        measures: { kinds: { value: ["caves", "wood"] }, needed: { value: 3 } },
        watchFor: "hiding",
      },
    ]);
  });

  test("is open where the plan names no places, and counts in both bounds", () => {
    expect(inTank([group])).toMatchObject({
      outcome: "conditional",
      bounds: { atBest: "conditional", atWorst: "conditional" },
      open: [{ on: "tank.hides", of: 0, reason: "not-given" }],
    });
  });
});

describe("beside others", () => {
  const caves = { species: hider("a", [cave]), males: 2 };

  test("who uses the same kind needs its own beside theirs", () => {
    expect(asked([caves, { species: hider("b", [cave]), males: 1 }])).toEqual([
      [0, 3],
      [1, 3],
    ]);
  });

  test("who uses another does not count", () => {
    const shells = hider("b", [{ anyOf: ["shells"], each: 2, holder: "each" }]);
    expect(asked([caves, { species: shells, unsexed: 2 }])).toEqual([
      [0, 2],
      [1, 4],
    ]);
  });

  test("two groups of one species count once, with all its animals", () => {
    const { species } = caves;
    expect(
      asked([
        { species, males: 1 },
        { species, males: 1, females: 2 },
      ]),
    ).toEqual([
      [0, 2],
      [1, 2],
    ]);
  });

  test("a group of which nobody knows improves nothing", () => {
    const stranger = { species: animal("stranger"), unsexed: 6 };
    const verdict = inTank([caves, stranger], { caves: 1 });
    expect(verdict.outcome).toBe("conditional");
    expect(verdict.bounds.atBest).toBe("conditional");
    expect(verdict.open).toMatchObject([{ of: 1, trait: "space.hides", reason: "missing" }]);
  });
});
