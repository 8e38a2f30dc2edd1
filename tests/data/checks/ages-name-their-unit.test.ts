import { expect, test } from "vitest";
import { agesNameTheirUnit } from "../../../data/checks/ages-name-their-unit";
import { foundBy } from "./found";

type Rest = { readonly unit?: string; readonly note?: string; readonly setAside?: string };
const grownAt = (value: number, rest: Rest = {}) =>
  foundBy(agesNameTheirUnit, { size: { grownAt: [{ by: "common-practice", value, ...rest }] } });

test("half a year that reads as half a month is told", async () => {
  expect(await grownAt(0.5)).toStrictEqual([
    "data/species/danio-rerio.json: size.grownAt: an age of 0.5 months",
  ]);
});

test("an age in another unit, with a note or set aside is left alone", async () => {
  expect(await grownAt(0.5, { unit: "a" })).toStrictEqual([]);
  expect(await grownAt(0.7, { note: "In warm ponds." })).toStrictEqual([]);
  expect(await grownAt(0.7, { setAside: "Of another species." })).toStrictEqual([]);
  expect(await grownAt(1)).toStrictEqual([]);
});

test("the age at which it breeds is told alike, of a form too", async () => {
  const reproduction = { breedsFrom: [{ by: "common-practice", value: 0.25 }] };
  expect(await foundBy(agesNameTheirUnit, { reproduction })).toHaveLength(1);
  const forms = { veil: { names: { en: ["veil danio"] }, reproduction } };
  expect(await foundBy(agesNameTheirUnit, { forms })).toHaveLength(1);
});
