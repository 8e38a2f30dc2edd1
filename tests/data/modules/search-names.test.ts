import { describe, expect, test } from "vitest";
import { familiesOf } from "../../../data/checks/families-are-known";
import { groups, languagesOf, scientificNames, searchNames } from "../../../data/modules/search-names";
import { root } from "../../../data/reading/files";
import { leastRecord } from "../../species/records";

const danio = {
  ...leastRecord,
  taxonomy: { ...leastRecord.taxonomy, synonyms: ["Brachydanio rerio"] },
  names: { en: ["zebra danio"], de: ["Zebrabärbling"] },
  forms: { leopard: { names: { en: ["leopard danio"], fr: ["danio léopard"] } } },
};

test("a language holds the names of species and of forms, and leaves out whoever has none", () => {
  expect(searchNames("en", [danio])).toMatchObject({
    language: "en",
    names: { "danio-rerio": ["zebra danio"], "danio-rerio/leopard": ["leopard danio"] },
  });
  expect(searchNames("de", [danio]).names).toStrictEqual({ "danio-rerio": ["Zebrabärbling"] });
});

test("there is a module of each language in which some species has a name, and always of English", () => {
  expect(languagesOf([danio])).toStrictEqual(["de", "en"]);
  expect(languagesOf([])).toStrictEqual(["en"]);
});

test("old ids are names too, unless a synonym says the same", () => {
  const moved = [
    ["brachydanio-rerio", "danio-rerio"],
    ["danio-zebra", "danio-rerio"],
    ["barbus-tetrazona", "puntigrus-tetrazona"],
  ] as const;
  expect(scientificNames([danio], moved)).toStrictEqual([
    ["Danio rerio", "Danionidae", "Cypriniformes", "Brachydanio rerio", "Danio zebra"],
  ]);
});

describe.each(Object.entries(groups))("the groups of %s", (_, own) => {
  test("are of families and orders that are known", async () => {
    const known = (await familiesOf(root)).flat();
    expect(known).toEqual(expect.arrayContaining(Object.keys(own)));
  });
});
