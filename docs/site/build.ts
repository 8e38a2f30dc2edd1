// Writes the site into docs/site/dist. Every link in it is relative: it works from a folder and under any address.
import { mkdir, rm, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { allPages } from "./all-pages";
import { writeAssets } from "./assets";
import { writeExample } from "./example";
import { documentOf } from "./layout";
import { site } from "./site";

const started = performance.now();
await rm(site, { recursive: true, force: true });
await writeAssets(site);
const parts = { example: await writeExample(site) };
let count = 0;
for await (const page of allPages(parts)) {
  const file = join(site, page.path);
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, documentOf(page, parts));
  count += 1;
}
console.log(`${count} pages in ${((performance.now() - started) / 1000).toFixed(1)} s: ${site}`);
