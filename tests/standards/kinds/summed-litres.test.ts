import { describe, expect, test } from "vitest";
import { summedLitres } from "../../../src/standards/kinds/summed-litres";
import { animal } from "../../compatibility/animals";
import { box, fishOfLength, fishOfStandardLength, surveyOf } from "../surveys";

/** Switzerland, Tierschutzverordnung (SR 455.1), Annex 2 Table 8, aquaria. */
const swiss = {
  kind: "litres-each-centimetre",
  classes: [
    { upTo: 5, litres: 0.5 },
    { upTo: 10, litres: 0.75 },
    { upTo: 15, litres: 1 },
    { upTo: 20, litres: 1.25 },
    { upTo: 30, litres: 1.75 },
    { upTo: 40, litres: 2.25 },
    { litres: 3 },
  ],
  by: "present standard length",
  of: "water volume to gross volume",
} as const;

/** Sweden, DFS 2005:8 (L 80), chapter 13, section 5, advice. */
const swedish = {
  kind: "litres-each-fish",
  classes: [
    { upTo: 5, litres: 1 },
    { upTo: 10, litres: 4 },
  ],
  by: "present total length",
  of: "water volume",
} as const;

describe("litres for each centimetre", () => {
  test.each([
    ["ten of 3 cm", [[10, 3]], 15],
    [
      "ten of 3 cm, six of 6 cm, one of 12 cm",
      [
        [10, 3],
        [6, 6],
        [1, 12],
      ],
      54,
    ],
    ["one of 50 cm", [[1, 50]], 150],
    ["one at the end of a class", [[1, 5]], 2.5],
    ["one beyond it", [[1, 6]], 4.5],
  ] as const)("%s", (_, stock, litres) => {
    const groups = stock.map(([unsexed, length]) => ({
      species: fishOfStandardLength(`of-${length}`, length),
      unsexed,
    }));
    expect(summedLitres(swiss, surveyOf(groups))?.asked).toEqual({
      min: litres,
      max: litres,
      unit: "L",
      by: "present standard length",
    });
  });

  test("of a total length only a span is known", () => {
    const ten = [{ species: fishOfLength("a", 3), unsexed: 10 }];
    // 10 x 0.5 x 3 x 0.80 and 0.85
    expect(summedLitres(swiss, surveyOf(ten))?.asked).toMatchObject({ min: 12, max: 12.75 });
    expect(summedLitres(swiss, surveyOf(ten, box(25, 20, 25)))?.answer).toBe("depends"); // 12.5 L
    expect(summedLitres(swiss, surveyOf(ten, box(20, 20, 25)))?.answer).toBe("not-met"); // 10 L
  });
});

describe("litres for each fish", () => {
  test("ten of 3 cm ask for 10 L, three of 8 cm for 12 L", () => {
    const small = { species: fishOfLength("a", 3), unsexed: 10 };
    const middling = { species: fishOfLength("b", 8), unsexed: 3 };
    expect(summedLitres(swedish, surveyOf([small]))?.asked).toMatchObject({ min: 10, max: 10 });
    expect(summedLitres(swedish, surveyOf([small, middling]))?.asked).toMatchObject({ min: 22, max: 22 });
  });

  test("beyond the last class there is no figure", () => {
    const groups = [
      { species: fishOfLength("a", 3), unsexed: 10 },
      { species: fishOfLength("b", 20), unsexed: 1 },
    ];
    expect(summedLitres(swedish, surveyOf(groups))).toMatchObject({
      asked: { min: 10 },
      answer: "undetermined",
      open: { reason: "no-figure" },
    });
    expect(summedLitres(swedish, surveyOf(groups, box(30, 15, 20)))?.answer).toBe("not-met");
  });
});

test("a fish of unknown length leaves it open, and is named", () => {
  const groups = [
    { species: fishOfStandardLength("a", 3), unsexed: 10 },
    { species: animal("riddle"), unsexed: 1 },
  ];
  const row = summedLitres(swiss, surveyOf(groups));
  expect(row).toMatchObject({
    answer: "undetermined",
    open: { reason: "missing", trait: "size.adultLength", species: ["riddle"] },
  });
  expect(row?.asked).toEqual({ min: 15, unit: "L", by: "present standard length" });
  expect(summedLitres(swiss, surveyOf(groups, box(20, 20, 20)))?.answer).toBe("not-met"); // 8 L for 15 L
});

const shrimps = [{ species: animal("s", {}, { kind: "shrimp" }), unsexed: 20 }];

test("without fish it says nothing", () => {
  expect(summedLitres(swiss, surveyOf(shrimps))).toBeUndefined();
});

describe("a text that sums up all animals", () => {
  /** City of Rome, Regolamento comunale sulla tutela degli animali, Art. 51 (1). */
  const roman = {
    kind: "litres-each-centimetre",
    classes: [{ litres: 2 }],
    by: "present total length",
    of: "water volume to gross volume",
  } as const;
  const ten = { species: fishOfLength("a", 2), unsexed: 10 };

  test("is met by no tank for sure where shrimps live with the fish, and not met where it is too small for these", () => {
    const both = surveyOf([ten, ...shrimps]);
    expect(summedLitres(roman, both, "animals")).toMatchObject({
      answer: "undetermined",
      open: { reason: "no-figure" },
    });
    expect(summedLitres(roman, both, "animals")?.asked).toEqual({
      min: 40,
      unit: "L",
      by: "present total length",
    });
    expect(summedLitres(roman, surveyOf([ten, ...shrimps], box(40, 30, 30)), "animals")?.answer).toBe(
      "not-met",
    );
    expect(summedLitres(roman, both, "fish")?.answer).toBe("met");
  });

  test("is compared where all are fish, and left open where none is", () => {
    expect(summedLitres(roman, surveyOf([ten]), "animals")?.answer).toBe("met");
    expect(summedLitres(roman, surveyOf(shrimps), "animals")).toEqual({
      answer: "undetermined",
      open: { reason: "no-figure" },
    });
  });
});
