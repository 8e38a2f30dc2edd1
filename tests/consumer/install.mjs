// Packs the package and installs it into an empty project, as npm would.
import { execFile } from "node:child_process";
import { copyFile, mkdir, mkdtemp, readFile, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";

const run = promisify(execFile);
export const root = fileURLToPath(new URL("../..", import.meta.url));

/** The project's folder, the installed package in it, the tarball and the paths in it. */
export async function install() {
  const { name } = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
  const folder = await mkdtemp(join(tmpdir(), `${name}-consumer-`));
  const installed = join(folder, "node_modules", name);
  const pack = ["pack", "--ignore-scripts", "--json", "--pack-destination", folder];
  const [{ filename, files }] = JSON.parse((await run("npm", pack, { cwd: root })).stdout);
  await mkdir(installed, { recursive: true });
  await run("tar", ["-xzf", join(folder, filename), "-C", installed, "--strip-components=1"]);
  await symlink(join(root, "node_modules/zod"), join(folder, "node_modules/zod"), "junction");
  await writeFile(join(folder, "package.json"), '{ "type": "module" }');
  await copyFile(new URL("app.ts", import.meta.url), join(folder, "app.ts"));
  await copyFile(new URL("load.mjs", import.meta.url), join(folder, "load.mjs"));
  return { folder, installed, tarball: join(folder, filename), files: files.map(({ path }) => path) };
}
