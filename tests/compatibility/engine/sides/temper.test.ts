import { describe, expect, test } from "vitest";
import { pairPlan } from "../../../../src/compatibility";
import { actsOthers } from "../../../../src/compatibility/rules/pair/acts-others";
import { shyness } from "../../../../src/compatibility/rules/pair/shyness";
import { settlingCompany } from "../../../../src/compatibility/rules/plan/settling-company";
import type { Group, Temper } from "../../../../src/plan";
import { adults, animal, type Stated } from "../../animals";
import { planBy } from "../../judging";

const fish = (more: Stated = {}) =>
  animal("fish", {
    "temperament.shy": false,
    "social.settledBy": false,
    "diet.pace": "ordinary",
    "temperament.acts": [{ does: "bites", target: "any", when: "breeding" }],
    "size.adultLength": adults(8),
    "space.zones": ["midwater"],
    "space.openWater": 0,
    "space.territory": "none",
    "social.settles": false,
    ...more,
  });
const other = animal("other", {
  "social.living": "group",
  "temperament.shy": false,
  "diet.pace": "fast",
  "temperament.acts": [],
  "size.adultLength": adults(6),
  "space.zones": ["midwater"],
  "space.openWater": 0,
  "social.settles": false,
  "social.settledBy": false,
  "appearance.longFins": false,
});
const beside = (temper: Temper | undefined, more: Stated = {}): readonly Group[] => [
  { species: fish(more), males: 1, females: 1, temper },
  { species: other, unsexed: 1 },
];
const varying: Stated = { "temperament.varies": true };

describe("individuals that the plan tells of", () => {
  test("a typical one is as its kind", () => {
    for (const temper of [undefined, "typical"] as const) {
      expect(planBy(shyness, beside(temper)).findings).toEqual([]);
      expect(planBy(actsOthers, beside(temper)).outcome).toBe("conditional");
    }
  });

  test("a shyer one hides from bustle and needs company that settles it", () => {
    expect(planBy(shyness, beside("shyer")).outcome).toBe("conditional");
    expect(planBy(settlingCompany, beside("shyer")).outcome).toBe("conditional");
    expect(planBy(settlingCompany, beside("typical")).outcome).toBe("suitable");
  });

  test("a shyer snail hides from bustle, and no company in the open settles it", () => {
    const snail = beside("shyer").map((group, index) =>
      index === 0
        ? { ...group, species: { ...fish(), taxonomy: { ...fish().taxonomy, kind: "snail" as const } } }
        : group,
    );
    expect(planBy(shyness, snail).outcome).toBe("conditional");
    expect(planBy(settlingCompany, snail).findings).toEqual([]);
  });

  test("a bolder one does not hide, and does at any time what its kind does when it breeds", () => {
    const shy = { "temperament.shy": true, "social.settledBy": true };
    expect(planBy(shyness, beside("typical", shy)).outcome).toBe("conditional");
    expect(planBy(shyness, beside("bolder", shy)).findings).toEqual([]);
    expect(planBy(settlingCompany, beside("bolder", shy)).findings).toEqual([]);
    expect(planBy(actsOthers, beside("bolder"))).toMatchObject({
      outcome: "unsuitable",
      findings: [{ weight: "blocking", measures: { when: { value: "always" } } }],
    });
  });

  test("a bolder one leaves nobody alone whom its kind harms when crowded", () => {
    const crowded: Stated = {
      "space.zones": ["bottom"],
      "temperament.acts": [{ does: "bites", target: "any", when: "crowded" }],
    };
    const [typical, ...others] = (["typical", "bolder", "bully"] as const).map((temper) =>
      planBy(actsOthers, beside(temper, crowded)),
    );
    expect(typical?.outcome).toBe("conditional");
    for (const verdict of others) expect(verdict).toMatchObject({ outcome: "conditional" });
    const above: Stated = { ...crowded, "space.zones": ["bottom", "midwater"] };
    expect(planBy(actsOthers, beside("bolder", above)).outcome).toBe("unsuitable");
  });

  test("what it does beside a brood or at food it does no oftener", () => {
    for (const when of ["guarding-brood", "feeding"] as const) {
      const acts: Stated = { "temperament.acts": [{ does: "chases", target: "any", when }] };
      expect(planBy(actsOthers, beside("bolder", acts)).findings).toMatchObject([
        { weight: "advisory", measures: { when: { value: when } } },
      ]);
    }
  });

  test("a bully chases whoever is not clearly larger and shares its water", () => {
    const calm: Stated = { "temperament.acts": [] };
    expect(planBy(actsOthers, beside("bully", calm)).findings).toMatchObject([
      { weight: "restricting", from: 0, to: 1, condition: { on: "tank.sightBreaks", wanted: { min: 1 } } },
    ]);
    expect(planBy(actsOthers, beside("bolder", calm)).findings).toEqual([]);
    const small = { ...calm, "size.adultLength": adults(4.7) };
    expect(planBy(actsOthers, beside("bully", small)).findings).toEqual([]);
    const below: Stated = { ...calm, "space.zones": ["bottom"] };
    expect(planBy(actsOthers, beside("bully", below)).findings).toEqual([]);
  });
});

describe("a kind of which individuals differ much", () => {
  test("is judged as typical, and bounded between shyer and bolder", () => {
    const acts = planBy(actsOthers, beside(undefined, varying));
    expect(acts).toMatchObject({
      outcome: "conditional",
      bounds: { atBest: "conditional", atWorst: "unsuitable" },
      open: expect.arrayContaining([
        { rule: "acts-others", of: 0, reason: "individual", couldBe: "blocking" },
      ]),
    });
    expect(planBy(shyness, beside(undefined, varying))).toMatchObject({
      outcome: "suitable",
      bounds: { atBest: "suitable", atWorst: "conditional" },
      open: [{ rule: "shyness", of: 0, reason: "individual", couldBe: "restricting" }],
    });
  });

  test("is no longer open where the plan tells what they are like", () => {
    for (const temper of ["shyer", "bolder", "bully"] as const) {
      for (const rule of [actsOthers, shyness, settlingCompany]) {
        const verdict = planBy(rule, beside(temper, varying));
        expect(verdict.open.filter(({ reason }) => reason === "individual")).toEqual([]);
      }
    }
  });

  test("is no bully unless the plan says so", () => {
    const calm: Stated = { ...varying, "temperament.acts": [] };
    expect(planBy(actsOthers, beside(undefined, calm)).bounds.atWorst).toBe("suitable");
  });

  test("does not keep a pair from having a plan", () => {
    const [a, b] = [animal("a", varying), animal("b", varying)];
    expect(() => pairPlan({ species: a }, { species: b })).not.toThrow();
  });
});
