// What nobody knows must not read as fine: traits taken from profiles of the catalog, one at a time.
import { describe, expect, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { whoCouldJoin } from "../../src/advice";
import { assessPair, assessPlan, outcomes } from "../../src/compatibility";
import { allRecords } from "../../src/evidence";
import type { Plan } from "../../src/plan";
import { describe as described } from "../../src/report";
import { factAt, resolve, type SpeciesProfile, traitPaths } from "../../src/species";
import { speciesFor } from "../drawn";
import { runs } from "../runs";
import { without } from "../without";

/** Pairs that cannot live together, spread over the catalog. */
const unsuitable = Array.from({ length: runs(300) }, (_, step) => {
  const [a, b] = [speciesFor(`one ${step}`), speciesFor(`other ${step}`)];
  return assessPair({ species: a }, { species: b }).outcome === "unsuitable" ? [[a, b] as const] : [];
}).flat();

describe("a pair that cannot live together", () => {
  test("is never called suitable or conditional for want of a trait of one of them", () => {
    expect(unsuitable.length).toBeGreaterThan(20);
    const milder = unsuitable.flatMap(([a, b]) =>
      traitPaths.flatMap((path) => {
        if (factAt(a, path) === undefined) return [];
        const { outcome } = assessPair({ species: without(a, path) }, { species: b });
        return outcome === "unsuitable" || outcome === "undetermined"
          ? []
          : [`${a.id} without ${path}, ${b.id}`];
      }),
    );
    expect(milder).toEqual([]);
  }, 120_000);

  test("is not by what sources with a free licence alone say of them, unless sources differ on it", () => {
    const free = (id: string) => {
      const record = allRecords.find((one) => one.id === id);
      return record ? [resolve(record, { only: { commercial: true } })] : [];
    };
    const milder = unsuitable.flatMap(([a, b]) => {
      const [one, other] = [...free(a.id), ...free(b.id)];
      if (!one || !other || a.id === b.id) return [];
      const whole = assessPair({ species: one }, { species: other });
      expect(outcomes([one, other]).outcome(0, 1)).toBe(whole.outcome);
      const isMild = whole.outcome === "suitable" || whole.outcome === "conditional";
      const { bounds } = assessPair({ species: a }, { species: b });
      return isMild && bounds.atBest === "unsuitable" ? [`${a.id}, ${b.id}`] : [];
    });
    expect(milder).toEqual([]);
  }, 120_000);
});

const [danio] = ["danio-rerio"].flatMap((id) => speciesById(id) ?? []);
const [mono] = ["monodactylus-argenteus"].flatMap((id) => speciesById(id) ?? []);
if (!danio || !mono) throw new Error("A species is missing.");

const plan = (species: SpeciesProfile, water: Plan["water"] = {}): Plan => ({
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    height: 40,
    cover: 0.3,
    openWater: 0.5,
    lid: true,
    substrate: "sand",
    filter: { mediaArea: 3, age: 90 },
  },
  water: { temperature: 23, pH: 7, generalHardness: 8, salinity: 0, ...water },
  groups: [{ species, males: 5, females: 5 }],
});

describe("what a report calls right as planned", () => {
  const right = (species: SpeciesProfile, water?: Plan["water"]) =>
    described(assessPlan(plan(species, water)))
      .replaceAll(/\s+/g, " ")
      .match(/right as planned: ([^.]*)\./)?.[1];

  test("is the water, the tank and its furnishing where all of that is known", () => {
    expect(right(danio)).toMatch(/^tank, .*furnishing.* water/);
  });

  test.each([
    ["water.temperature", { temperature: 5 }, /\bwater\b|temperature/],
    ["water.pH", { pH: 4 }, /\bwater\b|pH/],
    ["water.generalHardness", { generalHardness: 40 }, /\bwater\b|hardness/],
    ["water.salinity", { salinity: 30 }, /\bwater\b|salinity/],
    ["space.baseLength", {}, /\btank\b|length/],
    ["space.footprint", {}, /\btank\b|floor/],
    ["space.cover", {}, /furnishing|cover/],
  ] as const)("leaves out what hangs on %s where nobody knows it", (path, water, unsaid) => {
    expect(right(without(danio, path), water)).not.toMatch(unsaid);
  });
});

test("nobody joins brackish water of whom it is not known whether they bear it", () => {
  const brackish = plan(mono, { salinity: 20, temperature: 26, pH: 8, generalHardness: 15 });
  const among = without(danio, "water.salinity");
  const { joins } = whoCouldJoin(brackish, [among]);
  expect(joins).toEqual([]);
});
