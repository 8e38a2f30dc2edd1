import { expect, describe as suite, test } from "vitest";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { assessPair, assessPlan } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import { describe } from "../../../src/report";

const bare: Plan = {
  tank: { base: { shape: "rectangle", length: 100, width: 40 } },
  groups: [
    { id: "the neons", species: paracheirodonInnesi, unsexed: 10 },
    { id: "on the ground", species: hoplisomaPanda, unsexed: 6 },
  ],
};

const linesOf = (plan: Plan) => describe(assessPlan(plan)).split("\n");

suite("what a plan does not say", () => {
  test("is asked for in the second line, water before all, three facts at most", () => {
    expect(linesOf(bare)[1]).toBe("Measure or settle first: temperature, pH and hardness.");
  });

  test("is asked for no more once it is known", () => {
    const measured = { ...bare, water: { temperature: 24, pH: 6.8 } };
    expect(linesOf(measured)[1]).toMatch(/^Measure or settle first: hardness, /);
    expect(linesOf(measured)[1]).not.toMatch(/temperature|pH/);
  });

  test("stands before what sources dispute or nobody knows of a species", () => {
    const report = describe(assessPlan(bare));
    expect(report.indexOf("Measure or settle first")).toBeGreaterThan(0);
    expect(report.indexOf("Sources differ")).toBeGreaterThan(report.indexOf("Measure or settle first"));
  });

  test("is no matter where the plan is ruled out, or of a pair without a plan", () => {
    const bowl: Plan = {
      tank: { base: { shape: "rectangle", length: 30, width: 20 } },
      groups: [{ species: carassiusAuratus, unsexed: 1 }],
    };
    expect(describe(assessPlan(bowl))).not.toContain("Measure or settle first");
    const pair = assessPair({ species: danioRerio }, { species: hoplisomaPanda });
    expect(describe(pair)).not.toContain("Measure or settle first");
  });
});

test("what an app calls its groups comes back with the parties that findings name", () => {
  const { parties, findings } = assessPlan(bare);
  expect(parties.map(({ groupId }) => groupId)).toEqual(["the neons", "on the ground"]);
  const asked = findings
    .filter(({ rule }) => rule === "ground")
    .map(({ from = -1 }) => parties[from]?.groupId);
  expect(asked).toEqual(["on the ground"]);
});
