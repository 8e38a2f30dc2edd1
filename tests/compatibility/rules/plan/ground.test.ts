import { expect, test } from "vitest";
import { ground } from "../../../../src/compatibility/rules/plan/ground";
import type { PlannedTank } from "../../../../src/plan";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const on = (substrate: PlannedTank["substrate"], needs: Value<"space.substrate"> = ["sand", "fine-gravel"]) =>
  planBy(ground, [{ species: animal("digger", { "space.substrate": needs }), unsexed: 6 }], {
    tank: { substrate },
  });

test("barbels need ground that they can sift", () => {
  for (const fine of ["sand", "fine-gravel"] as const) {
    expect(weighed(on(fine))).toEqual({ findings: [], met: ["restricting"] });
  }
  for (const other of ["bare", "coarse-gravel", "pebbles"] as const) {
    expect(on(other).findings).toMatchObject([
      {
        weight: "restricting",
        measures: { needed: { value: ["sand", "fine-gravel"] } },
        condition: { on: "tank.substrate", wanted: { oneOf: ["sand", "fine-gravel"] } },
      },
    ]);
  }
});

test("who lives on any ground is asked none", () => {
  expect(weighed(on("bare", []))).toEqual({ findings: [], met: [] });
});

test("a plan that does not say leaves it open, and is held to it in both bounds", () => {
  expect(on(undefined)).toMatchObject({
    outcome: "conditional",
    bounds: { atBest: "conditional", atWorst: "conditional" },
    open: [{ rule: "ground", on: "tank.substrate", reason: "not-given", couldBe: "restricting" }],
  });
});

test("two that need different ground exclude each other", () => {
  const needing = (id: string, needs: Value<"space.substrate">) => ({
    species: animal(id, { "space.substrate": needs }),
    unsexed: 6,
  });
  const both = planBy(ground, [needing("a", ["sand"]), needing("b", ["pebbles"])]);
  expect(both.outcome).toBe("unsuitable");
  expect(both.findings.at(-1)).toMatchObject({
    rule: "conditions-exclude",
    from: 0,
    to: 1,
    measures: { one: { value: "tank.substrate" }, other: { value: "tank.substrate" } },
  });
  const shared = planBy(ground, [needing("a", ["sand", "bare"]), needing("b", ["pebbles", "sand"])]);
  expect(shared).toMatchObject({
    outcome: "conditional",
    conditions: [{ on: "tank.substrate", wanted: { oneOf: ["sand"] }, findings: [0, 1] }],
  });
});
