import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { recordById } from "../../../src/evidence";
import { parseSpecies } from "../../../src/schema";
import { essentialTraits, resolve, type TraitStatement } from "../../../src/species";
import { freeze } from "../freeze";
import { files, leastRecord, recordOf } from "../records";

const trade = "common-practice";
const temperatureOf = (...temperature: TraitStatement<"water.temperature">[]) =>
  resolve(recordOf({ water: { temperature } })).water?.temperature;
const lengthsOf = (...adultLength: TraitStatement<"size.adultLength">[]) =>
  resolve(recordOf({ size: { adultLength } })).size?.adultLength;

test("what a species is called stays as the record says", () => {
  const { id, taxonomy, names } = leastRecord;
  expect(resolve(recordOf({}))).toStrictEqual({ id, taxonomy, names, incomplete: essentialTraits });
});

describe("which of several statements counts", () => {
  type Height = TraitStatement<"space.height">;
  const heightOf = (...height: Height[]) => resolve(recordOf({ space: { height } })).space?.height;
  const ranked: readonly Height[] = [
    { by: "letter", value: 31, adopt: "Seen in many tanks." },
    { by: "study", value: 32 },
    { by: "curator", value: 33, note: "Weighed." },
    { by: "keeper", value: 34 },
    { by: "handbook", value: 35 },
    { by: trade, value: 36 },
    { by: "survey", value: 37, estimate: true },
  ];

  test.each([
    ["one adopted before one read", 0, "memory", [32, 33, 34, 35, 36, 37]],
    ["one read before one weighed by the curator", 1, "published", [33, 34, 35, 36, 37]],
    ["one weighed before one a keeper observed", 2, "curated", [34, 35, 36, 37]],
    ["one observed before one recalled", 3, "observed", [35, 36, 37]],
    ["one recalled before the word of the trade", 4, "memory", [36, 37]],
    ["the word of the trade before an estimate", 5, trade, [37]],
    ["an estimate where there is nothing else", 6, "derived", undefined],
  ] as const)("%s", (_, best, basis, also) => {
    const { value, by = "" } = ranked[best] ?? {};
    expect(heightOf(...ranked.slice(best).reverse())).toStrictEqual({
      value,
      basis,
      said: [by],
      ...(also && { also }),
    });
  });

  test("the figure of a relative stands in only where there is nothing better, whoever printed it", () => {
    expect(heightOf({ by: "relative", value: 40 }, { by: trade, value: 36 })).toStrictEqual({
      value: 36,
      basis: trade,
      said: [trade],
      also: [40],
    });
    expect(heightOf({ by: "relative", value: 40 })).toMatchObject({ value: 40, basis: "derived" });
  });

  test("of two that agree the source whose key sorts first, whichever stands first", () => {
    const [study, survey] = [
      { by: "study", value: 40 },
      { by: "survey", value: 40 },
    ];
    for (const height of [heightOf(study, survey), heightOf(survey, study)])
      expect(height).toStrictEqual({ value: 40, basis: "published", said: ["study"] });
  });

  test("of two of equal rank that no parser saw the source whose key sorts first too", () => {
    const height = [
      { by: "survey", value: 60 },
      { by: "study", value: 40 },
    ];
    const record = {
      ...leastRecord,
      sources: { study: { cite: "a" }, survey: { cite: "b" } },
      space: { height },
    };
    expect(resolve(record).space?.height).toMatchObject({ value: 40, also: [60] });
  });

  test("one that is set aside neither counts nor stands beside", () => {
    expect(
      heightOf({ by: "study", value: 300, setAside: "Of a public aquarium." }, { by: trade, value: 36 }),
    ).toStrictEqual({ value: 36, basis: trade, said: [trade] });
  });

  test("where all are set aside, or there is only a note, the trait is unknown", () => {
    expect(heightOf({ by: "study", value: 300, setAside: "Of a public aquarium." })).toBeUndefined();
    const regions = [{ by: "study", value: "Bengal", setAside: "A mix-up." }];
    expect(resolve(recordOf({ origin: { regions } })).origin).toBeUndefined();
    const cover = [{ by: "study", note: "Hides when young." }];
    expect(resolve(recordOf({ space: { cover } })).space).toBeUndefined();
  });

  test("no is another value as well as yes, and none as well as some", () => {
    const digs = [
      { by: "study", value: true },
      { by: trade, value: false },
    ];
    expect(resolve(recordOf({ effects: { digs } })).effects?.digs?.also).toStrictEqual([false]);
    const femalesPerMale = [
      { by: "study", value: 2 },
      { by: trade, value: 0 },
    ];
    expect(resolve(recordOf({ social: { femalesPerMale } })).social?.femalesPerMale?.also).toStrictEqual([0]);
  });

  test("sources that copy from one another count once", () => {
    expect(
      heightOf(
        { by: "mirror", value: 37, adopt: "The copy has the later figure." },
        { by: "study", value: 34 },
        { by: trade, value: 36 },
      ),
    ).toStrictEqual({ value: 37, basis: "published", said: ["mirror"], also: [36] });
  });
});

describe("units become the trait's own", () => {
  // 1 in = 2.54 cm, International Yard and Pound Agreement of 1959; °C = (°F - 32) × 5/9; 1 m² = 10000 cm².
  test("degrees Fahrenheit within a range, on one side too", () => {
    expect(
      temperatureOf({ by: trade, value: { min: 68, max: 77 }, unit: "degF", as: "kept" })?.value.kept,
    ).toEqual({
      min: expect.closeTo(20, 9),
      max: expect.closeTo(25, 9),
    });
    expect(temperatureOf({ by: trade, value: { max: 77 }, unit: "degF", as: "kept" })?.value.kept).toEqual({
      max: expect.closeTo(25, 9),
    });
  });

  test("inches, and square metres", () => {
    const length = { by: trade, value: 4, unit: "in", as: "usual", measure: "TL" } as const;
    expect(lengthsOf(length)?.value[0]?.length).toBeCloseTo(10.16, 9);
    const territory = { area: 0.25, zone: "bottom", holder: "pair" } as const;
    const space = { territory: [{ by: trade, value: territory, unit: "m2" }] };
    expect(resolve(recordOf({ space })).space?.territory?.value).toEqual({
      ...territory,
      area: expect.closeTo(2500, 9),
    });
  });

  test("the length of prey", () => {
    const eats = [{ by: trade, value: { prey: "fish", greatest: 1.5 }, unit: "in" }] as const;
    expect(resolve(recordOf({ predation: { eats } })).predation?.eats?.value).toEqual([
      { prey: "fish", greatest: expect.closeTo(3.81, 9) },
    ]);
  });

  test("the size for a group, not the number of the group", () => {
    const baseLength = [{ by: trade, value: { least: 24, for: 6 }, unit: "in" }];
    expect(resolve(recordOf({ space: { baseLength } })).space?.baseLength?.value).toEqual([
      { least: expect.closeTo(60.96, 9), for: 6 },
    ]);
  });

  test("a source in other units that says the same still gives another value only if it differs", () => {
    const inCelsius = { by: "study", value: { min: 20, max: 25 }, as: "kept" } as const;
    const inFahrenheit = { by: trade, value: { min: 68, max: 86 }, unit: "degF", as: "kept" } as const;
    expect(temperatureOf(inCelsius, inFahrenheit)?.also).toEqual([
      { kept: { min: expect.closeTo(20, 9), max: expect.closeTo(30, 9) } },
    ]);
  });
});

describe("figures of water", () => {
  const kept = { by: "study", value: { min: 20, max: 26 }, as: "kept" } as const;
  const optimum = { by: "study", value: { min: 23, max: 25 }, as: "optimum" } as const;
  const limit = { by: "study", value: { min: 10, max: 36 }, as: "limit" } as const;

  test("stand side by side by what they mean", () => {
    expect(temperatureOf(limit, kept, optimum)?.value).toStrictEqual({
      kept: kept.value,
      optimum: optimum.value,
      limit: limit.value,
    });
  });

  test("without a span to keep it in the optimum stands in, and says so", () => {
    expect(temperatureOf(limit, optimum)?.value).toStrictEqual({
      kept: optimum.value,
      standIn: true,
      optimum: optimum.value,
      limit: limit.value,
    });
    expect(temperatureOf(kept, optimum)?.value).not.toHaveProperty("standIn");
  });

  test.each(["tolerated", "limit", "wild", "tested"] as const)("%s alone says nothing on keeping", (as) => {
    expect(temperatureOf({ by: "study", value: { min: 20, max: 26 }, as })).toBeUndefined();
  });

  test("what holds for fry does not hold for grown animals", () => {
    expect(temperatureOf({ ...kept, stage: "fry" })).toBeUndefined();
    expect(temperatureOf({ ...kept, value: { min: 28, max: 30 }, stage: "fry" }, kept)?.value).toStrictEqual({
      kept: kept.value,
    });
  });

  test("grown animals are meant with and without saying so", () => {
    const stage = { by: trade, value: { min: 18, max: 28 }, as: "kept", stage: "adult" } as const;
    expect(temperatureOf(kept, stage)).toStrictEqual(temperatureOf(stage, kept));
    expect(temperatureOf(kept, stage)).toStrictEqual({
      value: { kept: kept.value },
      basis: "published",
      said: ["study"],
      also: [{ kept: stage.value }],
    });
  });

  test("other values change one meaning at a time, and all that one source says together", () => {
    const other = { by: "handbook", value: { min: 18, max: 26 }, as: "kept" } as const;
    const past = { by: "handbook", value: { min: 8, max: 40 }, as: "limit" } as const;
    expect(temperatureOf(kept, other, limit, past)?.also).toStrictEqual([
      { kept: other.value, limit: limit.value },
      { kept: kept.value, limit: past.value },
      { kept: other.value, limit: past.value },
    ]);
  });

  test("what was measured in the wild or in a laboratory gives no other value", () => {
    const wild = { by: "study", value: { min: 15, max: 30 }, as: "wild" } as const;
    const tested = { by: "study", value: { min: 28 }, as: "tested", endpoint: "growth" } as const;
    const temperature = temperatureOf(kept, wild, { ...wild, by: "survey", value: { min: 9 } }, tested, {
      ...tested,
      by: "survey",
      value: { max: 24 },
    });
    expect(temperature?.value).toMatchObject({ kept: kept.value, wild: wild.value });
    expect(temperature).not.toHaveProperty("also");
  });

  test("an optimum that stands in for the span to keep it in is derived", () => {
    expect(temperatureOf(limit, optimum)?.basis).toBe("derived");
    expect(temperatureOf(optimum)?.said).toStrictEqual(["study"]);
  });

  test("the basis is the weakest of what decides", () => {
    expect(temperatureOf(kept, { ...limit, by: "handbook" })?.basis).toBe("memory");
    expect(temperatureOf(kept, { ...limit, by: trade })?.basis).toBe(trade);
    expect(temperatureOf(kept, { ...limit, by: trade, as: "wild" })?.basis).toBe("published");
    expect(temperatureOf(kept, { ...limit, by: trade, stage: "egg" })?.basis).toBe("published");
  });

  test("a goldfish alive at 40 °C is still a cool-water fish", () => {
    const record = recordById("carassius-auratus");
    const stated = record?.water?.temperature?.map(({ value }) => value?.max ?? 0) ?? [];
    expect(Math.max(...stated)).toBeGreaterThan(38);
    const temperature = record && resolve(record).water?.temperature;
    const spans = [temperature?.value, ...(temperature?.also ?? [])].map((figures) => figures?.kept.max);
    expect(Math.max(...spans.map((max) => max ?? 99))).toBeLessThan(28);
  });
});

describe("fresh water", () => {
  const waters = (...kinds: ("fresh" | "brackish")[]) => ({
    waters: kinds.map((value) => ({ by: trade, value })),
  });
  const salinityOf = (stated: Parameters<typeof recordOf>[0]) => resolve(recordOf(stated)).water?.salinity;

  test("without a figure holds up to 0.5 g/kg of salt", () => {
    // Venice System, 1958: fresh water ends at 0.5 ‰.
    expect(salinityOf({ origin: waters("fresh") })).toStrictEqual({
      value: { kept: { min: 0, max: 0.5 } },
      basis: "derived",
      said: [trade],
    });
  });

  test("gives way to a figure", () => {
    const salinity = [{ by: "study", value: { max: 5 }, as: "kept" }] as const;
    expect(salinityOf({ origin: waters("fresh"), water: { salinity } })?.value).toStrictEqual({
      kept: { max: 5 },
    });
  });

  test("says nothing on a species of brackish water too, nor where waters are unknown", () => {
    expect(salinityOf({ origin: waters("fresh", "brackish") })).toBeUndefined();
    expect(salinityOf({})).toBeUndefined();
  });
});

describe("lengths", () => {
  const usual = { by: "study", as: "usual", measure: "TL" } as const;

  test("stand side by side by sex, meaning and what was measured", () => {
    const lengths = lengthsOf(
      { ...usual, value: 4, sex: "male" },
      { ...usual, value: 5, sex: "female" },
      { ...usual, value: 6, as: "greatest" },
      { ...usual, value: 5.1, as: "greatest", measure: "SL" },
    );
    expect(lengths?.value).toMatchObject([
      { length: 4, sex: "male", as: "usual", measure: "TL" },
      { length: 5, sex: "female", as: "usual", measure: "TL" },
      { length: 6, as: "greatest", measure: "TL" },
      { length: 5.1, as: "greatest", measure: "SL" },
    ]);
    expect(lengths?.value[2]).not.toHaveProperty("sex");
  });

  test("other values change one of them", () => {
    const lengths = lengthsOf(
      { ...usual, value: 4, sex: "male" },
      { ...usual, value: 5, sex: "female" },
      { ...usual, by: trade, value: 7, sex: "female" },
    );
    expect(lengths?.also?.map((list) => list.map(({ length }) => length))).toStrictEqual([[4, 7]]);
    expect(lengths?.basis).toBe("published");
  });

  test("are derived where nobody measured the total length of a sex and meaning", () => {
    const standard = { ...usual, measure: "SL", value: 4 } as const;
    expect(lengthsOf(standard)?.basis).toBe("derived");
    expect(lengthsOf({ ...usual, measure: "unstated", value: 4 })?.basis).toBe("derived");
    expect(lengthsOf(standard, { ...usual, value: 5 })?.basis).toBe("published");
    expect(lengthsOf(standard, { ...usual, value: 5, sex: "male" })?.basis).toBe("derived");
    expect(lengthsOf(standard, { ...usual, value: 6, as: "greatest" })?.basis).toBe("derived");
    expect(lengthsOf({ ...usual, measure: "shell", value: 4 })?.basis).toBe("published");
  });

  test("make totals by the species' own share of standard length, where a source gives it", () => {
    const record = recordOf({
      size: {
        standardShare: [{ by: "study", value: 0.5 }],
        adultLength: [{ by: "study", as: "usual", measure: "SL", value: 4 }],
      },
    });
    expect(resolve(record).size?.adultLength?.value[0]?.total).toStrictEqual({ min: 8, max: 8 });
  });
});

describe("least rooms and ages", () => {
  test("a room is stated for several numbers of animals, the fewest first", () => {
    const baseLength = [
      { by: "study", value: { least: 120, for: 6 } },
      { by: "handbook", value: { least: 60, for: 1 } },
      { by: trade, value: { least: 80, for: 1 } },
    ];
    expect(resolve(recordOf({ space: { baseLength } })).space?.baseLength).toStrictEqual({
      value: [
        { least: 60, for: 1 },
        { least: 120, for: 6 },
      ],
      basis: "memory",
      said: ["study", "handbook"],
      also: [
        [
          { least: 80, for: 1 },
          { least: 120, for: 6 },
        ],
      ],
    });
  });

  test("an age is usual or the greatest on record", () => {
    const lifespan = [
      { by: "study", value: 5.5, as: "greatest" },
      { by: trade, value: 3, as: "usual" },
      { by: "survey", value: 730.5, unit: "d", as: "usual", adopt: "Counted in many tanks." },
    ] as const;
    // A Julian year has 365.25 days.
    expect(resolve(recordOf({ size: { lifespan } })).size?.lifespan).toStrictEqual({
      value: { greatest: 5.5, usual: 2 },
      basis: "published",
      said: ["study", "survey"],
      also: [{ greatest: 5.5, usual: 3 }],
    });
  });
});

describe("traits whose statements add up", () => {
  const chases = { does: "chases", target: "own-kind" } as const;
  const nips = { does: "nips-fins", target: "long-finned" } as const;
  const actsOf = (...acts: TraitStatement<"temperament.acts">[]) =>
    resolve(recordOf({ temperament: { acts } })).temperament?.acts;

  test("hold what all sources said, once, on the weakest basis, and dispute nothing", () => {
    expect(
      actsOf(
        { by: "study", value: chases },
        { by: "handbook", value: nips },
        { by: "survey", value: chases },
      ),
    ).toStrictEqual({
      value: [chases, nips],
      basis: "memory",
      said: ["study", "handbook", "survey"],
    });
  });

  test("hold several statements of one source", () => {
    expect(actsOf({ by: "study", value: chases }, { by: "study", value: nips })?.value).toStrictEqual([
      chases,
      nips,
    ]);
  });

  test('are empty where "none" is said, and unknown where nothing is', () => {
    expect(actsOf({ by: "study", value: "none" })).toStrictEqual({
      value: [],
      basis: "published",
      said: ["study"],
    });
    expect(resolve(recordOf({})).temperament).toBeUndefined();
  });

  test("leave out what is set aside", () => {
    expect(
      actsOf({ by: "study", value: chases, setAside: "Another species." }, { by: trade, value: "none" }),
    ).toStrictEqual({ value: [], basis: trade, said: [trade] });
  });
});

describe("forms", () => {
  const usual = { by: "study", as: "usual", measure: "TL" } as const;
  const names = { en: ["veil danio"] };
  const formOf = (...[species, form]: Parameters<typeof recordOf>[0][]) =>
    resolve(recordOf({ ...species, forms: { veil: { names, ...form } } })).forms?.veil;

  test("carry the traits they state and no others", () => {
    const lifespan = [{ by: trade, value: 5, as: "usual" }] as const;
    const longFins = [{ by: trade, value: true }];
    expect(formOf({ size: { lifespan } }, { appearance: { longFins } })).toStrictEqual({
      names,
      appearance: { longFins: { value: true, basis: trade, said: [trade] } },
    });
  });

  test("replace the groups they state and keep the others of the trait", () => {
    const species = [
      { ...usual, value: 4, sex: "male" as const },
      { ...usual, value: 5, sex: "female" as const },
    ];
    const form = formOf(
      { size: { adultLength: species } },
      { size: { adultLength: [{ ...usual, by: trade, value: 3, sex: "male" }] } },
    );
    expect(form?.size?.adultLength?.value.map(({ sex, length }) => [sex, length])).toStrictEqual([
      ["male", 3],
      ["female", 5],
    ]);
    expect(form?.size?.adultLength).toMatchObject({ basis: trade });
    expect(form?.size?.adultLength).not.toHaveProperty("also");
  });

  test("replace what adds up as a whole", () => {
    const looks = (tag: "upright-bars" | "red-body" | "trailing-fins") => ({ by: trade, value: { tag } });
    const form = formOf(
      { appearance: { looks: [looks("upright-bars"), looks("red-body")] } },
      { appearance: { looks: [looks("trailing-fins")] } },
    );
    expect(form?.appearance?.looks?.value).toStrictEqual([{ tag: "trailing-fins" }]);
  });
});

describe("whatever the record", () => {
  const groups = [{ as: "wild" }, { as: "tested" }, { as: "kept" }, { as: "kept", stage: "fry" }] as const;
  const ranks = [
    { by: "letter", adopt: "Long practice." },
    { by: "study" },
    { by: "curator", note: "Weighed." },
    { by: "handbook" },
    { by: trade },
  ];

  /** Statements on a temperature, at most one of each rank in a group, so that no two are equal in rank. */
  const temperatures = fc.subarray(
    ranks
      .flatMap((rank) => groups.map((group) => ({ ...rank, ...group })))
      .map((statement, index) => ({ ...statement, value: { min: 10 + index / 4, max: 30 } })),
    { minLength: 1 },
  );
  const shuffled = <Item>(list: Item[]) => fc.shuffledSubarray(list, { minLength: list.length });

  /** The fact with its other values as a set, so that their order does not matter. */
  const standing = (temperature: Parameters<typeof temperatureOf>) => {
    const fact = temperatureOf(...temperature);
    return fact && { ...fact, also: new Set(fact.also) };
  };

  test("the order of its statements does not change which stand", () => {
    fc.assert(
      fc.property(
        temperatures.chain((list) => fc.tuple(fc.constant(list), shuffled(list))),
        ([list, otherwise]) => {
          expect(standing(otherwise)).toEqual(standing(list));
        },
      ),
    );
  });

  test("a statement more that is set aside changes nothing", () => {
    fc.assert(
      fc.property(temperatures, fc.constantFrom(...groups), fc.nat(), (list, group, number) => {
        const aside = { ...group, by: "survey", value: { min: 1, max: 9 }, setAside: "An outlier." };
        const where = number % (list.length + 1);
        expect(temperatureOf(...list.slice(0, where), aside, ...list.slice(where))).toStrictEqual(
          temperatureOf(...list),
        );
      }),
    );
  });

  test("resolving changes nothing in it", () => {
    for (const { json } of files) {
      const record = freeze(parseSpecies(json));
      expect(resolve(record)).toStrictEqual(resolve(structuredClone(record)));
    }
  });
});
