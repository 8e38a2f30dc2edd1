import { describe, expect, test } from "vitest";
import { type Group, isMet } from "../../../src/plan";
import { animal, type Stated } from "../../compatibility/animals";

const shy = animal("shy", { "predation.eats": [], "temperament.shy": true, "social.settles": false });
const calm: Stated = {
  "social.settles": true,
  "space.zones": ["midwater"],
  "social.group": { least: 6 },
  "predation.eats": [],
};

const settled = (...company: readonly Group[]) =>
  isMet(
    { on: "group.company", of: 0, wanted: { oneOf: [true] } },
    {
      tank: { base: { shape: "rectangle", length: 100, width: 40 } },
      groups: [{ species: shy, unsexed: 2 }, ...company],
    },
  );

const calmFish = (changed: Stated = {}, unsexed = 6): Group => ({
  species: animal("calm", { ...calm, ...changed }),
  unsexed,
});

describe("a shy fish is settled", () => {
  test("by a group of calm fish in the open water", () => {
    expect(settled(calmFish())).toBe(true);
  });

  test.each([
    ["too few of them", calmFish({}, 5)],
    ["fish that live on the ground", calmFish({ "space.zones": ["bottom"] })],
    ["fish that eat fish", calmFish({ "predation.eats": [{ prey: "fish" }] })],
    ["fish that settle nobody", calmFish({ "social.settles": false })],
  ])("not by %s", (_, company) => {
    expect(settled(company)).toBe(false);
  });

  test("by one such group among others", () => {
    expect(
      settled(calmFish({ "social.settles": false }), { ...calmFish(), species: animal("other", calm) }),
    ).toBe(true);
  });

  test("by its own kind, if that is calm and enough", () => {
    const own = animal("own", calm);
    const plan = (unsexed: number) => ({
      tank: { base: { shape: "rectangle", length: 100, width: 40 } } as const,
      groups: [{ species: own, unsexed }],
    });
    const condition = { on: "group.company", of: 0, wanted: { oneOf: [true] } } as const;
    expect(isMet(condition, plan(6))).toBe(true);
    expect(isMet(condition, plan(5))).toBe(false);
  });

  test.each(["social.settles", "space.zones", "social.group", "predation.eats"] as const)(
    "perhaps, where nobody knows the %s of its company",
    (path) => {
      const { [path]: _, ...known } = calm;
      expect(settled({ species: animal("calm", known), unsexed: 6 })).toBeUndefined();
    },
  );

  test("surely not, where what is known of its company says no", () => {
    const { "social.group": _, ...known } = calm;
    expect(settled({ species: animal("calm", { ...known, "social.settles": false }), unsexed: 6 })).toBe(
      false,
    );
  });
});
