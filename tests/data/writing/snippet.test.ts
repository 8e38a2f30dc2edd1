import { expect, test } from "vitest";
import { schemaFiles } from "../../../data/writing/json-schema";
import { snippetOf } from "../../../data/writing/snippet";
import { traitPaths } from "../../../src/species";

/** A place to write over, as editors know it. */
const place = (number: number, text: unknown) => `$\{${number}:${text}}`;

test("every word and figure of a line is a place to write over, in turn", () => {
  const line = { by: "handbook", value: { anyOf: ["caves", "wood"], each: 1 }, estimate: true };
  const [by, caves, wood, each, estimate] = ["handbook", "caves", "wood", 1, true].map((text, index) =>
    place(index + 1, text),
  );
  expect(snippetOf(line)).toBe(
    `{ "by": "${by}", "value": { "anyOf": ["${caves}", "${wood}"], "each": ${each} }, "estimate": ${estimate} }`,
  );
});

test("every trait has a snippet, called by its path", () => {
  const { text = "{}" } = schemaFiles.find(({ path }) => path.endsWith(".code-snippets")) ?? {};
  const snippets = Object.values(JSON.parse(text) as Record<string, { readonly prefix: string }>);
  expect(snippets.map(({ prefix }) => prefix)).toStrictEqual(traitPaths);
});
