// Writes what src imports of data: profiles, records, ids that moved, and official requirements.
import { compile } from "./modules/compiling";
import { root } from "./reading/files";

try {
  console.log(`${await compile(root)} species compiled.`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
