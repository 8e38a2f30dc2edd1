import { describe, expect, test } from "vitest";
import { allRecords } from "../../../src/evidence";
import {
  type Basis,
  bases,
  basisOf,
  type Fact,
  type Facts,
  factAt,
  resolve,
  type SpeciesProfile,
  type SpeciesRecord,
  type TraitPath,
  traitPaths,
} from "../../../src/species";
import { traitDefinitions } from "../../../src/species/inner";
import { someNamed } from "../../drawn";
import { seedOf } from "../../runs";
import { recordOf } from "../records";

const records = someNamed(allRecords, ({ id }) => id, 50, seedOf(0));
const trade = "common-practice";

/** Every fact of a profile and of its forms, with its trait. */
const factsOf = (profile: SpeciesProfile): readonly (readonly [TraitPath, Fact<unknown>])[] =>
  [profile, ...Object.values(profile.forms ?? {})].flatMap((facts: Facts) =>
    traitPaths.flatMap((path) => {
      const fact = factAt(facts, path);
      return fact ? [[path, fact] as const] : [];
    }),
  );
const entriesOf = (only: { bases?: readonly Basis[]; commercial?: boolean }) =>
  records.flatMap((record) =>
    factsOf(resolve(record, { only })).map(([path, fact]) => ({ record, path, fact })),
  );

const sets: readonly (readonly [string, readonly Basis[]])[] = [
  ["only what was read", ["published"]],
  ["only what was read or blended from it", ["published", "curated"]],
  ["only what was read, and what follows from it", ["published", "derived"]],
  ["all that needs no recollection", ["published", "curated", "observed", "common-practice", "derived"]],
  ["only the word of the trade", [trade]],
  ["only what was recalled", ["memory"]],
  ["nothing", []],
];

describe.each(sets)("asked for %s", (_, wanted) => {
  const entries = entriesOf({ bases: wanted });

  test("there are facts to look at, unless nothing was asked for", () => {
    expect(entries.length > 0).toBe(wanted.length > 0);
  });

  test("every fact of the catalog has one of those bases", () => {
    for (const { record, path, fact } of entries)
      expect(wanted, `${record.id}, ${path}`).toContain(fact.basis);
  });

  test("no fact comes from a source of another one", () => {
    for (const { record, path, fact } of entries) {
      for (const by of fact.said ?? []) {
        const basis = basisOf({ by }, record.sources);
        expect(wanted, `${record.id}, ${path} by ${by}`).toContain(basis);
      }
    }
  });

  test("each trait that is essential and not left is named as missing, and no other", () => {
    for (const record of records) {
      const profile = resolve(record, { only: { bases: wanted } });
      const lacking = traitPaths.filter(
        (path) => traitDefinitions[path].essential && factAt(profile, path) === undefined,
      );
      expect([...(profile.incomplete ?? [])].sort(), record.id).toEqual([...lacking].sort());
    }
  });
});

test("the whole of a record is what is asked for where nothing is", () => {
  for (const record of records.slice(0, 20)) {
    expect(resolve(record, { only: { bases } })).toStrictEqual(resolve(record));
    expect(resolve(record, { only: {} })).toStrictEqual(resolve(record));
    expect(resolve(record, { only: { commercial: false } })).toStrictEqual(resolve(record));
  }
});

describe("without what is derived", () => {
  const profile = (record: SpeciesRecord) => resolve(record, { only: { bases: ["published", trade] } });

  test("no total length is computed", () => {
    const lengths = [
      { by: "study", value: 4, as: "usual", measure: "SL" },
      { by: trade, value: 5, as: "usual", measure: "unstated" },
    ] as const;
    const whole = { by: "study", value: 6, as: "greatest", measure: "TL" } as const;
    expect(profile(recordOf({ size: { adultLength: lengths } })).size).toBeUndefined();
    expect(profile(recordOf({ size: { adultLength: [...lengths, whole] } })).size?.adultLength).toMatchObject(
      { value: [{ length: 6, measure: "TL" }], basis: "published" },
    );
  });

  test("no optimum stands in, no water is taken for fresh, no form is spared a current", () => {
    const record = recordOf({
      origin: { waters: [{ by: "study", value: "fresh" }] },
      water: {
        temperature: [{ by: "study", value: { min: 22, max: 24 }, as: "optimum" }],
        flow: [{ by: "study", value: { min: "still", max: "strong" } }],
      },
      forms: {
        veil: { names: { en: ["veil danio"] }, appearance: { longFins: [{ by: "study", value: true }] } },
      },
    });
    const { water, forms, incomplete } = profile(record);
    expect(water?.temperature).toBeUndefined();
    expect(water?.salinity).toBeUndefined();
    expect(forms?.veil?.water).toBeUndefined();
    expect(incomplete).toContain("water.temperature");
    expect(resolve(record).water).toMatchObject({
      temperature: { basis: "derived" },
      salinity: { basis: "derived" },
    });
  });

  test("neither an estimate nor the figure of a relative counts", () => {
    const height = [
      { by: "study", value: 40, estimate: true as const },
      { by: "relative", value: 50 },
      { by: trade, value: 30 },
    ];
    expect(profile(recordOf({ space: { height } })).space?.height).toStrictEqual({
      value: 30,
      basis: trade,
      said: [trade],
    });
  });
});

test("what is left out leaves the next best, and no other value of what is left out", () => {
  const height = [
    { by: "study", value: 40 },
    { by: "handbook", value: 50 },
    { by: trade, value: 30 },
  ];
  const record = recordOf({ space: { height } });
  expect(resolve(record, { only: { bases: [trade, "memory"] } }).space?.height).toStrictEqual({
    value: 50,
    basis: "memory",
    said: ["handbook"],
    also: [30],
  });
});

describe("for commercial use", () => {
  const free: SpeciesRecord = {
    ...recordOf({ space: { height: [{ by: trade, value: 30 }] } }),
    sources: {
      open: { cite: "an-open-paper", at: "p. 1", commercial: true },
      closed: { cite: "a-database", at: "row 1", commercial: false },
      silent: { cite: "a-letter", at: "p. 2" },
    },
  };
  const heightBy = (...by: string[]) =>
    resolve(
      { ...free, space: { height: by.map((key, index) => ({ by: key, value: 40 + index })) } },
      { only: { commercial: true } },
    ).space?.height;

  test("sources whose licence leaves it free count, and the word of the trade", () => {
    expect(heightBy("closed", "open")).toMatchObject({ value: 41, said: ["open"] });
    expect(heightBy("closed", trade)).toMatchObject({ value: 41, said: [trade] });
  });

  test("a source that does not say so is left out, and what a curator blended", () => {
    for (const by of ["closed", "silent", "curator", "constructor"]) expect(heightBy(by)).toBeUndefined();
    expect(heightBy("open", "closed")).not.toHaveProperty("also");
  });

  test("no value of the catalog rests on FishBase, or on another source that forbids it", () => {
    const entries = entriesOf({ commercial: true });
    expect(entries.length).toBeGreaterThan(1000);
    for (const { record, path, fact } of entries) {
      for (const by of fact.said ?? []) {
        if (by === trade) continue;
        const source = record.sources[by];
        expect(source?.commercial, `${record.id}, ${path} by ${by}`).toBe(true);
        expect([source?.cite, source?.root], `${record.id}, ${path} by ${by}`).not.toContain("fishbase");
      }
    }
  });

  test("some would, if it were not asked for", () => {
    const all = entriesOf({});
    const resting = all.filter(({ record, fact }) =>
      fact.said?.some((by) => record.sources[by]?.cite === "fishbase"),
    );
    expect(resting.length).toBeGreaterThan(50);
  });
});
