import { expect, test } from "vitest";
import { formsDiffer } from "../../../data/checks/forms-differ";
import { sizesArePlausible } from "../../../data/checks/sizes-are-plausible";
import type { AdultLength } from "../../../src/species";
import { foundBy } from "./found";

test("a form has an English name by which it is sold", async () => {
  expect(await foundBy(formsDiffer, { forms: { albino: { names: {} } } })).toStrictEqual([
    "data/species/danio-rerio.json: a form without an English name",
  ]);
  expect(
    await foundBy(formsDiffer, { forms: { albino: { names: { en: ["albino danio"] } } } }),
  ).toStrictEqual([]);
});

test("a form may be small or large, but not eight times so", async () => {
  const long = (value: number) => ({
    size: {
      adultLength: [
        { by: "common-practice", value, as: "usual" as AdultLength["as"], measure: "TL" as const },
      ],
    },
  });
  const formOf = (value: number) =>
    foundBy(sizesArePlausible, {
      ...long(4),
      forms: { balloon: { names: { en: ["balloon danio"] }, ...long(value) } },
    });
  expect(await formOf(2)).toStrictEqual([]);
  expect(await formOf(40)).toStrictEqual([
    "data/species/danio-rerio.json: a longest length of 40 cm, of a species of 4 cm",
  ]);
});
