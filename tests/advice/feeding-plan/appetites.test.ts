import { describe, expect, test } from "vitest";
import { feedingPlan } from "../../../src/advice";
import { mucusGrazing } from "../../../src/compatibility/rules/pair/mucus-grazing";
import { adults } from "../../compatibility/animals";
import { planOf } from "../../compatibility/judging";
import { eater, fed, rules } from "./eaters";

describe("what everybody lives on", () => {
  test("is given beside the greens of another, even where both take greens", () => {
    const foods = ["dry", "plants"] as const;
    const hunter = eater("hunter", { "diet.type": "carnivore", "diet.foods": [...foods] });
    const grazer = eater("grazer", { "diet.type": "herbivore", "diet.foods": ["plants"] });
    expect(fed(hunter, grazer).offerings).toMatchObject([
      { food: "dry", reaches: [0] },
      { food: "plants", reaches: [1] },
    ]);
  });

  test("is given beside greens that it has to have", () => {
    const grazer = eater("grazer", {
      "diet.type": "omnivore",
      "diet.foods": ["dry", "algae"],
      "temperament.acts": [{ does: "rasps-mucus", target: "any" }],
    });
    const disc = eater("disc", { "diet.foods": ["dry"], "size.adultLength": adults(8) });
    const { offerings, groups, unreached } = feedingPlan(planOf([grazer, disc]), {
      rules: [...rules, mucusGrazing],
    });
    expect(unreached).toEqual([]);
    expect(groups[0]?.offerings.map((index) => offerings[index]?.food)).toEqual(["dry", "algae"]);
  });

  test("is anything that it takes where it takes nothing else", () => {
    const hunter = eater("hunter", { "diet.type": "carnivore", "diet.foods": ["algae"] });
    expect(fed(hunter)).toMatchObject({ offerings: [{ food: "algae" }], unreached: [] });
  });
});
