import { expect, test } from "vitest";
import { rootsAndRelativesAreSpelt } from "../../../data/checks/roots-and-relatives-are-spelt";
import type { SourceReference } from "../../../src/species";
import { foundBy } from "./found";

const found = (source: Partial<SourceReference>, other: Partial<SourceReference> = {}) =>
  foundBy(
    rootsAndRelativesAreSpelt,
    {
      sources: {
        study: { cite: "a-study", at: "p. 4", ...source },
        first: { cite: "a-study", at: "p. 5", root: "riehl-baensch", ...other },
        second: { cite: "a-study", at: "p. 6", root: "riehl-baensch", ...other },
      },
    },
    [{ id: "fishbase" }],
  );

const told = (field: string, name: string) => [
  `data/species/danio-rerio.json: ${name} as ${field} of study, which is called so nowhere else`,
];

test.each(["riehl-baenshc", "riehl-baesch", "fishbaes"])("%s is a root misspelt", async (root) => {
  expect(await found({ root })).toStrictEqual(told("root", root));
});

test.each(["riehl-baensch", "fishbase", "fishbase-ref-7020", "a-book-of-1999"])(
  "%s may be a root",
  async (root) => {
    expect(await found({ root })).toStrictEqual([]);
  },
);

test("two numbers are two roots", async () => {
  const other = { root: "fishbase-ref-7020" };
  expect(await found({ root: "fishbase-ref-7021" }, other)).toStrictEqual([]);
  expect(await found({ root: "fishbase-erf-7020" }, other)).toStrictEqual(told("root", "fishbase-erf-7020"));
});

test.each(["Dnaio", "Dnaio kyathit", "Danionidea"])("%s is a relative misspelt", async (of) => {
  expect(await found({ of })).toStrictEqual(told("of", of));
});

test.each(["Danio", "Danio kyathit", "Danionidae", "Devario", "Cyprinidae"])(
  "%s may be a relative",
  async (of) => {
    expect(await found({ of })).toStrictEqual([]);
  },
);
