import { expect, test } from "vitest";
import { preyFitsTheHunter } from "../../../data/checks/prey-fits-the-hunter";
import type { SpeciesRecord, TraitStatement } from "../../../src/species";
import { foundBy } from "./found";

const trade = "common-practice";
const usual = { by: trade, value: 20, as: "usual", measure: "TL" } as const;
const found = (
  eats: Partial<TraitStatement<"predation.eats">>,
  adultLength: NonNullable<SpeciesRecord["size"]>["adultLength"] = [usual],
) => foundBy(preyFitsTheHunter, { size: { adultLength }, predation: { eats: [{ by: trade, ...eats }] } });

test("a hunter of 20 cm that takes no fish past 2 cm needs a word on it", async () => {
  const small = { value: { prey: "fish", greatest: 2 } } as const;
  expect(await found(small)).toStrictEqual([
    "data/species/danio-rerio.json: fish of up to 2 cm by common-practice, for an animal of usually 20.0 cm",
  ]);
  expect(await found({ ...small, note: "Its mouth is a small snout." })).toStrictEqual([]);
  expect(await found({ ...small, setAside: "Of a young one." })).toStrictEqual([]);
});

test("0.15 of its length is enough, in whatever unit", async () => {
  expect(await found({ value: { prey: "fish", greatest: 3 } })).toStrictEqual([]);
  expect(await found({ value: { prey: "fish", greatest: 1 }, unit: "in" })).toHaveLength(1);
  expect(await found({ value: { prey: "fish", greatest: 1.2 }, unit: "in" })).toStrictEqual([]);
});

test("the longer sex counts, and what adults usually reach before the greatest on record", async () => {
  const prey = { value: { prey: "fish", greatest: 2 } } as const;
  const male = { ...usual, value: 8, sex: "male" } as const;
  expect(await found(prey, [male, { ...usual, sex: "female" }])).toHaveLength(1);
  expect(await found(prey, [male, { ...usual, as: "greatest" }])).toStrictEqual([]);
  expect(await found(prey, [{ ...usual, as: "greatest" }])).toHaveLength(1);
});

test("a fish longer than its hunter needs a word on how it is eaten", async () => {
  const large = { value: { prey: "fish", greatest: 21 } } as const;
  expect(await found(large)).toHaveLength(1);
  expect(await found({ ...large, note: "A school of them takes it apart." })).toStrictEqual([]);
  expect(await found({ value: { prey: "fish", greatest: 20 } })).toStrictEqual([]);
});

test("what is no fish is told with a word on how it is eaten past half of its hunter", async () => {
  const shrimp = (greatest: number) => ({ value: { prey: "shrimp", greatest } }) as const;
  expect(await found(shrimp(120))).toStrictEqual([
    "data/species/danio-rerio.json: shrimp of up to 120 cm by common-practice, for an animal of usually 20.0 cm",
  ]);
  expect(await found(shrimp(10.1))).toHaveLength(1);
  expect(await found(shrimp(10))).toStrictEqual([]);
  expect(await found({ ...shrimp(12), note: "It picks them to pieces." })).toStrictEqual([]);
});

test("small prey of another kind, no prey, no stated length and an animal of unknown length are no matter", async () => {
  expect(await found({ value: { prey: "shrimp", greatest: 1 } })).toStrictEqual([]);
  expect(await found({ value: { prey: "fish" } })).toStrictEqual([]);
  expect(await found({ value: "none" })).toStrictEqual([]);
  expect(
    await foundBy(preyFitsTheHunter, {
      predation: { eats: [{ by: trade, value: { prey: "fish", greatest: 1 } }] },
    }),
  ).toStrictEqual([]);
});
