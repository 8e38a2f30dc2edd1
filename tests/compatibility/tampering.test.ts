import { describe, expect, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import {
  assessPair,
  assessPlan,
  pairRules,
  planRules,
  thresholds,
  type Verdict,
} from "../../src/compatibility";
import { facts } from "../../src/plan";
import { planOf } from "./judging";

/** Every object that can be reached from a value, functions too. */
function reachable(value: unknown, found = new Set<object>()): ReadonlySet<object> {
  if ((typeof value !== "object" && typeof value !== "function") || value === null || found.has(value))
    return found;
  found.add(value);
  for (const key of Reflect.ownKeys(value)) {
    if (typeof value === "function" && ["caller", "callee", "arguments"].includes(String(key))) continue;
    reachable(Reflect.get(value, key), found);
  }
  return found;
}

/** Lists and plain objects that can be reached from a value: what holds data. */
const held = (value: unknown) =>
  [...reachable(value)].filter(
    (object) => Array.isArray(object) || Object.getPrototypeOf(object) === Object.prototype,
  );

const other = (value: unknown): unknown => {
  if (typeof value === "number") return value + 1;
  if (typeof value === "boolean") return !value;
  return typeof value === "string" ? `${value}, edited` : 0;
};

/** Tries to edit an object in every way there is. Strict code throws where it cannot, sloppy code goes on. */
function edit(object: object): void {
  const strictly = [
    () =>
      Object.assign(
        object,
        Object.fromEntries(Object.entries(object).map(([key, value]) => [key, other(value)])),
      ),
    () => Object.assign(object, { weight: "favourable", value: 0, min: 0 }),
    () => Object.setPrototypeOf(object, { outcome: "suitable" }),
    () => Array.isArray(object) && object.push(object[0]),
    () => Array.isArray(object) && object.reverse(),
    () => Array.isArray(object) && object.splice(1),
  ];
  for (const attempt of strictly) {
    try {
      attempt();
    } catch (error) {
      if (!(error instanceof TypeError)) throw error;
    }
  }
  for (const key of Reflect.ownKeys(object)) {
    Reflect.set(object, key, other(Reflect.get(object, key)));
    Reflect.defineProperty(object, key, { value: 0 });
    Reflect.deleteProperty(object, key);
  }
  Reflect.set(object, "length", 1);
}

const plan = planOf(
  [
    { species: amatitlaniaNigrofasciata, males: 2, females: 2 },
    { species: bettaSplendens, form: "plakat", males: 1 },
    { species: poeciliaReticulata, males: 2, females: 4 },
    { species: neocaridinaDavidi, unsexed: 10 },
    { species: paracheirodonInnesi, unsexed: 4 },
  ],
  { tank: { cover: 0.1, sightBreaks: 0 } },
);
const verdicts = (): readonly Verdict[] => [
  assessPair({ species: bettaSplendens, sex: "male" }, { species: bettaSplendens, sex: "male" }),
  assessPair({ species: danioRerio }, { species: poeciliaReticulata, form: "short-finned" }),
  assessPlan(plan),
];

/** What is answered, by itself: no part of it is shared with what is answered later. */
const answers = () => JSON.stringify(verdicts());

describe("whoever edits", () => {
  const before = answers();

  test("a verdict changes no later one, nor that one", () => {
    const given = verdicts();
    const text = JSON.stringify(given);
    const objects = held(given).filter((object) => object !== given);
    expect(objects.length).toBeGreaterThan(500);
    for (const object of objects) edit(object);
    expect(JSON.stringify(given)).toBe(text);
    expect(answers()).toBe(before);
  });

  test.each(Object.entries({ pairRules, planRules, thresholds, facts }))(
    "%s changes no answer",
    (_, table) => {
      const objects = held(table);
      expect(objects.length).toBeGreaterThan(20);
      for (const object of objects) edit(object);
      expect(answers()).toBe(before);
    },
  );

  test("cuts no rules off", () => {
    const cut = () => Reflect.set(pairRules, "length", 1);
    expect(cut()).toBe(false);
    expect(() => Object.assign(pairRules, { length: 1 })).toThrow(TypeError);
    expect(() => Object.assign(pairRules[0], { judge: () => [] })).toThrow(TypeError);
    expect(() => Object.assign(pairRules[0].needs?.from ?? [], { 0: "water.pH" })).toThrow(TypeError);
    expect(() => Object.assign(thresholds.sharedTemperature, { value: 20 })).toThrow(TypeError);
    expect(answers()).toBe(before);
  });

  test("parties' names or what a condition wants is told so", () => {
    const [, , verdict] = verdicts();
    const [party] = verdict?.parties ?? [];
    const [condition] = verdict?.conditions ?? [];
    expect(() => Object.assign(party?.names.en ?? [], { 0: "shark" })).toThrow(TypeError);
    expect(() => Object.assign(condition?.wanted ?? {}, { min: 0 })).toThrow(TypeError);
    expect(() => Object.assign(verdict?.made.thresholds ?? {}, { sharedPH: 9 })).toThrow(TypeError);
  });

  test("the lists of names of his own profile edits no verdict", () => {
    const names = { en: ["neon"] };
    const verdict = assessPair({ species: { ...paracheirodonInnesi, names } }, { species: danioRerio });
    names.en.push("edited");
    expect(verdict.parties[0]?.names).toEqual({ en: ["neon"] });
    expect(Object.isFrozen(names.en)).toBe(false);
  });

  test("nothing that he gave is frozen by a verdict", () => {
    const mine = structuredClone(planOf([{ species: paracheirodonInnesi, unsexed: 4 }]));
    const options = { thresholds: { sharedPH: 0.4 } };
    assessPlan(mine, options);
    for (const object of [...held(mine), ...held(options)]) expect(Object.isFrozen(object)).toBe(false);
  });
});
