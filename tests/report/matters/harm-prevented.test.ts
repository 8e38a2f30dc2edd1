import { expect, test } from "vitest";
import { assessPlan } from "../../../src/compatibility";
import { harmPrevented } from "../../../src/report/matters/matters";
import { adults, animal } from "../../compatibility/animals";
import { planOf } from "../../compatibility/judging";

test("what males and females alike would do is told once of both", () => {
  const bites = (doer: "male" | "female") =>
    ({ does: "bites", target: "own-kind", when: "crowded", doer }) as const;
  const species = animal("biter", {
    "temperament.acts": [bites("male"), bites("female")],
    "space.territory": "none",
    "social.living": "group",
    "social.group": { least: 4 },
    "social.femalesPerMale": 0,
  });
  const told = (cover: number) =>
    harmPrevented(assessPlan(planOf([{ species, males: 2, females: 2 }], { tank: { cover } })));
  const [wound, ...others] = told(0.5);
  expect(wound?.[0]).toMatchObject({ rule: "acts-own-kind", measures: { act: { value: "bites" } } });
  expect(wound?.[0].measures).not.toHaveProperty("doer");
  expect(others).toEqual([]);
  expect(told(0)).toEqual([]);
});

test("chases at any time that cover keeps down are told, those from a brood are not", () => {
  const chaser = (when: "always" | "guarding-brood") =>
    animal("chaser", {
      "temperament.acts": [{ does: "chases", target: "any", when }],
      "social.living": "alone",
      "size.adultLength": adults(8),
      "space.zones": ["midwater"],
    });
  const chased = animal("chased", {
    "temperament.acts": [],
    "social.living": "alone",
    "size.adultLength": adults(8),
    "space.zones": ["midwater"],
    "diet.pace": "fast",
    "appearance.longFins": false,
  });
  const told = (when: "always" | "guarding-brood", cover: number) => {
    const groups = [chaser(when), chased].map((species) => ({ species, unsexed: 1 }));
    return harmPrevented(assessPlan(planOf(groups, { tank: { cover } })));
  };
  expect(told("always", 0.9)).toMatchObject([[{ rule: "acts-others", from: 0, to: 1 }]]);
  expect(told("always", 0)).toEqual([]);
  expect(told("guarding-brood", 0.9)).toEqual([]);
});
