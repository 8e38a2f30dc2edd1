import { describe, expect, test } from "vitest";
import { frontEdge } from "../../../src/standards/kinds/front-edge";
import { ownGroup } from "../../../src/standards/kinds/own-group";
import { permit } from "../../../src/standards/kinds/permit";
import { shoalers } from "../../../src/standards/kinds/shoalers";
import { adults, animal } from "../../compatibility/animals";
import { box, fishOfLength, inFamily, surveyOf } from "../surveys";

const one = (id: string) => ({ species: fishOfLength(id, 4), unsexed: 1 });

describe("a front edge", () => {
  const rule = { kind: "front-edge", species: "a", centimetres: 100 } as const;

  test("is the longer side as given", () => {
    const tank = (length: number) => ({ ...box(40, length, 40), glass: 1 });
    expect(frontEdge(rule, surveyOf([one("a")], tank(100)))).toMatchObject({
      species: ["a"],
      asked: { min: 100, max: 100, unit: "cm" },
      has: { of: "front edge", min: 100, max: 100, sizes: "outer" },
      answer: "met",
    });
    expect(frontEdge(rule, surveyOf([one("a")], tank(99)))?.answer).toBe("not-met");
  });

  test("over a length is not reached at it", () => {
    const beyond = { ...rule, beyond: true };
    expect(frontEdge(beyond, surveyOf([one("a")], box(100, 40, 40)))).toMatchObject({
      asked: { min: 100, max: 100, beyond: true },
      answer: "not-met",
    });
    expect(frontEdge(rule, surveyOf([one("a")]))?.asked).not.toHaveProperty("beyond");
    expect(frontEdge(beyond, surveyOf([one("a")], box(101, 40, 40)))?.answer).toBe("met");
  });

  test("is asked of its species only", () => {
    expect(frontEdge(rule, surveyOf([one("b")]))).toBeUndefined();
  });
});

describe("a group of its own", () => {
  const rule = { kind: "own-group", species: "a", least: 5 } as const;

  test("counts the species in all groups", () => {
    const males = { species: fishOfLength("a", 4), males: 2 };
    const young = { species: fishOfLength("a", 4), juveniles: 2 };
    expect(ownGroup(rule, surveyOf([males, young, one("b")]))).toMatchObject({
      has: { of: "animals", min: 4, max: 4 },
      answer: "not-met",
    });
    expect(ownGroup(rule, surveyOf([males, young, one("a")]))?.answer).toBe("met");
    expect(ownGroup(rule, surveyOf([one("b")]))).toBeUndefined();
  });

  test("of no stated number is only ruled out for one alone", () => {
    const company = { kind: "own-group", species: "a" } as const;
    expect(ownGroup(company, surveyOf([one("a")]))?.answer).toBe("not-met");
    expect(ownGroup(company, surveyOf([one("a"), one("a")]))).toMatchObject({
      answer: "undetermined",
      open: { reason: "no-figure" },
    });
  });
});

describe("shoaling fish", () => {
  const shoaler = (id: string, unsexed: number) => ({
    species: fishOfLength(id, 4, { "social.living": "shoal" }),
    unsexed,
  });
  const loner = { species: fishOfLength("loner", 6, { "social.living": "alone" }), unsexed: 1 };

  test("of which there is one alone are named, and no others", () => {
    expect(shoalers(surveyOf([shoaler("a", 10), shoaler("b", 1), loner, shoaler("c", 1)]))).toMatchObject({
      species: ["b", "c"],
      has: { min: 1, max: 1 },
      answer: "not-met",
    });
    const two = [shoaler("a", 1), shoaler("a", 1)];
    expect(shoalers(surveyOf(two))?.answer).toBe("undetermined");
  });

  test("that have company are left open, from the fewest of a species to the most", () => {
    expect(shoalers(surveyOf([shoaler("a", 10), loner]))).toMatchObject({
      has: { min: 10, max: 10 },
      answer: "undetermined",
    });
    expect(shoalers(surveyOf([shoaler("a", 10), shoaler("b", 6), shoaler("a", 2)]))).toMatchObject({
      species: ["a", "b"],
      has: { min: 6, max: 12 },
      answer: "undetermined",
      open: { reason: "no-figure" },
    });
  });

  test("are none where all others are known not to be", () => {
    expect(shoalers(surveyOf([loner]))).toBeUndefined();
    expect(shoalers(surveyOf([loner, one("riddle")]))).toMatchObject({
      answer: "undetermined",
      open: { reason: "missing", trait: "social.living", species: ["riddle"] },
    });
  });
});

describe("a permit", () => {
  /** Switzerland, Tierschutzverordnung (SR 455.1), Art. 89. */
  const rule = { kind: "permit", longerThan: 100, taxa: ["Potamotrygonidae"] } as const;

  test("is named for fish that may grow past a metre and for stingrays, and left open", () => {
    const catfish = {
      species: animal("catfish", { "size.adultLength": adults(80, 130) }),
      juveniles: 1,
      length: 6,
    };
    const ray = { species: inFamily(fishOfLength("ray", 30), "Potamotrygonidae"), unsexed: 1 };
    expect(permit(rule, surveyOf([catfish, ray, one("a")]))).toEqual({
      species: ["catfish", "ray"],
      answer: "undetermined",
      open: { reason: "not-given" },
    });
    expect(permit(rule, surveyOf([one("a")]))).toBeUndefined();
  });

  test("of a fish of unknown length hangs on that length", () => {
    const riddle = { species: animal("riddle"), unsexed: 1 };
    expect(permit(rule, surveyOf([riddle]))?.open).toEqual({
      reason: "missing",
      trait: "size.adultLength",
      species: ["riddle"],
    });
    const ray = { species: inFamily(fishOfLength("ray", 30), "Potamotrygonidae"), unsexed: 1 };
    expect(permit(rule, surveyOf([riddle, ray]))?.open).toEqual({ reason: "not-given" });
  });
});
