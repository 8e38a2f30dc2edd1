import { expect, test } from "vitest";
import { notesAreSentences } from "../../../data/checks/notes-are-sentences";
import { readCollection } from "../../../data/reading/collection";
import { root } from "../../../data/reading/files";

const collection = await readCollection(root);

/** What is found where a record says so in one of its lines. */
async function found(line: Readonly<Record<string, string>>): Promise<readonly string[]> {
  const text = { diet: { pace: [{ by: "common-practice", value: "fast", ...line }] } };
  const species = [
    {
      folder: "species",
      name: "danio-rerio",
      path: "data/species/danio-rerio.json",
      text: "",
      json: text,
      faults: [],
    } as const,
  ];
  const slips = await notesAreSentences.find({ ...collection, files: { ...collection.files, species } });
  return slips.map((slip) => slip.found);
}

test.each(["note", "adopt", "setAside"])("what stands in %s is a sentence", async (field) => {
  for (const text of ["Seen by breeders.", "9 of 12 died.", "Of young ones (page 4)."])
    expect(await found({ [field]: text })).toStrictEqual([]);
  for (const text of ["x", "seen by breeders.", "Seen by breeders", "Seen by breeders,"])
    expect(await found({ [field]: text })).toStrictEqual([`no sentence, ${JSON.stringify(text)}`]);
});

test("other texts need be none", async () => {
  expect(await found({ by: "a-source" })).toStrictEqual([]);
  expect(await found({ note: "To fill in: how fast it comes to food" })).toStrictEqual([]);
});
