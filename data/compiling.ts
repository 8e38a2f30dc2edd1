// Compiles data into modules of src.
import { mkdir, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { describeProblem, type Listings, type MovedId, problemsIn, type Source } from "vivary/schema";
import type { CitableSource } from "vivary/species";
import { type Collection, readCollection } from "./collection";
import type { DataFile } from "./files";
import { type Data, generatedFolders, modulesOf } from "./modules";

/**
 * Writes the modules of src that follow from data, and gives how many species there are.
 *
 * @throws Error with every problem where a file is not what its folder holds.
 */
export async function compile(root: string): Promise<number> {
  const compiled = dataOf(await readCollection(root));
  const src = join(root, "src");
  await Promise.all(
    generatedFolders.map((folder) => rm(join(src, folder), { recursive: true, force: true })),
  );
  const written = [...modulesOf(compiled)].map(async ([path, code]) => {
    await mkdir(dirname(join(src, path)), { recursive: true });
    await writeFile(join(src, path), code);
  });
  await Promise.all(written);
  return compiled.records.length;
}

function dataOf({ files, records }: Collection): Data {
  const problems = Object.values(files).flatMap((held) => held.flatMap(complaintsOf));
  if (problems.length > 0) throw new Error(problems.join("\n"));
  return {
    records: records.map(({ record }) => record),
    sources: files.sources.map(({ json }) => citable(json as Source)),
    legal: files.legal.flatMap(({ name, json }) =>
      (json as Listings).listings.map((listing) => ({ code: name, ...listing })),
    ),
    lawgivers: files.legal.map(({ name }) => name),
    // The name of a file, unlike what stands in it, leads out of no folder.
    moved: files.moved.map(({ name, json }) => [name, (json as MovedId).to]),
    jurisdictions: files.standards.map(({ json }) => withoutSchema(json as object)),
  };
}

/** A source without what is said of its reading, which no bibliography should print. */
function citable(source: Source & { readonly $schema?: string }): CitableSource {
  const { $schema, note: remark, custom, ...item } = source;
  return remark || custom ? { ...item, custom: { ...custom, ...(remark && { remark }) } } : item;
}

/** What a file holds, without the address of its schema. */
function withoutSchema({ $schema, ...held }: { readonly $schema?: string }): object {
  return held;
}

/** What is wrong with a file, as lines under its name. */
function complaintsOf({ folder, path, json }: DataFile): readonly string[] {
  const problems = json === undefined ? ["no JSON"] : problemsIn(folder, json).map(describeProblem);
  return problems.length === 0
    ? []
    : [`${path} is not what ${folder} holds:`, ...problems.map((said) => `  ${said}`)];
}
