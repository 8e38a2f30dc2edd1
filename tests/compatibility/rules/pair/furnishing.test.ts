import { describe, expect, test } from "vitest";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import { furnishing } from "../../../../src/compatibility/rules/pair/furnishing";
import type { TraitValue as Value } from "../../../../src/species";
import { animal, type Stated } from "../../animals";
import { pairBy } from "../../judging";

const undemanding: Stated = {
  "space.cover": 0,
  "space.openWater": 0,
  "space.grownInPlants": false,
  "space.substrate": [],
  "effects.eatsPlants": false,
  "effects.uproots": false,
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

describe("a planting", () => {
  const planted: Stated = { "space.grownInPlants": true };

  test("holds tough plants beside those that eat, none beside those that uproot, whoever is named first", () => {
    for (const [harm, word, weight] of [
      [{ "effects.eatsPlants": true }, "eats", "advisory"],
      [{ "effects.uproots": true }, "uproots", "blocking"],
    ] as const) {
      const expected = [{ weight, measures: { harm: { value: word } } }];
      expect(found(planted, harm)).toMatchObject(expected);
      expect(found(harm, planted)).toMatchObject(expected);
    }
  });

  test("that nobody needs may be eaten", () => {
    expect(found({ "effects.eatsPlants": true }, { "effects.uproots": true })).toEqual([]);
  });
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

test("in a keeper's tank: a goldfish digs up and eats what a fish of the thicket lives in", () => {
  const thicket = dweller("thicket", { "space.grownInPlants": true });
  expect(pairBy(furnishing, { species: carassiusAuratus }, thicket).outcome).toBe("unsuitable");
  expect(pairBy(furnishing, { species: carassiusAuratus }, { species: carassiusAuratus }).findings).toEqual(
    [],
  );
});
