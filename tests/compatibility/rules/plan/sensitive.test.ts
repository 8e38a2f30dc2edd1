import { expect, test } from "vitest";
import { sensitive } from "../../../../src/compatibility/rules/plan/sensitive";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy } from "../../judging";

const told = (value: Value<"care.sensitive">) =>
  planBy(sensitive, [{ species: animal("shrimp", { "care.sensitive": value }), unsexed: 10 }]);

test("each thing that harms it sooner is worth knowing, and changes no outcome", () => {
  expect(told(["copper", "salt"])).toMatchObject({
    outcome: "suitable",
    findings: [
      { weight: "advisory", from: 0, measures: { to: { value: "copper" } } },
      { weight: "advisory", from: 0, measures: { to: { value: "salt" } } },
    ],
  });
  expect(told([]).findings).toEqual([]);
});
