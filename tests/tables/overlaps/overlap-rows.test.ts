import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { speciesById } from "../../../src/catalog";
import { InvalidInputError } from "../../../src/errors";
import { recordById } from "../../../src/evidence";
import type { PartialRange } from "../../../src/ranges";
import { applyForm, type FigurePath, resolve, type SpeciesProfile } from "../../../src/species";
import { type OverlapMeasure, type OverlapRow, overlapRows } from "../../../src/tables";
import { someSpecies } from "../../drawn";
import { partialRanges } from "../../ranges/arbitrary";
import { runs } from "../../runs";

type Spans = readonly [PartialRange, ...PartialRange[]];

/** A species kept in the first of the spans of each trait, while other sources support the others. */
function species(id: string, water: Readonly<Record<string, Spans>>): SpeciesProfile {
  const facts = Object.entries(water).map(([name, [kept, ...others]]) => [
    name,
    {
      value: { kept },
      basis: "published",
      ...(others.length > 0 && { also: others.map((other) => ({ kept: other })) }),
    },
  ]);
  const taxonomy = { name: id, authority: "", family: "", order: "", kind: "fish" } as const;
  return { id, taxonomy, names: {}, water: Object.fromEntries(facts) };
}

const of = (rows: readonly OverlapRow[], axis: OverlapRow["axis"], measure = "jaccard") =>
  rows.find((row) => row.axis === axis && row.measure === measure);

const temperature = "water.temperature";
const pH = "water.pH";
const hardness = "water.generalHardness";

describe("rows", () => {
  const three = ["danio-rerio", "puntigrus-tetrazona", "pterophyllum-scalare"].flatMap(
    (id) => speciesById(id) ?? [],
  );

  test("are one for each pair, axis and measure, and one for the box", () => {
    const rows = overlapRows(three, { axes: [temperature, pH], measures: ["jaccard", "schoener"] });
    expect(rows).toHaveLength(3 * 3 * 2);
    expect(new Set(rows.map(({ overlapID }) => overlapID)).size).toBe(rows.length);
  });

  test("have no box where one axis is asked for", () => {
    const rows = overlapRows(three, { axes: [temperature], measures: ["jaccard"] });
    expect(rows.map(({ axis }) => axis)).toStrictEqual([temperature, temperature, temperature]);
  });

  test("tell both shares of containment, each in its own row", () => {
    const wide = species("wide", { temperature: [{ min: 20, max: 30 }] });
    const narrow = species("narrow", { temperature: [{ min: 24, max: 26 }] });
    const rows = overlapRows([wide, narrow], { axes: [temperature], measures: ["containment"] });
    expect(rows.map(({ taxonID, value }) => [taxonID, value])).toStrictEqual([
      ["wide", 0.2],
      ["narrow", 1],
    ]);
  });

  test("compare on the axes that both have, and say which", () => {
    const known = species("known", { temperature: [{ min: 20, max: 30 }], pH: [{ min: 6, max: 7 }] });
    const half = species("half", { temperature: [{ min: 25, max: 30 }] });
    const rows = overlapRows([known, half], { axes: [temperature, pH], measures: ["jaccard"] });
    expect(rows.map(({ axis, axes, value }) => [axis, axes, value])).toStrictEqual([
      [temperature, temperature, 0.5],
      ["box", temperature, 0.5],
    ]);
    const none = species("none", {});
    expect(overlapRows([known, none], { axes: [temperature, pH], measures: ["jaccard"] })).toStrictEqual([]);
  });

  test("say what two share, or how far they lie apart", () => {
    const cool = species("cool", { temperature: [{ min: 14, max: 18 }] });
    const warm = species("warm", { temperature: [{ min: 24, max: 28 }] });
    const mild = species("mild", { temperature: [{ min: 17, max: 25 }] });
    const rows = overlapRows([cool, warm, mild], { axes: [temperature], measures: ["jaccard"] });
    expect(rows.map(({ sharedMin, sharedMax, gap }) => [sharedMin, sharedMax, gap])).toStrictEqual([
      [null, null, 6],
      [17, 18, null],
      [24, 25, null],
    ]);
  });

  test("of a box tell no span that is shared, since it has one on each axis", () => {
    const cool = species("cool", { temperature: [{ min: 14, max: 18 }], pH: [{ min: 6, max: 7 }] });
    const warm = species("warm", { temperature: [{ min: 17, max: 28 }], pH: [{ min: 7.5, max: 8 }] });
    const rows = overlapRows([cool, warm], { axes: [temperature, pH], measures: ["jaccard"] });
    expect(
      rows.map(({ axis, sharedMin, sharedMax, gap }) => [axis, sharedMin, sharedMax, gap]),
    ).toStrictEqual([
      [temperature, 17, 18, null],
      [pH, null, null, 0.5],
      ["box", null, null, null],
    ]);
  });

  test("have no dust of the binary system in them", () => {
    const sour = species("sour", {
      pH: [
        { min: 5.8, max: 6.8 },
        { min: 5.6, max: 6.6 },
      ],
    });
    const sweet = species("sweet", { pH: [{ min: 7, max: 8.1 }] });
    const mild = species("mild", { pH: [{ min: 6.6, max: 7.6 }] });
    const measures = ["schoener", "containment"] as const;
    const rows = overlapRows([sour, sweet, mild], { axes: [pH], measures });
    expect(rows.find(({ overlapID }) => overlapID.startsWith("sour/sweet"))?.gap).toBe(0.2);
    expect(rows.find(({ overlapID }) => overlapID === `sour/mild/${pH}/schoener`)?.value).toBe(0.2);
    for (const row of rows) {
      for (const cell of Object.values(row).filter((cell) => typeof cell === "number"))
        expect(String(cell).length, row.overlapID).toBeLessThan(15);
    }
  });

  test("name the form of a profile that has one applied", () => {
    const barb = speciesById("puntigrus-tetrazona");
    if (!barb) throw new Error("The tiger barb is not in the catalog.");
    const rows = overlapRows([barb, applyForm(barb, "long-fin")], {
      axes: [temperature],
      measures: ["jaccard"],
    });
    expect(rows.map(({ form, otherForm, value }) => [form, otherForm, value])).toStrictEqual([
      [null, "long-fin", 1],
    ]);
  });
});

describe("an end that nobody states", () => {
  const soft = species("soft", { generalHardness: [{ max: 8 }], pH: [{ max: 7 }] });
  const hard = species("hard", { generalHardness: [{ min: 4, max: 16 }], pH: [{ min: 6, max: 8 }] });
  const rows = overlapRows([soft, hard], { axes: [hardness, pH], measures: ["jaccard"] });

  test("is the floor of a trait that has one", () => {
    expect(of(rows, hardness)?.value).toBe(4 / 16);
  });

  test("leaves the measure without a value on other axes, and with them the box", () => {
    expect(of(rows, pH)).toMatchObject({ value: null, least: null, withoutValue: 1 });
    expect(of(rows, "box")?.value).toBeNull();
  });

  test("leaves a box apart where one axis is", () => {
    const sour = species("sour", { generalHardness: [{ max: 2 }], pH: [{ max: 7 }] });
    const apart = overlapRows([sour, hard], { axes: [hardness, pH], measures: ["jaccard"] });
    expect(of(apart, "box")?.value).toBe(0);
  });
});

describe("bounds and the span that moves most", () => {
  const spans = fc.uniqueArray(partialRanges, { minLength: 1, maxLength: 3, selector: JSON.stringify });
  const profiles = fc.record({ temperature: spans, pH: spans });
  const axes: readonly FigurePath[] = [temperature, pH];
  type Choice = Readonly<Record<"temperature" | "pH", PartialRange>>;

  /** Every choice of one span for each trait, the adopted one first. */
  const choicesOf = (
    given: Readonly<Record<"temperature" | "pH", readonly PartialRange[]>>,
  ): readonly Choice[] =>
    given.temperature.flatMap((temperature) => given.pH.map((pH) => ({ temperature, pH })));

  const known = (id: string, water: Readonly<Record<string, readonly PartialRange[]>>) =>
    species(id, water as Readonly<Record<string, Spans>>);

  /** The measure by one choice of spans, by itself. */
  function measuredAlone(measure: OverlapMeasure, a: Choice, b: Choice): number | null {
    const alone = (id: string, { temperature, pH }: Choice) =>
      known(id, { temperature: [temperature], pH: [pH] });
    const rows = overlapRows([alone("a", a), alone("b", b)], { axes, measures: [measure] });
    return of(rows, "box", measure)?.value ?? null;
  }

  test.each<OverlapMeasure>(["pianka", "jaccard", "containment"])(
    "of %s are those of trying every choice one by one",
    (measure) => {
      fc.assert(
        fc.property(profiles, profiles, (a, b) => {
          const tried = choicesOf(a).flatMap((first) =>
            choicesOf(b).map((second) => measuredAlone(measure, first, second)),
          );
          const values = tried.filter((value) => value !== null);
          const row = of(
            overlapRows([known("a", a), known("b", b)], { axes, measures: [measure] }),
            "box",
            measure,
          );
          expect(row).toMatchObject({
            value: tried[0] ?? null,
            worlds: tried.length,
            withoutValue: tried.length - values.length,
            least: values.length > 0 ? expect.closeTo(Math.min(...values), 12) : null,
            greatest: values.length > 0 ? expect.closeTo(Math.max(...values), 12) : null,
          });
        }),
        { numRuns: runs(100) },
      );
    },
  );

  test("take no longer for twenty sources on each of four axes than for a few", () => {
    const many = Array.from({ length: 20 }, (_, index) => ({
      min: 5 + index / 8,
      max: 9 + ((index * 7) % 20) / 5,
    }));
    const water = (shift: number) =>
      Object.fromEntries(
        ["temperature", "pH", "generalHardness", "salinity"].map((name) => [
          name,
          many.map(({ min, max }) => ({ min: min + shift, max: max + shift })),
        ]),
      );
    const all: readonly FigurePath[] = [temperature, pH, hardness, "water.salinity"];
    const rows = overlapRows([known("a", water(0)), known("b", water(1))], {
      axes: all,
      measures: ["jaccard"],
    });
    const box = of(rows, "box");
    expect(box?.worlds).toBe(400 ** 4);
    const extremes = rows
      .filter(({ axis }) => axis !== "box")
      .map(({ least, greatest }) => [least, greatest]);
    expect(new Set(extremes.map(String)).size).toBe(1);
    expect(box?.least).toBeLessThan(box?.value ?? Number.NaN);
    expect(box?.greatest).toBeGreaterThan(box?.value ?? Number.NaN);
  });

  test("tell whose other span moves it farthest, and where to", () => {
    const a = species("a", {
      temperature: [
        { min: 20, max: 26 },
        { min: 22, max: 26 },
        { min: 28, max: 30 },
      ],
    });
    const b = species("b", {
      temperature: [
        { min: 24, max: 28 },
        { min: 24, max: 27 },
      ],
    });
    const [row] = overlapRows([a, b], { axes: [temperature], measures: ["jaccard"] });
    expect(row).toMatchObject({
      value: 0.25,
      least: 0,
      greatest: 2 / 5,
      worlds: 6,
      movedTo: 0,
      moverID: "a",
      moverTrait: temperature,
      moverMin: 28,
      moverMax: 30,
      moverSaidBy: null,
    });
  });

  test("name the source of it where the records are given", () => {
    const profiles = ["tanichthys-albonubes", "danio-rerio"].flatMap((id) => speciesById(id) ?? []);
    const [row] = overlapRows(profiles, { axes: [temperature], measures: ["jaccard"], recordOf: recordById });
    const mover = recordById(row?.moverID ?? "");
    const sources = row?.moverSaidBy?.split(" | ") ?? [];
    expect(sources.length).toBeGreaterThan(0);
    const said = mover?.water?.temperature?.filter(({ by }) => sources.includes(by));
    expect(said?.map(({ as, value }) => [as, value])).toContainEqual([
      "kept",
      { min: row?.moverMin, max: row?.moverMax },
    ]);
  });

  test("name every source that states it, also where another closes its open end", () => {
    const record = {
      id: "catfish",
      taxonomy: { name: "catfish", authority: "", family: "", order: "", kind: "fish" },
      names: {},
      sources: { first: { cite: "first", at: "1" }, second: { cite: "second", at: "1" } },
      water: {
        temperature: [
          { by: "common-practice", value: { min: 22, max: 28 }, as: "kept", adopt: "Warm rivers." },
          { by: "first", value: { min: 20, max: 26 }, as: "kept" },
          { by: "second", value: { min: 20, max: 26 }, as: "kept" },
        ],
        generalHardness: [
          { by: "second", value: { min: 0, max: 10 }, as: "kept" },
          { by: "first", value: { max: 10 }, as: "kept" },
          { by: "common-practice", value: { max: 15 }, as: "kept", adopt: "It does well." },
        ],
      },
    } as const;
    const beside = species("b", {
      temperature: [{ min: 24, max: 30 }],
      generalHardness: [{ min: 0, max: 20 }],
    });
    const rows = overlapRows([resolve(record), beside], {
      axes: [temperature, hardness],
      measures: ["jaccard"],
      recordOf: () => record,
    });
    expect(of(rows, temperature)).toMatchObject({
      moverMin: 20,
      moverMax: 26,
      moverSaidBy: "first | second",
    });
    expect(of(rows, hardness)).toMatchObject({ moverMin: 0, moverMax: 10, moverSaidBy: "first | second" });
  });
});

test("profiles made of read sources alone are compared by these alone", () => {
  const records = ["danio-rerio", "tanichthys-albonubes"].flatMap((id) => recordById(id) ?? []);
  const read = records.map((record) => resolve(record, { only: { bases: ["published"] } }));
  const [row] = overlapRows(read, { axes: [temperature], measures: ["jaccard"] });
  expect(row?.basis).toBe("published");
});

test("of the whole catalog no measure lies outside its bounds, and every bound between 0 and 1", () => {
  const rows = overlapRows(someSpecies(60, 0), {
    axes: [temperature, pH, hardness],
    measures: ["schoener"],
  });
  for (const { value, least, greatest, movedTo } of rows) {
    const inOrder = [0, least, value, greatest, 1].filter((number) => number !== null);
    expect(inOrder).toStrictEqual([...inOrder].sort((a, b) => a - b));
    if (movedTo !== null) expect(movedTo).toBeLessThanOrEqual(greatest ?? Number.NaN);
  }
});

const danio = speciesById("danio-rerio");
test.each([
  ["no list", danio, { axes: [temperature], measures: ["jaccard"] }],
  ["no options", [danio], undefined],
  ["no axis", [danio], { axes: [], measures: ["jaccard"] }],
  ["an axis that holds no figures", [danio], { axes: ["space.zones"], measures: ["jaccard"] }],
  ["an axis twice", [danio], { axes: [pH, pH], measures: ["jaccard"] }],
  ["an unknown measure", [danio], { axes: [pH], measures: ["overlap"] }],
  ["nothing among profiles", [danio, null], { axes: [pH], measures: ["jaccard"] }],
  ["an empty object among profiles", [danio, {}], { axes: [pH], measures: ["jaccard"] }],
  ["records in place of what finds them", [danio], { axes: [pH], measures: ["jaccard"], recordOf: [] }],
  ["one species twice", [danio, danio], { axes: [pH], measures: ["jaccard"] }],
])("refuses %s", (_, profiles, options) => {
  expect(() => Reflect.apply(overlapRows, undefined, [profiles, options])).toThrow(InvalidInputError);
});
