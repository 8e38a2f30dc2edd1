import { describe, expect, test } from "vitest";
import balantiocheilosMelanopterus from "vivary/catalog/balantiocheilos-melanopterus";
import hypancistrusZebra from "vivary/catalog/hypancistrus-zebra";
import { furnishing } from "../../../../src/compatibility/rules/pair/furnishing";
import type { TraitValue as Value } from "../../../../src/species";
import { animal, type Stated } from "../../animals";
import { pairBy } from "../../judging";

const undemanding: Stated = {
  "space.cover": 0,
  "space.openWater": 0,
  "space.substrate": [],
};
const dweller = (id: string, asks: Stated = {}) => ({ species: animal(id, { ...undemanding, ...asks }) });
const found = (a: Stated, b: Stated = {}) => pairBy(furnishing, dweller("a", a), dweller("b", b)).findings;

test("who asks for nothing goes with anybody", () => {
  expect(found({})).toEqual([]);
  expect(pairBy(furnishing, dweller("a"), dweller("b")).bounds).toEqual({
    atBest: "suitable",
    atWorst: "suitable",
  });
});

test("what is cover is not free to swim in", () => {
  expect(found({ "space.cover": 0.6 }, { "space.openWater": 0.5 })).toMatchObject([
    { weight: "blocking", measures: { cover: { value: 0.6 }, openWater: { value: 0.5 } } },
  ]);
  expect(found({ "space.cover": 0.6 }, { "space.openWater": 0.4 })).toEqual([]);
  expect(found({ "space.cover": 0.7 }, { "space.openWater": 0.3 })).toEqual([]);
  expect(found({ "space.cover": 0.6, "space.openWater": 0.3 }, { "space.openWater": 0.5 })).toHaveLength(1);
});

describe("the ground", () => {
  const on = (...grounds: Value<"space.substrate">): Stated => ({ "space.substrate": grounds });

  test("is one for both: it blocks where they share none", () => {
    expect(found(on("sand"), on("pebbles"))).toMatchObject([
      { weight: "blocking", measures: { from: { value: ["sand"] }, to: { value: ["pebbles"] } } },
    ]);
    expect(found(on("sand", "fine-gravel"), on("fine-gravel", "pebbles"))).toEqual([]);
    expect(found(on("sand"), on())).toEqual([]);
  });
});

test("what nobody knows is open, and could block", () => {
  const { "space.substrate": _, ...rest } = undemanding;
  const verdict = pairBy(furnishing, dweller("a", { "space.substrate": ["sand"] }), {
    species: animal("b", rest),
  });
  expect(verdict.findings).toEqual([]);
  expect(verdict.bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
  expect(verdict.open).toMatchObject([{ of: 1, trait: "space.substrate", reason: "missing" }]);
});

test("in a keeper's tank: nothing is both a thicket for zebra plecos and open water for bala sharks", () => {
  const [pleco, bala] = [{ species: hypancistrusZebra }, { species: balantiocheilosMelanopterus }];
  expect(pairBy(furnishing, pleco, bala).outcome).toBe("unsuitable");
  expect(pairBy(furnishing, bala, bala).findings).toEqual([]);
});
