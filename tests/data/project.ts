import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { onTestFinished } from "vitest";
import { allFiles, type Collection, readCollection } from "../../data/reading/collection";
import { type DataFile, root } from "../../data/reading/files";

/** Species that a copy holds. */
const few = [
  "betta-splendens",
  "danio-choprae",
  "danio-rerio",
  "epalzeorhynchos-bicolor",
  "paracheirodon-innesi",
  "pethia-conchonius",
  "pethia-padamya",
  "puntigrus-tetrazona",
  "puntius-titteya",
  "rasbora-trilineata",
  "sahyadria-denisonii",
  "tanichthys-albonubes",
];

const collection = await readCollection(root);

/** What the few need of the data: their files, what they cite, and the ids that moved to them. */
function belongs({ folder, name, json }: DataFile): boolean {
  if (folder === "species") return few.includes(name);
  if (folder === "sources") return cited(collection).has(name);
  return folder !== "moved" || few.includes((json as { readonly to: string }).to);
}

interface Line {
  readonly species: string;
}
interface Requirement {
  readonly rule: { readonly table?: readonly Line[] };
}

/** The text of a file, its tables without the lines of other species. */
function ofFew({ folder, text }: DataFile): string {
  if (folder !== "standards") return text;
  const short = JSON.parse(text, (key, held) => {
    if (key === "table") return held.filter(({ species }: Line) => few.includes(species));
    if (key === "requirements") return held.filter(({ rule }: Requirement) => rule.table?.length !== 0);
    return held;
  });
  return JSON.stringify(short, null, 2);
}

const cited = ({ records }: Collection) =>
  new Set(
    records
      .filter(({ record }) => few.includes(record.id))
      .flatMap(({ record }) => Object.values(record.sources).map(({ cite }) => cite)),
  );

/** A folder with a few species and what belongs to them, gone when all is done. */
export function project(whenDone: (clean: () => void) => void = onTestFinished) {
  const folder = mkdtempSync(join(tmpdir(), "vivary-"));
  whenDone(() => rmSync(folder, { recursive: true }));
  const path = (file: string) => join(folder, file);
  const write = (file: string, text: string) => {
    mkdirSync(dirname(path(file)), { recursive: true });
    writeFileSync(path(file), text);
  };
  for (const file of allFiles(collection).filter(belongs)) write(file.path, ofFew(file));
  cpSync(join(root, "data/families.csv"), path("data/families.csv"));
  for (const held of ["data/schemas", ".vscode"]) cpSync(join(root, held), path(held), { recursive: true });
  return {
    root: folder,
    /** How many species there are. */
    species: few.length,
    read: (file: string) => readFileSync(path(file), "utf8"),
    write,
    remove: (file: string) => rmSync(path(file)),
  };
}

/** What a command said. */
export const textOf = ({ lines }: { readonly lines: readonly string[] }) => lines.join("\n");
