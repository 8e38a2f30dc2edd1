import { expect, test } from "vitest";
import { faultsOf, lineAt } from "../../data/json";

test.each([
  ['{\n  "a": 1,\n}', 3],
  ['{\n  "a": 4,5\n}', 2],
  ['{\n  "a": 1\n  "b": 2\n}', 3],
  ['{ "a": “1” }', 1],
  ["\uFEFF{}", 1],
  ["", 1],
  ["{}\n// no comment", 2],
])("%o is no JSON, and its line is told", (text, line) => {
  expect(faultsOf(text)).toStrictEqual([{ line, found: expect.stringMatching(/found\.$/) }]);
});

test("a key that stands twice in one object is found, however deep", () => {
  const text = '{\n"a": [{ "b": 1 }, { "b": 2,\n"b": 3 }],\n"a": 4\n}';
  expect(faultsOf(text)).toStrictEqual([
    { line: 3, found: 'the key "b" a second time' },
    { line: 4, found: 'the key "a" a second time' },
  ]);
});

test("what stands at a path has a line, and what does not has that of the nearest thing around it", () => {
  const text = '{\n"water": {\n"pH": [\n{ "by": "x" },\n{ "by": "y" }\n]\n}\n}';
  expect(faultsOf(text)).toStrictEqual([]);
  expect(lineAt(text, ["water", "pH", 1, "by"])).toBe(5);
  expect(lineAt(text, ["water", "pH", "0", "value"])).toBe(4);
  expect(lineAt(text, ["water", "temperature", 0])).toBe(2);
  expect(lineAt(text, ["taxonomy"])).toBe(1);
});
