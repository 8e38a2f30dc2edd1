// Writes the version of the package and the day of its release into CITATION.cff.
import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { version } from "../package.json";
import { released } from "./released";

const file = fileURLToPath(new URL("../CITATION.cff", import.meta.url));
const today = new Date().toISOString().slice(0, 10);
await writeFile(file, released(await readFile(file, "utf8"), version, today));
