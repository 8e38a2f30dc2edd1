import { describe, expect, test } from "vitest";
import { recordById } from "vivary/evidence";
import type { SpeciesRecord } from "../../../src/species";
import { statementsFor } from "../../../src/species/record/statements-for";

const told = (id: string, form: string | undefined, path: Parameters<typeof statementsFor>[2]) =>
  statementsFor(recordById(id) as SpeciesRecord, form, path);

describe("what is said of a form", () => {
  test("stands in place of what its species is said to be: a fancy goldfish winters in no pond", () => {
    const kept = (form?: string) =>
      told("carassius-auratus", form, "water.temperature").flatMap(({ as, value }) =>
        as === "kept" ? [value] : [],
      );
    expect(kept()).toStrictEqual([{ min: 4, max: 24 }]);
    expect(kept("oranda")).toStrictEqual([{ min: 16, max: 24 }]);
  });

  test("of deeds, replaces them all", () => {
    const deeds = (form?: string) =>
      told("pethia-conchonius", form, "temperament.acts").map(({ value }) => value);
    expect(deeds()).toContainEqual({ does: "nips-fins", target: "long-finned" });
    expect(deeds("long-fin")).toStrictEqual([{ does: "chases", target: "own-kind" }]);
  });

  test("leaves the rest, and lines without a value, as they are", () => {
    const species = told("carassius-auratus", undefined, "water.temperature");
    const form = told("carassius-auratus", "oranda", "water.temperature");
    const optimum = species.filter(({ as }) => as === "optimum");
    expect(form).toStrictEqual(expect.arrayContaining(optimum));
    const wild = told("danio-rerio", undefined, "water.flow").filter(({ value }) => value === undefined);
    expect(wild.length).toBeGreaterThan(0);
    expect(told("danio-rerio", "long-fin", "water.flow")).toStrictEqual(expect.arrayContaining(wild));
  });

  test("replaces nothing by a line that was set aside, or that says nothing", () => {
    const record = {
      ...(recordById("danio-rerio") as SpeciesRecord),
      social: { living: [{ by: "a", value: "shoal" }] },
      forms: {
        doubtful: { names: {}, social: { living: [{ by: "b", value: "alone", setAside: "A slip." }] } },
        noted: { names: {}, social: { living: [{ by: "b", note: "As its species." }] } },
      },
    } satisfies SpeciesRecord;
    for (const form of ["doubtful", "noted"])
      expect(statementsFor(record, form, "social.living").map(({ by }) => by)).toStrictEqual(["b", "a"]);
  });

  test("is what the species is said to be, where there is no such form", () => {
    for (const form of ["unheard-of", "constructor"])
      expect(told("danio-rerio", form, "social.living")).toStrictEqual(
        told("danio-rerio", undefined, "social.living"),
      );
  });
});
