import { expect, test } from "vitest";
import { assessPlan, defineRule } from "../../../../src/compatibility";
import type { Plan } from "../../../../src/plan";
import { animal } from "../../animals";
import { planOf, traitsAsked } from "../../judging";

/** A rule that asks for a trait nobody knows and could be as bad as this. */
const asking = <const Path extends "space.cover" | "space.height" | "diet.pace" | "space.zones">(
  id: `x-${string}`,
  trait: Path,
  weight: "blocking" | "restricting",
) =>
  defineRule({
    id,
    way: "each-group",
    needs: { from: [trait] },
    mayYield: [weight],
    judge: ({ from }) => (from[trait] ? [] : []),
  });

const plan: Plan = planOf([{ species: animal("stranger"), unsexed: 1 }]);
const asked = (...rules: readonly ReturnType<typeof asking>[]) => traitsAsked(assessPlan(plan, { rules }));

test("what could rule a plan out is asked before what could set a condition", () => {
  expect(asked(asking("x-a", "space.cover", "restricting"), asking("x-b", "diet.pace", "blocking"))).toEqual([
    "diet.pace",
    "space.cover",
  ]);
});

test("of two that could do the same, the essential trait comes first", () => {
  expect(asked(asking("x-a", "space.cover", "blocking"), asking("x-b", "space.zones", "blocking"))).toEqual([
    "space.zones",
    "space.cover",
  ]);
});

test("a question that decides beside one animal and not beside the next is told as one that decides", () => {
  const rule = defineRule({
    id: "x-cover",
    way: "mutual",
    between: "two-species",
    uses: { from: ["space.cover"], to: ["space.cover"] },
    mayAdd: ["space.cover"],
    mayYield: ["blocking"],
    judge: ({ from, to }) => {
      const isUnknown = [from, to].some((side) => side["space.cover"] === undefined);
      return isUnknown && to.party.id === "shy" ? "unknown" : [];
    },
  });
  const [stranger, shy, bold] = ["stranger", "shy", "bold"].map((id) => ({
    species: animal(id, id === "stranger" ? {} : { "space.cover": 0.2 }),
    unsexed: 1,
  }));
  if (!stranger || !shy || !bold) throw new Error("no animals");
  const { outcome, open } = assessPlan(planOf([stranger, shy, bold]), { rules: [rule] });
  expect(outcome).toBe("undetermined");
  expect(open).toMatchObject([{ of: 0, trait: "space.cover", decides: true }]);
  const beside = assessPlan(planOf([stranger, bold]), { rules: [rule] });
  expect(beside.outcome).toBe("suitable");
  expect(beside.open).toMatchObject([{ of: 0, trait: "space.cover" }]);
  expect(beside.open).not.toMatchObject([{ decides: true }]);
});

test("a question that settles nothing comes after one that does", () => {
  // The height alone decides whether the plan can be better than conditional: whatever the cover, it is restricted.
  const restricts = defineRule({
    id: "x-lid",
    way: "once",
    mayYield: ["restricting"],
    judge: () => [{ weight: "restricting", condition: { on: "tank.height", wanted: { min: 1000 } } }],
  });
  const rules = [
    restricts,
    asking("x-a", "space.cover", "restricting"),
    asking("x-b", "space.height", "blocking"),
  ];
  expect(traitsAsked(assessPlan(plan, { rules }))).toEqual(["space.height", "space.cover"]);
});

test("a question that two rules ask counts for both, and is listed for each", () => {
  const rules = [
    asking("x-a", "space.cover", "restricting"),
    asking("x-b", "space.height", "restricting"),
    asking("x-c", "space.height", "blocking"),
  ];
  expect(assessPlan(plan, { rules }).open.map(({ rule }) => rule)).toEqual(["x-c", "x-b", "x-a"]);
});
