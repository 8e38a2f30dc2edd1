import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allSpecies } from "../../../src/catalog";
import { allRecords } from "../../../src/evidence";
import {
  resolve,
  type SpeciesRecord,
  type Statement,
  splitPath,
  type TraitStatement,
  traitPaths,
} from "../../../src/species";
import { anyOf } from "../../drawn";
import { runs } from "../../runs";
import { recordOf } from "../records";

const trade = "common-practice";

/** Lists as sets: what stands in a profile, in whatever order. */
function unordered(value: unknown): unknown {
  if (Array.isArray(value)) {
    const sorted = value.map(unordered).map((item) => JSON.stringify(item));
    return [...new Set(sorted)].sort();
  }
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, held]) => [key, unordered(held)]));
}

/** A number for every name, that changes with the seed. */
const scattered = (seed: number, name: string) =>
  [...name].reduce((sum, letter) => (Math.imul(sum, 31) + letter.charCodeAt(0)) | 0, seed);

/** The record with the lines of every trait, of its forms too, in another order. */
function withLinesShuffled<Held extends object>(held: Held, seed: number): Held {
  const shuffled = { ...held } as Record<string, unknown>;
  for (const path of traitPaths) {
    const [section, name] = splitPath(path);
    const traits = shuffled[section] as Record<string, readonly Statement[]> | undefined;
    const lines = traits?.[name];
    if (!lines) continue;
    const order = (line: Statement) => scattered(seed, JSON.stringify(line));
    shuffled[section] = { ...traits, [name]: [...lines].sort((a, b) => order(a) - order(b)) };
  }
  const { forms } = held as { readonly forms?: Readonly<Record<string, object>> };
  return {
    ...shuffled,
    ...(forms && {
      forms: Object.fromEntries(
        Object.entries(forms).map(([id, form]) => [id, withLinesShuffled(form, seed)]),
      ),
    }),
  } as unknown as Held;
}

describe("the order of lines decides nothing", () => {
  test("in any record of the catalog", () => {
    fc.assert(
      fc.property(
        anyOf(allRecords, ({ id }) => id),
        fc.integer(),
        (record, seed) => {
          const other = withLinesShuffled<SpeciesRecord>(record, seed);
          expect(unordered(resolve(other))).toStrictEqual(unordered(resolve(record)));
        },
      ),
      { numRuns: runs(300) },
    );
  });

  test("even where one source says two things that give way to a better one", () => {
    const lines = [
      { by: "study", value: 40 },
      { by: "handbook", value: 60 },
      { by: "handbook", value: 50 },
    ];
    const heights = [lines, [...lines].reverse()].map(
      (height) => resolve(recordOf({ space: { height } })).space?.height,
    );
    expect(heights[0]).toStrictEqual(heights[1]);
    expect(heights[0]?.also).toStrictEqual([50]);
  });

  test("even where one source came to one figure with animals used to different temperatures", () => {
    const limit = { by: "study", as: "limit", endpoint: "balance" } as const;
    const lines: readonly TraitStatement<"water.temperature">[] = [
      { by: "study", value: { min: 20, max: 26 }, as: "kept" },
      { ...limit, value: { max: 38 }, acclimatedAt: 25 },
      { ...limit, value: { max: 38 }, acclimatedAt: 20 },
      { ...limit, by: "handbook", value: { min: 10 }, acclimatedAt: 25 },
    ];
    const [one, other] = [lines, [...lines].reverse()].map(
      (temperature) => resolve(recordOf({ water: { temperature } })).water?.temperature,
    );
    expect(one?.value).toStrictEqual(other?.value);
  });
});

describe("other values of a trait of several groups", () => {
  const length = (by: string, value: number, sex: "male" | "female", adopt?: string) =>
    ({ by, value, sex, as: "usual", measure: "TL", ...(adopt && { adopt }) }) as const;

  test("are each source as a whole beside one changed at a time, none of them twice", () => {
    const record = recordOf({
      size: {
        adultLength: [
          length("study", 4, "male"),
          length("handbook", 5, "male"),
          length(trade, 6, "male"),
          length("study", 7, "female"),
          length("handbook", 8, "female"),
        ],
      },
    });
    const also = resolve(record).size?.adultLength?.also ?? [];
    expect(also.map((list) => list.map(({ length: stated }) => stated))).toStrictEqual([
      [5, 7],
      [6, 7],
      [4, 8],
      [5, 8],
    ]);
  });
});

test("each of several values is as well supported as by the best who says it, the fact as the weakest of them", () => {
  const waters = (statements: readonly TraitStatement<"origin.waters">[]) =>
    resolve(recordOf({ origin: { waters: statements } })).origin?.waters;
  const fresh = { by: "study", value: "fresh" } as const;
  expect(waters([fresh, { by: trade, value: "fresh" }])).toMatchObject({
    value: ["fresh"],
    basis: "published",
  });
  expect(waters([fresh, { by: trade, value: "brackish" }])).toMatchObject({ basis: "common-practice" });
  expect(waters([{ by: trade, value: "fresh" }])).toMatchObject({ basis: "common-practice" });
});

test("what a fact comes from is told by the keys of its sources, without those that gave way", () => {
  const record = recordOf({
    water: {
      pH: [
        { by: "study", value: { min: 6 }, as: "kept" },
        { by: "handbook", value: { max: 7.5 }, as: "kept" },
        { by: trade, value: { min: 5, max: 9 }, as: "kept" },
        { by: "survey", value: { min: 4, max: 9 }, as: "wild" },
      ],
    },
  });
  expect(resolve(record).water?.pH).toMatchObject({
    value: { kept: { min: 6, max: 7.5 } },
    basis: "memory",
    said: ["study", "handbook"],
  });
});

test("the catalog ships no keys of sources, since it ships no sources", () => {
  expect(JSON.stringify(allSpecies)).not.toContain('"said":');
});
