import { expect, test } from "vitest";
import { lawsNameAnimals } from "../../../data/checks/laws-name-animals";
import { readCollection } from "../../../data/reading/collection";
import { project } from "../project";

test.each([
  ["Danio reiro", "Danio rerio"],
  ["Puntigrus tetrasona", "Puntigrus tetrazona"],
  ["Danionidea", undefined],
  ["Osphronemidea", undefined],
  ["Osphronemida", "Osphronemidae"],
  ["Danioo", undefined],
  ["Danio kyathit", undefined],
  ["Brachydanio rerio", undefined],
])("%s in a law may be a slip for %s", async (taxon, meant) => {
  const { root, read, write } = project();
  const law = "data/legal/us-alabama.json";
  write(law, read(law).replace('"Clarias"', `"${taxon}"`));
  const slips = await lawsNameAnimals.find(await readCollection(root));
  expect(slips.map(({ guess }) => guess)).toStrictEqual(
    meant === undefined ? [] : [` Did you mean ${meant}?`],
  );
});
