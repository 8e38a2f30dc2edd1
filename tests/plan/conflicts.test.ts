import { describe, expect, test } from "vitest";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import { describeProblem } from "../../src/errors";
import {
  countConflicts,
  flowConflicts,
  formConflicts,
  idConflicts,
  lengthConflicts,
  measureConflicts,
  shareConflicts,
  waterConflicts,
} from "../../src/plan/conflicts";
import { applyForm, type SpeciesProfile } from "../../src/species";

const base = { shape: "rectangle", length: 60, width: 30 } as const;

describe("currents", () => {
  test("may be the same", () => {
    expect(flowConflicts({ base, flow: { calmest: "gentle", strongest: "gentle" } })).toEqual([]);
    expect(flowConflicts({ base })).toEqual([]);
  });

  test("are not the wrong way round", () => {
    expect(
      flowConflicts({ base, flow: { calmest: "strong", strongest: "still" } }).map(describeProblem),
    ).toEqual(['tank.flow.strongest: expected no calmer current than the calmest, strong, found "still"']);
  });
});

describe("shares of the tank", () => {
  const told = (cover?: number, openWater?: number) =>
    shareConflicts({ base, cover, openWater }).map(describeProblem);

  test("are the whole at most, by the figures as they are written", () => {
    expect(
      [told(), told(1), told(undefined, 1), told(0.7, 0.3), told(0.1, 0.9), told(1 - 0.9, 0.9)].flat(),
    ).toEqual([]);
  });

  test("what is cover is not free to swim in", () => {
    expect(told(0.9, 0.2)).toEqual(["tank.openWater: expected at most what cover leaves, 0.1, found 0.2"]);
    expect(told(1, 1)).toHaveLength(1);
  });
});

describe("sizes", () => {
  test.each([
    ["without a height", { base }],
    ["with one", { base, height: 30 }],
    ["of glass", { base, height: 30, measured: "outer" as const, glass: 0.5 }],
  ])("%s make a tank", (_, tank) => {
    expect(measureConflicts(tank)).toEqual([]);
  });

  test.each([
    ["glass as thick as half the tank", { base, measured: "outer" as const, glass: 15 }, "tank.glass"],
    ["water below the floor", { base, height: 30, waterBelowRim: 30 }, "tank.waterBelowRim"],
    ["a height of nothing", { base, height: 0 }, "tank.height"],
  ])("%s make none", (_, tank, path) => {
    const problems = measureConflicts(tank);
    expect(problems.map((problem) => problem.path.join("."))).toEqual([path]);
  });
});

describe("seasons", () => {
  test.each([
    [{ coolest: 20, temperature: 24, hottest: 28 }, []],
    [{ coolest: 24, temperature: 24, hottest: 24 }, []],
    [{ coolest: 20 }, []],
    [{ hottest: 20, coolest: 21 }, ["hottest"]],
    [{ hottest: 20, temperature: 21 }, ["hottest"]],
    [{ temperature: 20, coolest: 21 }, ["temperature"]],
    [{ hottest: 20, temperature: 24, coolest: 28 }, ["hottest", "hottest", "temperature"]],
  ])("%j", (water, wrong) => {
    expect(waterConflicts(water).map(({ path }) => path[1])).toEqual(wrong);
  });
});

test("a group has an animal", () => {
  const group = { species: puntigrusTetrazona };
  expect(countConflicts({ ...group, juveniles: 1 }, [])).toEqual([]);
  expect(countConflicts({ ...group, males: 0 }, ["groups", 0])).toMatchObject([
    { path: ["groups", 0], found: 0 },
  ]);
});

describe("a form", () => {
  const longFin = applyForm(puntigrusTetrazona, "long-fin");

  test.each([
    [{ species: puntigrusTetrazona }, undefined],
    [{ species: puntigrusTetrazona, form: "long-fin" }, undefined],
    [{ species: longFin }, undefined],
    [{ species: longFin, form: "long-fin" }, undefined],
    [{ species: longFin, form: "albino" }, "conflict"],
    [{ species: puntigrusTetrazona, form: "short-fin" }, "unknown-form"],
    [{ species: puntigrusTetrazona, form: "__proto__" }, "unknown-form"],
  ])("is one that the species has: %#", (party, code) => {
    expect(formConflicts(party, []).map((problem) => problem.code)).toEqual(code ? [code] : []);
  });
});

describe("a length", () => {
  test("of a neon in millimetres is refused, that of a giant among neons is not", () => {
    const wrong = (length: number) =>
      lengthConflicts({ species: paracheirodonInnesi, length }, ["groups", 0]).map(describeProblem);
    // The record has 5 cm as the greatest.
    expect(wrong(35)).toEqual([
      "groups[0].length: expected at most 10 cm, twice the greatest length known of paracheirodon-innesi, found 35",
    ]);
    for (const length of [0.3, 3.5, 6]) expect(wrong(length)).toEqual([]);
  });

  test("of a form that grows longer than its species is measured by the longest", () => {
    const { size, ...others } = puntigrusTetrazona;
    const greatest = Math.max(...(size?.adultLength?.value.map(({ total }) => total.max) ?? []));
    const giant = { measure: "TL", as: "usual", length: 40, total: { min: 40, max: 40 } } as const;
    const forms = {
      giant: { names: { en: ["giant"] }, size: { adultLength: { value: [giant], basis: "memory" } } },
    };
    const species = { ...others, size, forms } as SpeciesProfile;
    expect(lengthConflicts({ species, length: 3 * greatest }, [])).toEqual([]);
    expect(lengthConflicts({ species: puntigrusTetrazona, length: 3 * greatest }, [])).toHaveLength(1);
  });

  test("of which nobody knows what is usual is taken as it is", () => {
    const { size: _, ...unmeasured } = paracheirodonInnesi;
    expect(lengthConflicts({ species: unmeasured as SpeciesProfile, length: 900 }, [])).toEqual([]);
  });
});

test("ids are each given once, and a group needs none", () => {
  expect(idConflicts(["a", undefined, "b", undefined])).toEqual([]);
  expect(idConflicts(["a", "b", "a", "a"]).map(describeProblem)).toEqual([
    'groups[2].id: expected an id that groups[0] does not have, found "a"',
    'groups[3].id: expected an id that groups[0] does not have, found "a"',
  ]);
});
