import { expect, test } from "vitest";
import { problemsWith } from "../../problems";

test.each([
  ["names", { en: ["zebra danio"] }],
  ["identifiers", { fishbase: "4653" }],
  ["sources", {}],
  ["forms", {}],
])("%s have no key __proto__", (field, held) => {
  const hostile = JSON.parse(`{ "__proto__": { "polluted": true } }`);
  expect(problemsWith({ [field]: held })).toStrictEqual([]);
  expect(problemsWith({ [field]: { ...held, ["__proto__"]: hostile } })).toContainEqual([
    `${field}.__proto__`,
    "another key",
  ]);
});

test("nor have the names of a form", () => {
  const forms = JSON.parse(
    `{ "leopard": { "names": { "en": ["leopard danio"], "__proto__": ["leopard"] } } }`,
  );
  expect(problemsWith({ forms })).toStrictEqual([["forms.leopard.names.__proto__", "another key"]]);
});

test("other words of the language are keys like any", () => {
  const sources = { constructor: { cite: "a-study", at: "p. 4" } };
  const lifespan = [{ by: "constructor", value: 4, as: "usual" }];
  expect(problemsWith({ sources, size: { lifespan } })).toStrictEqual([]);
});
