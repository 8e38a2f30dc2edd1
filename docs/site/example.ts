// The example app as a part of the site: one plain script, since modules do not load from a file system.
import { existsSync } from "node:fs";
import { copyFile, mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";
import { root } from "../../data/reading/files";

const app = join(root, "docs/example-app");
const asModule = '<script type="module" src="./main.ts"></script>';

/** Builds it into the site; false where there is none. */
export async function writeExample(site: string): Promise<boolean> {
  if (!existsSync(app)) return false;
  const page = await readFile(join(app, "index.html"), "utf8");
  if (!page.includes(asModule)) throw new Error(`docs/example-app/index.html has no ${asModule}.`);
  const place = join(site, "example");
  await mkdir(place, { recursive: true });
  await Promise.all([
    writeFile(join(place, "index.html"), page.replace(asModule, '<script src="app.js" defer></script>')),
    copyFile(join(app, "style.css"), join(place, "style.css")),
    build({
      stdin: { contents: 'import { startApp } from "./app"; void startApp();', resolveDir: app },
      outfile: join(place, "app.js"),
      tsconfig: join(root, "tsconfig.json"),
      bundle: true,
      minify: true,
      format: "iife",
      target: "es2022",
    }),
  ]);
  return true;
}
