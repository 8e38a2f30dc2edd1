import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import balantiocheilos from "vivary/catalog/balantiocheilos-melanopterus";
import carassius from "vivary/catalog/carassius-auratus";
import phractocephalus from "vivary/catalog/phractocephalus-hemioliopterus";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import { assessPlan, witness } from "../../../../src/compatibility";
import { height } from "../../../../src/compatibility/rules/plan/height";
import { adults, animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const roomy = { shape: "rectangle", length: 300, width: 100 } as const;
const deep = (length: number) =>
  animal("tall", { "size.adultLength": adults(length), "size.bodyShape": "short-deep", "space.height": 50 });
const spindle = (length: number) =>
  ({ "size.adultLength": adults(length), "size.bodyShape": "fusiform" }) as const;
const tall = deep(15);
const inTank = (high: number, unit?: "cm" | "in") =>
  weighed(planBy(height, [{ species: tall, unsexed: 1 }], { tank: { height: high, ...(unit && { unit }) } }));

test("a deep body needs a high tank", () => {
  expect(inTank(49.9)).toEqual({ findings: ["restricting"], met: [] });
  expect(inTank(50)).toEqual({ findings: [], met: ["restricting"] });
});

test("the height may be given in inches", () => {
  const base = { shape: "rectangle", length: 48, width: 20 } as const;
  const at = (inches: number) =>
    weighed(planBy(height, [{ species: tall, unsexed: 1 }], { tank: { base, height: inches, unit: "in" } }));
  expect(at(19).findings).toEqual(["restricting"]);
  expect(at(20).met).toEqual(["restricting"]);
});

test("who is less deep or less long does better in what is stated, and needs what its body asks", () => {
  const others = [deep(9.9), animal("spindle", { ...spindle(30), "space.height": 60 })];
  for (const species of others) {
    const at = (high: number) =>
      weighed(planBy(height, [{ species, unsexed: 1 }], { tank: { height: high } }));
    expect(at(60)).toEqual({ findings: [], met: ["restricting"] });
    expect(at(30)).toEqual({ findings: ["advisory"], met: ["restricting"] });
    expect(at(8)).toEqual({ findings: ["restricting"], met: [] });
  }
});

// Tierschutzverordnung (Switzerland, SR 455.1), Annex 2 Table 8, note b: the water is at least one body length of the
// largest fish deep, from the head to the base of the tail fin, which is at most 0.85 of the total length.
test("no tank is lower than a fish is long, whether or not a height is known", () => {
  const fish = [{ species: animal("spindle", spindle(20)), unsexed: 1 }];
  const at = (high: number) => planBy(height, fish, { tank: { height: high } });
  expect(at(16).outcome).toBe("conditional");
  expect(at(17).bounds.atWorst).toBe("suitable");
  expect(at(17).open).toEqual([]);
});

test("the water counts, without the rim above it and the pane below", () => {
  const fish = [{ species: animal("spindle", spindle(20)), unsexed: 1 }];
  const at = (high: number) =>
    planBy(height, fish, { tank: { height: high, measured: "outer", glass: 1, waterBelowRim: 4 } }).outcome;
  expect([at(21.9), at(22)]).toEqual(["conditional", "suitable"]);
});

test("a plan in inches is given the height that is asked for, whatever stays empty below the rim", () => {
  const groups = [{ species: animal("spindle", spindle(10)), unsexed: 1 }];
  const base = { shape: "rectangle", length: 48, width: 20 } as const;
  for (const waterBelowRim of [0, 5]) {
    const found = witness({ tank: { base, unit: "in", waterBelowRim }, groups }, { rules: [height] });
    const asked = (0.85 * 10) / 2.54 + waterBelowRim;
    expect(found?.tank.height).toBeGreaterThanOrEqual(asked);
    expect(found?.tank.height).toBeLessThan(asked + 0.1);
  }
});

test("an eel coils, and a crayfish is no fish: a part of their length will do, but no puddle", () => {
  const eel = animal("eel", { "size.adultLength": adults(30), "size.bodyShape": "eel-like" });
  const crayfish = animal("crayfish", { "size.adultLength": adults(30) }, { kind: "crayfish" });
  for (const species of [eel, crayfish]) {
    const at = (high?: number) =>
      planBy(height, [{ species, unsexed: 1 }], { tank: { ...(high !== undefined && { height: high }) } })
        .outcome;
    expect([at(), at(9), at(8.9), at(0.1)]).toEqual(["suitable", "suitable", "conditional", "conditional"]);
  }
});

test("nothing is kept in a film of water", () => {
  const calm = allSpecies.filter((species) => {
    const plan = { tank: { base: roomy, height: 0.1 }, groups: [{ species, unsexed: 1 }] } as const;
    return assessPlan(plan, { rules: [height] }).outcome === "suitable";
  });
  expect(calm.map(({ id }) => id)).toEqual([]);
});

test("a long, deep body of which no height is stated may need more than its length", () => {
  const species = animal("tall", { "size.adultLength": adults(20), "size.bodyShape": "short-deep" });
  const at = (high: number) => planBy(height, [{ species, unsexed: 1 }], { tank: { height: high } });
  expect(at(16).outcome).toBe("conditional");
  expect(at(40).open).toMatchObject([{ reason: "missing", trait: "space.height" }]);
});

test("a plan without a height is asked for one where the animals are long", () => {
  const base = { shape: "rectangle", length: 100, width: 50 } as const;
  const of = (length: number) => {
    const groups = [{ species: animal("spindle", spindle(length)), unsexed: 1 }];
    return assessPlan({ tank: { base }, groups }, { rules: [height] });
  };
  expect(of(3).outcome).toBe("suitable");
  expect(of(10).open).toMatchObject([{ reason: "not-given", on: "tank.height" }]);
});

test.each([
  [phractocephalus, 1, 12],
  [carassius, 2, 10],
  [balantiocheilos, 6, 12],
])("in a keeper's tank: $id, %i of them, in a tank %i cm high", (species, unsexed, high) => {
  expect(planBy(height, [{ species, unsexed }], { tank: { height: high } }).outcome).toBe("conditional");
});

test("in a keeper's tank: an angelfish in a tank 30 cm high", () => {
  const groups = [{ species: pterophyllumScalare, unsexed: 1 }];
  expect(planBy(height, groups, { tank: { height: 30 } }).outcome).toBe("conditional");
});
