import { expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { lid } from "../../../../src/compatibility/rules/plan/lid";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const inTank = (jumps: Value<"space.jumps">, closed?: boolean) =>
  planBy(
    lid,
    [{ species: animal("fish", { "space.jumps": jumps }), unsexed: 1 }],
    closed === undefined ? {} : { tank: { lid: closed } },
  );

test("who jumps readily needs a lid", () => {
  expect(weighed(inTank("readily", true))).toEqual({ findings: [], met: ["restricting"] });
  expect(inTank("readily", false).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "tank.lid", wanted: { oneOf: [true] } },
      watchFor: "missing-animals",
    },
  ]);
  const { bounds, open } = inTank("readily");
  expect(bounds).toEqual({ atBest: "conditional", atWorst: "conditional" });
  expect(open).toMatchObject([{ on: "tank.lid", reason: "not-given" }]);
});

test("who jumps when startled is worth a thought where the tank is open", () => {
  expect(weighed(inTank("startled", false)).findings).toEqual(["advisory"]);
  expect(weighed(inTank("startled")).findings).toEqual(["advisory"]);
  expect(weighed(inTank("startled", true)).findings).toEqual([]);
  expect(inTank("startled", false).outcome).toBe("suitable");
});

test("who seldom jumps needs none", () => {
  expect(weighed(inTank("seldom", false))).toEqual({ findings: [], met: [] });
});

test("a betta jumps out of an open tank, a neon hardly ever", () => {
  const open = { tank: { lid: false } };
  expect(planBy(lid, [{ species: bettaSplendens, males: 1 }], open).outcome).toBe("conditional");
  expect(planBy(lid, [{ species: paracheirodonInnesi, unsexed: 10 }], open).outcome).toBe("suitable");
});
