import { expect, test } from "vitest";
import brachygobiusDoriae from "vivary/catalog/brachygobius-doriae";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { waterSalinity } from "../../../../src/compatibility/rules/plan/water-salinity";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { type Changes, planBy, weighed } from "../../judging";

const inWater = (water: Changes["water"], more: Partial<Value<"water.salinity">> = {}) =>
  weighed(
    planBy(
      waterSalinity,
      [{ species: animal("fish", { "water.salinity": { kept: { min: 2, max: 10 }, ...more } }), unsexed: 1 }],
      water && { water },
    ),
  );

test("both ends of the kept span are in it", () => {
  for (const salinity of [2, 10]) {
    expect(inWater({ salinity })).toEqual({ findings: [], met: ["restricting"] });
  }
});

test("it gives way by nothing, tolerated or not", () => {
  expect(inWater({ salinity: 1.9 })).toEqual({ findings: ["restricting"], met: [] });
  expect(inWater({ salinity: 1.9 }, { tolerated: { min: 0, max: 15 } }).findings).toEqual(["restricting"]);
  expect(inWater({ salinity: 10.1 }, { precision: { max: "class" } }).findings).toEqual(["restricting"]);
});

test("water is fresh where the plan does not say", () => {
  expect(inWater({}).findings).toEqual(["restricting"]);
  expect(inWater({ salinity: 0 }).findings).toEqual(["restricting"]);
});

test("a bumblebee goby wants salt, a neon none, and no water serves both", () => {
  const [goby, neon] = [brachygobiusDoriae, paracheirodonInnesi].map((species) => ({ species, unsexed: 8 }));
  const at = (salinity: number, ...groups: readonly (typeof goby)[]) =>
    planBy(
      waterSalinity,
      groups.flatMap((group) => group ?? []),
      { water: { salinity } },
    );
  expect(at(5, goby).outcome).toBe("suitable");
  expect(at(0, goby).outcome).toBe("conditional");
  expect(at(0, neon).outcome).toBe("suitable");
  expect(at(5, neon).outcome).toBe("conditional");
  const both = at(1, goby, neon);
  expect(both.outcome).toBe("unsuitable");
  expect(both.findings.at(-1)).toMatchObject({
    rule: "conditions-exclude",
    weight: "blocking",
    from: 0,
    to: 1,
  });
});
