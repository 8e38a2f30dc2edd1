// What pages share: the style, and the search, which is plain script, since modules do not load from a file system.
import { copyFile, mkdir } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { root } from "../../data/reading/files";
import { plainFiles } from "./texts/files";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Writes them into the site. */
export async function writeAssets(site: string): Promise<void> {
  await mkdir(join(site, "assets"), { recursive: true });
  await Promise.all([
    copyFile(here("style.css"), join(site, "assets/style.css")),
    ...Object.entries(plainFiles).map(([file, place]) => copyFile(join(root, file), join(site, place))),
    build({
      entryPoints: [here("browser/search-en.ts"), here("browser/search-de.ts")],
      outdir: join(site, "assets"),
      tsconfig: join(root, "tsconfig.json"),
      bundle: true,
      minify: true,
      format: "iife",
      target: "es2022",
    }),
  ]);
}
