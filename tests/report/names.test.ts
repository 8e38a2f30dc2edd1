import { expect, test } from "vitest";
import { capitalised, nameIn } from "../../src/report/names";

const names = {
  en: ["zebra danio", "zebrafish"],
  de: ["Zebrabärbling"],
  "pt-BR": ["paulistinha"],
  fr: [],
};

test.each([
  ["de", "Zebrabärbling"],
  ["de-CH", "Zebrabärbling"],
  ["pt-BR", "paulistinha"],
  ["en-GB", "zebra danio"],
  ["pt", "Danio rerio"],
  ["fr", "Danio rerio"],
  ["toString", "Danio rerio"],
  ["", "Danio rerio"],
])("in %s it is called %s", (language, name) => {
  expect(nameIn(language, names, "Danio rerio")).toBe(name);
});

test("without a name in the language the scientific name stands", () => {
  expect(nameIn("ja", { de: ["Zebrabärbling"] }, "Danio rerio")).toBe("Danio rerio");
  expect(nameIn("en", {}, "Danio rerio")).toBe("Danio rerio");
});

test("a capital is one of the language", () => {
  expect(capitalised("éléphant", "fr")).toBe("Éléphant");
  expect(capitalised("izmir", "tr")).toBe("İzmir");
  expect(capitalised("", "en")).toBe("");
});
