import { expect, test } from "vitest";
import { positionAt, readJson, unmarked } from "../../../data/reading/json";

const told = (text: string) =>
  readJson(text).faults.map(({ at, found }) => `${at.line}:${at.column}: ${found}`);

test.each([
  ['{\n  "a": 1,\n}', "2:9: a comma after the last entry"],
  ['{\n  "a": [1, 2,]\n}', "2:13: a comma after the last entry"],
  ['{\n  "a": 4,5\n}', "2:9: a comma in a number, before 5"],
  ['{\n  "a": 1\n  "b": 2\n}', "2:9: no comma between two entries"],
  ['{ "a": “kept” }', "1:8: the quote “, which is none in JSON"],
  ["{ 'a': 1 }", "1:3: the quote ', which is none in JSON"],
  ['{ "a": True }', "1:8: the word True"],
  ['{ "a": +1 }', "1:8: a number that JSON does not know, at +1"],
  ['{ "a": .5 }', "1:8: a number that JSON does not know, at .5"],
  ['{ "a": 08 }', "1:9: a number that JSON does not know, at 8"],
  ['{ "a" 1 }', "1:6: no colon after a key"],
  ['{ "a": kept }', "1:8: kept where it does not belong"],
  ['{ "a": "kept\n}', '1:8: a quote that does not close: "kept'],
  ['{ "a": 1', "1:9: no } at the end"],
  ["[1", "1:3: no ] at the end"],
  ["{ } }", "1:5: } after the end of the record"],
  ["", "1:1: an empty file"],
  ["{}\n// no comment", "2:1: a comment, which JSON does not know"],
  ["\uFEFF{}", "1:1: an invisible mark before the first character"],
])("%o is no JSON, and its place is told", (text, found) => {
  expect(told(text)).toStrictEqual([found]);
});

test("versions that git could not join are told as such", () => {
  expect(told('{\n<<<<<<< HEAD\n"a": 1\n=======\n"a": 2\n>>>>>>> branch\n}')).toContain(
    "2:1: the mark of two versions that git could not join, <<<<<<<",
  );
});

test("every line with a fault is told, and what the others say is read", () => {
  const text = '{\n"a": 1,\n"b": 4,5,\n"c": “x”,\n"d": [7]\n"e": 8\n}';
  expect(told(text)).toStrictEqual([
    "3:7: a comma in a number, before 5",
    "4:6: the quote “, which is none in JSON",
    "5:9: no comma between two entries",
  ]);
  expect(readJson(text).json).toMatchObject({ a: 1, d: [7], e: 8 });
  expect(readJson('{ "a": [1 }').json).toBeUndefined();
});

test("a key that stands twice in one object is found, however deep", () => {
  const text = '{\n"a": [{ "b": 1 }, { "b": 2,\n"b": 3 }],\n"a": 4\n}';
  expect(told(text)).toStrictEqual(['3:1: the key "b" a second time', '4:1: the key "a" a second time']);
});

test("a mark of byte order is taken away, and does not move what follows", () => {
  expect(unmarked('\uFEFF{ "a": 1 }')).toBe('{ "a": 1 }');
  expect(readJson('\uFEFF{ "a": 1 }').json).toStrictEqual({ a: 1 });
  expect(positionAt('\uFEFF{ "a": 1 }', ["a"])).toStrictEqual({ line: 1, column: 8 });
});

test("what stands at a path has a place, and what does not has that of the nearest thing around it", () => {
  const text = '{\n"water": {\n"pH": [\n{ "by": "x" },\n{ "by": "y" }\n]\n}\n}';
  expect(told(text)).toStrictEqual([]);
  const at = (...path: (string | number)[]) => Object.values(positionAt(text, path)).join(":");
  expect(at("water", "pH", 1, "by")).toBe("5:9");
  expect(at("water", "pH", 0, "value")).toBe("4:1");
  expect(at("water", "pH")).toBe("3:1");
  expect(at("water", "temperature", 0)).toBe("2:1");
  expect(at("taxonomy")).toBe("1:1");
});
