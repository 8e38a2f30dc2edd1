import { expect, test } from "vitest";
import { familiesAreKnown } from "../../../data/checks/families-are-known";
import { readCollection } from "../../../data/reading/collection";
import { project } from "../project";

test.each([
  ["danio-rerio", "shrimp", "a shrimp among Danionidae"],
  ["tanichthys-albonubes", "snail", "a snail among Cypriniformes"],
])("of %s no relative is a %s", async (id, kind, told) => {
  const { root, read, write } = project();
  const file = `data/species/${id}.json`;
  write(file, read(file).replace('"kind": "fish"', `"kind": "${kind}"`));
  const slips = await familiesAreKnown.find(await readCollection(root));
  expect(slips.map(({ file: path, found }) => [path, found])).toStrictEqual([[file, told]]);
});

test("the list has a line a family, with its order", async () => {
  const { root, read, write } = project();
  const list = "data/families.csv";
  const text = read(list);
  const lines = text.trimEnd().split("\n").length;
  write(list, `${text}Flagidae\nDanionidae,Cypriniformes\nDanionidae,Siluriformes\n`);
  const slips = await familiesAreKnown.find(await readCollection(root));
  expect(slips.map(({ file, at, found }) => [file, at, found])).toStrictEqual([
    [list, { line: lines + 1, column: 1 }, "the line Flagidae,"],
    [list, { line: lines + 3, column: 1 }, "Danionidae in Siluriformes, and in Cypriniformes above"],
  ]);
});
