import { expect, test } from "vitest";
import { lawsNameForms } from "../../../data/checks/laws-name-forms";
import { readCollection } from "../../../data/reading/collection";
import { project } from "../project";

test.each([
  ["flourescent", 1],
  ["long-fin", 0],
])("a law on forms called %s names %i that no record has", async (form, faults) => {
  const { root, read, write } = project();
  const law = "data/legal/eu.json";
  write(law, read(law).replace('"fluorescent"', `"${form}"`));
  const found = await lawsNameForms.find(await readCollection(root));
  expect(found.map(({ at }) => at.slice(2))).toStrictEqual(Array(faults).fill(["forms", 0]));
});
