// Writes the version of the package into CITATION.cff, for the package and for its data.
import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { parseDocument } from "yaml";
import { version } from "../package.json";

const file = fileURLToPath(new URL("../CITATION.cff", import.meta.url));
const citation = parseDocument(await readFile(file, "utf8"));
citation.set("version", version);
citation.setIn(["references", 0, "version"], version);
await writeFile(file, citation.toString({ lineWidth: 120 }));
