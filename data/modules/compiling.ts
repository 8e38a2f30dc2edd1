// Compiles data into modules of src.
import { mkdir, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { describeProblem, type Listings, type MovedId, type Source } from "vivary/schema";
import type { CitableSource } from "vivary/species";
import { allFiles, type Collection, readCollection } from "../reading/collection";
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

function dataOf(collection: Collection): Data {
  const { files, records } = collection;
  const problems = complaintsOf(collection);
  if (problems.length > 0) throw new Error(problems.join("\n"));
  return {
    records: records.map(({ record }) => record),
    sources: files.sources.map(({ json }) => citable(json as Source)),
    legal: lawsOf(collection),
    lawgivers: files.legal.map(({ name }) => name),
    // The name of a file, unlike what stands in it, leads out of no folder.
    moved: files.moved.map(({ name, json }) => [name, (json as MovedId).to]),
    jurisdictions: files.standards.map(({ json }) => withoutSchema(json as object)),
  };
}

/** The rules of law in files that are well formed, each with its lawgiver and where it applies as well. */
export function lawsOf({ files, problems }: Collection): Data["legal"] {
  const broken = new Set(problems.filter((one) => one.problems.length > 0).map(({ file }) => file));
  const legal = files.legal.filter((file) => file.json !== undefined && !broken.has(file));
  return legal.flatMap(({ name, json }) => {
    const also = legal
      .filter(({ json: other }) => (other as Listings).within?.includes(name))
      .map(({ name: place }) => place);
    return (json as Listings).listings.map((listing) => ({
      code: name,
      ...(also.length > 0 && { also }),
      ...listing,
    }));
  });
}

/** A source without what is said of its reading, which no bibliography should print. */
export function citable(source: Source & { readonly $schema?: string }): CitableSource {
  const { $schema, note: remark, custom, ...item } = source;
  return remark || custom ? { ...item, custom: { ...custom, ...(remark && { remark }) } } : item;
}

/** What a file holds, without the address of its schema. */
function withoutSchema({ $schema, ...held }: { readonly $schema?: string }): object {
  return held;
}

/** What is wrong with the files, as lines under the name of each. */
function complaintsOf(collection: Collection): readonly string[] {
  return allFiles(collection).flatMap((file) => {
    const unreadable = file.faults.map(({ at, found }) => `line ${at.line}: ${found}`);
    const { problems = [] } = collection.problems.find((one) => one.file === file) ?? {};
    const said = [...unreadable, ...problems.map(describeProblem)];
    return said.length === 0
      ? []
      : [`${file.path} is not what ${file.folder} holds:`, ...said.map((line) => `  ${line}`)];
  });
}
