// Loads TypeScript of src for the tools in this folder: Node 20 reads none itself.
import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { build } from "esbuild";

export const root = fileURLToPath(new URL("..", import.meta.url));

/** Imports a module of src, bundled. */
export async function importSource(path) {
  const bundle = await build({
    entryPoints: [join(root, "src", path)],
    bundle: true,
    format: "esm",
    platform: "node",
    write: false,
    logLevel: "warning",
  });
  const folder = await mkdtemp(join(tmpdir(), "vivary-"));
  try {
    const file = join(folder, "module.mjs");
    await writeFile(file, bundle.outputFiles[0].text);
    return await import(pathToFileURL(file).href);
  } finally {
    await rm(folder, { recursive: true });
  }
}
