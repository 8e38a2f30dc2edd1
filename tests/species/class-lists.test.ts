import { expect, test } from "vitest";
import { classes } from "../../src/species";
import { classLists } from "../../src/species/inner";

test.each(Object.entries(classes))("the words of %s stand in one order", (kind, explained) => {
  expect(Object.keys(explained)).toStrictEqual([...classLists[kind as keyof typeof classes]]);
});

test("no list is without sentences", () => {
  expect(Object.keys(classLists).sort()).toStrictEqual(Object.keys(classes).sort());
});
