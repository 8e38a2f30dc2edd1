import { expect, test } from "vitest";
import { assessPlan, type Crowd, counting, defineRule } from "../../../src/compatibility";
import { subjectOf } from "../../../src/compatibility/engine/sides/subject";
import type { Group } from "../../../src/plan";
import { partiesOfGroups } from "../../../src/plan/party";
import { animal, type Stated } from "../animals";
import { planOf } from "../judging";

const shoal = (id: string, least: number, also: readonly number[] = []) =>
  animal(id, livingIn(least), { also: also.map(livingIn) });
const livingIn = (least: number): Stated => ({ "social.living": "shoal", "social.group": { least } });

const numbers = (...groups: readonly Group[]) => {
  const subjects = partiesOfGroups(groups).map(subjectOf);
  return counting.ends(subjects).map(({ of }) => subjects.map(({ animals }) => of(animals)));
};

test("likely, least and greatest there are as many as belong together, or as many as are planned if these are more", () => {
  const species = shoal("shoal", 8);
  expect(numbers({ species, unsexed: 5 })).toEqual([[8], [8], [8]]);
  expect(numbers({ species, unsexed: 12 })[0]).toEqual([12]);
});

test("sources that differ give a least and a greatest number, all species at one end together", () => {
  const [a, b] = [shoal("a", 6, [10]), shoal("b", 8, [5])];
  expect(numbers({ species: a, unsexed: 1 }, { species: b, unsexed: 6 })).toEqual([
    [6, 8],
    [6, 6],
    [10, 8],
  ]);
});

test("the groups of one species are one crowd", () => {
  const species = shoal("shoal", 8);
  expect(numbers({ species, males: 3 }, { species, females: 7 })[0]).toEqual([10, 10]);
});

test("a rule that counts is judged three times, however many species are disputed; another sees nobody", () => {
  const seen: Crowd[] = [];
  const looks = (id: string, counts: boolean) =>
    defineRule({
      id,
      way: "all-groups",
      ...(counts && { sums: counting }),
      uses: { from: ["social.living"] },
      mayYield: ["advisory"],
      judge: ({ crowd }) => {
        seen.push(crowd);
        return [];
      },
    });
  const groups = ["a", "b", "c", "d"].map((id) => ({ species: shoal(id, 6, [10]), unsexed: 6 }));
  assessPlan(planOf(groups), { rules: [looks("x-counts", true)] });
  expect(seen.map(({ of }) => of({ id: "a" }))).toEqual([6, 6, 10]);
  assessPlan(planOf(groups), { rules: [looks("x-looks", false)] });
  expect(seen.slice(3).map(({ of }) => of({ id: "a" }))).toEqual([0]);
});
