// Packs the package and installs it into an empty project, as npm would.
import { execFile } from "node:child_process";
import { copyFile, mkdir, mkdtemp, readFile, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { root } from "../../data/reading/files";

const run = promisify(execFile);

interface Packed {
  readonly filename: string;
  readonly files: readonly { readonly path: string }[];
}

/** The project's folder, the installed package in it, the tarball and the paths in it. */
export async function install() {
  const { name } = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
  const folder = await mkdtemp(join(tmpdir(), `${name}-consumer-`));
  const installed = join(folder, "node_modules", name);
  const pack = ["pack", "--ignore-scripts", "--json", "--pack-destination", folder];
  const [packed]: readonly Packed[] = JSON.parse((await run("npm", pack, { cwd: root })).stdout);
  if (!packed) throw new Error("npm packed nothing.");
  const { filename, files } = packed;
  await mkdir(installed, { recursive: true });
  await run("tar", ["-xzf", join(folder, filename), "-C", installed, "--strip-components=1"]);
  await symlink(join(root, "node_modules/zod"), join(folder, "node_modules/zod"), "junction");
  await writeFile(join(folder, "package.json"), '{ "type": "module" }');
  for (const file of ["app.ts", "types.ts", "load.mjs", "figures.mjs", "smoke.mjs", "answer.mjs"])
    await copyFile(new URL(file, import.meta.url), join(folder, file));
  return { folder, installed, tarball: join(folder, filename), files: files.map(({ path }) => path) };
}
