import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../../src/errors";
import { allRecords, citationsOf, recordById, sources } from "../../../src/evidence";
import {
  factAt,
  resolve,
  type SpeciesRecord,
  statementsOf,
  type TraitPath,
  traitPaths,
} from "../../../src/species";
import { hashOf } from "../../drawn";
import { someOf } from "../../runs";
import { recordOf } from "../../species/records";

const tigerBarb = recordById("puntigrus-tetrazona") as SpeciesRecord;

test("the acidity of a tiger barb is FishBase's, with ICAR beside it", () => {
  const cited = citationsOf(tigerBarb, "water.pH");
  expect(cited.map(({ by, used, source }) => [by, used, source])).toStrictEqual([
    ["fishbase", true, sources.fishbase],
    ["nbfgr", false, sources["icar-nbfgr-ganga"]],
  ]);
  for (const { by, at } of cited) expect(at).toBe(tigerBarb.sources[by]?.at);
});

test("a source read in several places stands once for each", () => {
  const places = citationsOf(tigerBarb, "water.temperature").filter(({ by }) => by === "yanar");
  const stated = statementsOf(tigerBarb, "water.temperature").filter(({ by }) => by === "yanar");
  expect(places.map(({ at }) => at)).toStrictEqual([
    ...new Set(stated.map(({ at = tigerBarb.sources.yanar?.at }) => at)),
  ]);
  expect(places.length).toBeGreaterThan(1);
});

test("fresh water that nobody measured leads to who says that it lives in fresh water", () => {
  const record = recordOf({ origin: { waters: [{ by: "study", value: "fresh" }] } });
  expect(citationsOf(record, "water.salinity")).toStrictEqual([
    { by: "study", cite: "a-study", at: "p. 4", used: true },
  ]);
});

test("a total length computed from standard length leads to whoever measured the share", () => {
  const record = recordOf({
    size: {
      adultLength: [{ by: "study", value: 8, as: "usual", measure: "SL" }],
      standardShare: [{ by: "survey", value: 0.8 }],
    },
  });
  expect(factAt(resolve(record), "size.adultLength")?.said).toStrictEqual(["study", "survey"]);
  expect(citationsOf(record, "size.adultLength").map(({ by, used }) => [by, used])).toStrictEqual([
    ["study", true],
    ["survey", true],
  ]);
});

test("whoever measured the whole fish needs no share", () => {
  const record = recordOf({
    size: {
      adultLength: [{ by: "study", value: 10, as: "usual", measure: "TL" }],
      standardShare: [{ by: "survey", value: 0.8 }],
    },
  });
  expect(citationsOf(record, "size.adultLength").map(({ by }) => by)).toStrictEqual(["study"]);
});

test("the sources of a form are told, and how each was read", () => {
  const record = recordOf({
    appearance: { longFins: [{ by: "study", value: false }] },
    forms: {
      veil: { names: { en: ["veil"] }, appearance: { longFins: [{ by: "handbook", value: true }] } },
    },
  });
  expect(citationsOf(record, "appearance.longFins")).toStrictEqual([
    { by: "study", cite: "a-study", at: "p. 4", used: true },
    { by: "handbook", cite: "a-handbook", memory: true, used: true },
  ]);
});

test("what is set aside, or only informs, stands beside and is not used", () => {
  const record = recordOf({
    water: {
      pH: [
        { by: "study", value: { min: 6, max: 7 }, as: "kept" },
        { by: "survey", value: { min: 2, max: 3 }, as: "kept", setAside: "No fish lives in it." },
        { by: "handbook", note: "Soft water." },
      ],
    },
  });
  expect(citationsOf(record, "water.pH").map(({ by, used }) => [by, used])).toStrictEqual([
    ["study", true],
    ["survey", false],
    ["handbook", false],
  ]);
});

describe.each(allRecords.map((record) => ({ id: record.id, record })))("$id", ({ record }) => {
  const profile = resolve(record);
  const own = (said: readonly string[] = []) =>
    said.filter((by) => !["common-practice", "curator"].includes(by));

  test("every value leads to the sources that its fact names, each with its reference", () => {
    for (const path of someOf(traitPaths, 8, hashOf(record.id))) {
      const cited = citationsOf(record, path).filter(({ used }) => used);
      const facts = [profile, ...Object.values(profile.forms ?? {})].map((held) => factAt(held, path));
      const said = new Set(facts.flatMap((fact) => own(fact?.said)));
      expect(new Set(cited.map(({ by }) => by)), path).toStrictEqual(said);
      for (const { cite, source, at, memory, observed } of cited) {
        expect(source?.id).toBe(cite);
        expect(Boolean(at ?? memory ?? observed)).toBe(true);
      }
    }
  });

  test("every fact names who said it, and every source of the record is cited", () => {
    for (const path of traitPaths) {
      const fact = factAt(profile, path);
      if (fact) expect(fact.said?.length, path).toBeGreaterThan(0);
    }
    const cited = citationsOf(record).map(({ by }) => by);
    expect(new Set(cited)).toStrictEqual(new Set(Object.keys(record.sources)));
  });
});

test.each([
  [undefined, "water.pH"],
  [tigerBarb, "water.colour"],
  [{ ...tigerBarb, sources: undefined }, "water.pH"],
])("what is no record, and no trait, is refused", (record, path) => {
  const call = () => citationsOf(record as SpeciesRecord, path as TraitPath);
  expect(call).toThrow(InvalidInputError);
});
