// What a state of the project has that users can name, and what of it goes or comes.
import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { fieldOf, fieldsOf } from "../../data/reading/fields";
import { changedSince, git, gitOrNothing } from "../../data/reading/history";

/** What users can name. */
interface Names {
  /** Exports, with their subpath. */
  readonly exports: ReadonlySet<string>;
  /** Ids of species, and those that forward to one. */
  readonly ids: ReadonlySet<string>;
  readonly moved: ReadonlyMap<string, string>;
  /** Forms, as `id form`. */
  readonly forms: ReadonlySet<string>;
}

/** A sentence's subject for each name that a commit has and the working tree has not, and the other way round. */
export async function namesSince(
  root: string,
  commit: string,
): Promise<{ readonly gone: readonly string[]; readonly added: readonly string[] }> {
  const changed = new Set(await changedSince(root, commit, "tests/surface", "data"));
  const now: Reader = async (path) =>
    existsSync(join(root, path)) ? readFile(join(root, path), "utf8") : undefined;
  const then: Reader = (path) =>
    changed.has(path) ? gitOrNothing(root, "show", `${commit}:${path}`) : now(path);
  const paths = (await git(root, "ls-tree", "-r", "--name-only", commit, "data", "tests/surface")).split(
    "\n",
  );
  const current = [...new Set([...paths, ...changed])];
  const [before, after] = [await namesIn(paths, then), await namesIn(current, now)];
  return { gone: goneFrom(before, after), added: addedTo(before, after) };
}

/** Reads a file of the project, or undefined where there is none. */
type Reader = (path: string) => Promise<string | undefined>;

async function namesIn(paths: readonly string[], read: Reader): Promise<Names> {
  const texts = await Promise.all(paths.map(async (path) => [path, await read(path)] as const));
  const under = (folder: string, extension: string) =>
    texts.flatMap(([path, text]) =>
      text !== undefined && path.startsWith(`${folder}/`) && path.endsWith(extension)
        ? [{ name: basename(path, extension), text }]
        : [],
    );
  const species = under("data/species", ".json");
  const moved = under("data/moved", ".json").map(
    ({ name, text }) => [name, String(fieldOf(JSON.parse(text), "to"))] as const,
  );
  return {
    exports: new Set(
      under("tests/surface", ".txt").flatMap(({ name, text }) =>
        exportsIn(text).map((held) => `${held} of ${name}`),
      ),
    ),
    ids: new Set([...species.map(({ name }) => name), ...moved.map(([id]) => id)]),
    moved: new Map(moved),
    forms: new Set(
      species.flatMap(({ name, text }) =>
        fieldsOf(fieldOf(JSON.parse(text), "forms")).map(([form]) => `${name} ${form}`),
      ),
    ),
  };
}

/** The names that a report of exports tells: whatever stands at the beginning of a line. */
const exportsIn = (report: string): readonly string[] =>
  [...report.matchAll(/^(?:(?:class|const|function|interface|type) )?([\w.]+)/gm)].flatMap(
    ([, name]) => name ?? [],
  );

function goneFrom(before: Names, after: Names): readonly string[] {
  const currentForm = (held: string) => {
    const [id = "", form = ""] = held.split(" ");
    return `${after.moved.get(id) ?? id} ${form}`;
  };
  return [
    ...[...before.exports].filter((name) => !after.exports.has(name)).map((name) => `The export ${name}`),
    ...[...before.ids]
      .filter((id) => !after.ids.has(id))
      .map((id) => `The id ${id}, which data/moved does not forward,`),
    ...[...before.forms]
      .filter((held) => after.ids.has(held.split(" ")[0] ?? "") && !after.forms.has(currentForm(held)))
      .map((held) => `The form ${held.replace(" ", ", ")},`),
  ];
}

/** The exports, species and forms that are new; those of a species that only moved are not. */
function addedTo(before: Names, after: Names): readonly string[] {
  const former = new Map([...after.moved].map(([from, to]) => [to, from]));
  const isNewId = (id: string) => !before.ids.has(id) && !after.moved.has(id) && !former.has(id);
  const isNewForm = (held: string) => {
    const [id = "", form = ""] = held.split(" ");
    return !isNewId(id) && !before.forms.has(held) && !before.forms.has(`${former.get(id) ?? id} ${form}`);
  };
  return [
    ...[...after.exports].filter((name) => !before.exports.has(name)).map((name) => `The export ${name}`),
    ...[...after.ids].filter(isNewId).map((id) => `The species ${id}`),
    ...[...after.forms].filter(isNewForm).map((held) => `The form ${held.replace(" ", ", ")},`),
  ];
}
