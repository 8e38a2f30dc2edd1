// Checks the records as one collection, beyond what each must be by itself: npm run species check [id]
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { readCollection } from "../collection.mjs";
import { root } from "../source.mjs";

/** Every check of data/checks, in the order of their files. */
const folder = join(root, "data/checks");
const checks = await Promise.all(
  (await readdir(folder)).sort().map((file) => import(pathToFileURL(join(folder, file)).href)),
);

export default async function check([id]) {
  const collection = await readCollection();
  if (id && !collection.files.some(({ name }) => name === id)) {
    console.error(`data/species has no ${id}.json.`);
    return 1;
  }
  const problems = (
    await Promise.all(
      checks.map(async ({ name, find }) =>
        (await find(collection)).map((problem) => ({ check: name, ...problem })),
      ),
    )
  ).flat();
  const told = id ? problems.filter(({ where, found }) => `${where} ${found}`.includes(id)) : problems;
  for (const problem of told) console.error(sentence(problem));
  const { files, sources } = collection;
  console.log(`${files.length} records, ${sources.length} sources, ${told.length} problems.`);
  return told.length > 0 ? 1 : 0;
}

/** What, where, what was expected, and how to mend it. */
function sentence({ check, where, found, expected, mend }) {
  const wanted = expected ? `; expected ${expected}` : "";
  return `${check}.\n  ${where}: ${found.replace(/\.$/, "")}${wanted.replace(/\.$/, "")}.\n  ${mend}`;
}
