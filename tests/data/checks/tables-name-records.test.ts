import { expect, test } from "vitest";
import { tablesNameRecords } from "../../../data/checks/tables-name-records";
import { readCollection } from "../../../data/reading/collection";
import { root as here } from "../../../data/reading/files";

const collection = await readCollection(here);

/** What is found where an id stands in the place of another one. */
async function found(folder: "standards" | "legal", name: string, id: string, typed: string) {
  const files = collection.files[folder].map((file) =>
    file.name === name ? { ...file, json: JSON.parse(file.text.replace(`"${id}"`, `"${typed}"`)) } : file,
  );
  const slips = await tablesNameRecords.find({
    ...collection,
    files: { ...collection.files, [folder]: files },
  });
  return slips.map(({ file, found, guess }) => `${file}: ${found}.${guess}`);
}

test("a line of a table names a record", async () => {
  expect(await found("standards", "germany", "danio-rerio", "danio-rerio")).toStrictEqual([]);
  expect(await found("standards", "germany", "danio-rerio", "danio-kyathit")).toStrictEqual([
    "data/standards/germany.json: danio-kyathit, which no record is called.",
  ]);
  expect(await found("standards", "germany", "puntigrus-tetrazona", "barbus-tetrazona")).toStrictEqual([
    "data/standards/germany.json: barbus-tetrazona, which no record is called. Did you mean puntigrus-tetrazona?",
  ]);
});

test("a species that a law leaves out may have no record, but is no slip of one that has", async () => {
  const law = ["legal", "japan", "cambaroides-japonicus"] as const;
  expect(await found(...law, "cherax-snowden")).toStrictEqual([]);
  expect(await found(...law, "cherax-quadricarinatu")).toStrictEqual([]);
  expect(await found(...law, "danio-reri")).toStrictEqual([
    "data/legal/japan.json: danio-reri, which no record is called. Did you mean danio-rerio?",
  ]);
});
