import { expect, test } from "vitest";
import { lawsNameForms } from "../../../data/checks/laws-name-forms";
import { readCollection } from "../../../data/reading/collection";
import { project } from "../project";

test.each([
  [["Danio rerio"], ["flourescent"], 1],
  [["Danio rerio"], ["long-fin"], 0],
  [["Brachydanio rerio"], ["flourescent"], 1],
  [["Danio rerio", "Tanichthys albonubes"], ["long-fin", "fluorescent", "red"], 1],
  [["Danio"], ["fluorescent"], 0],
  [["Danio rerio", "Gymnocorymbus ternetzi"], ["red"], 0],
])("of a law on %j the forms %j hold %i that no record has", async (taxa, forms, faults) => {
  const { root, read, write } = project();
  const law = "data/legal/eu.json";
  const { listings, ...others } = JSON.parse(read(law));
  write(law, JSON.stringify({ ...others, listings: [{ ...listings[0], taxa, forms }] }));
  expect(await lawsNameForms.find(await readCollection(root))).toHaveLength(faults);
});
