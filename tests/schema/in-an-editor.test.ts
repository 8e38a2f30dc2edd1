import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { getLanguageService, TextDocument } from "vscode-json-languageservice";
import { jsonSchemas } from "../../src/schema";

const whole = readFileSync(new URL("../data/zebra-danio.txt", import.meta.url), "utf8");
const service = getLanguageService({
  schemaRequestService: async () => JSON.stringify(jsonSchemas.species),
  workspaceContext: { resolveRelativePath: (relative) => `file:///${relative}` },
});

/** A record as an editor has it open. */
function opened(text: string) {
  const document = TextDocument.create("file:///danio-rerio.json", "json", 1, text);
  return { document, json: service.parseJSONDocument(document) };
}

/** What an editor underlines of a record. */
async function underlined(text: string) {
  const { document, json } = opened(text);
  return (await service.doValidation(document, json)).map(({ message }) => String(message));
}

/** A place in the text, so many characters into the first match. */
function placed(text: string, match: string, within: number) {
  const { document, json } = opened(text);
  return { document, json, position: document.positionAt(text.indexOf(match) + within) };
}

const target = '"target": "own-kind"';

test("nothing is underlined in a record that is in order", async () => {
  expect(await underlined(whole)).toStrictEqual([]);
});

test.each([
  ["°F without saying so", '"min": 18, "max": 24', '"min": 72, "max": 78', /above the maximum of 48/],
  ["a figure without its meaning", ', "as": "kept"', "", /missing property as/],
  ["a length without its measure", ', "measure": "TL"', "", /missing property measure/],
  ["a word nobody knows", target, '"target": "bigger"', /Valid values: "own-sex", .*"any"/],
  ["a unit nobody knows", '"as": "kept"', '"unit": "F", "as": "kept"', /Valid values: "degC", "degF", "K"/],
])("%s is underlined, with what it should be", async (_, from, to, told) => {
  expect(whole).toContain(from);
  expect((await underlined(whole.replace(from, to))).join("\n")).toMatch(told);
});

test("the words are offered while typing, each with its sentence", async () => {
  const typed = whole.replace(target, '"target": ""');
  const { document, json, position } = placed(typed, '"target": ""', '"target": "'.length);
  const { items } = (await service.doComplete(document, position, json)) ?? { items: [] };
  expect(items.map(({ label, documentation }) => [label, documentation])).toContainEqual([
    '"smaller"',
    "Animals clearly smaller than itself.",
  ]);
});

test("the word under the pointer is explained", async () => {
  const { document, json, position } = placed(whole, target, '"target": "own'.length);
  const shown = await service.doHover(document, position, json);
  expect(JSON.stringify(shown?.contents)).toContain("Any animal of its species");
});

test("a new line starts from an example", async () => {
  const typed = whole.replace('"temperature": [', '"temperature": [\n      \n,');
  const { document, json, position } = placed(typed, '"temperature": [', '"temperature": [\n    '.length);
  const { items } = (await service.doComplete(document, position, json)) ?? { items: [] };
  expect(items.map(({ label }) => label)).toContain(
    '{"by":"handbook","value":{"min":20,"max":26},"as":"kept"}',
  );
});
