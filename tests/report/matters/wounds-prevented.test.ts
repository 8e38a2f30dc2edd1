import { expect, test } from "vitest";
import { assessPlan } from "../../../src/compatibility";
import { woundsPrevented } from "../../../src/report/matters/matters";
import { animal } from "../../compatibility/animals";
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
    woundsPrevented(assessPlan(planOf([{ species, males: 2, females: 2 }], { tank: { cover } })));
  const [wound, ...others] = told(0.5);
  expect(wound?.[0]).toMatchObject({ rule: "acts-own-kind", measures: { act: { value: "bites" } } });
  expect(wound?.[0].measures).not.toHaveProperty("doer");
  expect(others).toEqual([]);
  expect(told(0)).toEqual([]);
});
