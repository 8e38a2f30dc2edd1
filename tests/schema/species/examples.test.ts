import { expect, test } from "vitest";
import { exampleOf } from "../../../src/schema/species/examples";
import { splitPath, traitPaths } from "../../../src/species";
import { problemsWith } from "../problems";

test.each(traitPaths)("the example of %s may stand in a record", (path) => {
  const [section, name] = splitPath(path);
  const { by, ...said } = exampleOf(path);
  const sources = by === "handbook" ? { handbook: { cite: "a-handbook", at: "p. 7" } } : {};
  expect(problemsWith({ sources, [section]: { [name]: [{ by, ...said }] } })).toStrictEqual([]);
});
