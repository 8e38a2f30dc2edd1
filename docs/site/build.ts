// Writes the site into docs/site/dist. Every link in it is relative: it works from a folder and under any address.
import { fork } from "node:child_process";
import { once } from "node:events";
import { rm } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { allProfiles, commonPages } from "./all-pages";
import { writeAssets } from "./assets";
import { writeExample } from "./example";
import { allLanguages } from "./languages";
import type { SiteParts } from "./layout";
import { site } from "./site";
import { writePages } from "./write-pages";

/** The pages of profiles: company is judged for each, and every processor takes a share. */
async function writeProfiles(parts: SiteParts): Promise<number> {
  const of = availableParallelism();
  const program = fileURLToPath(new URL("share.ts", import.meta.url));
  const shares = Array.from({ length: of }, async (_, first) => {
    const [code] = await once(fork(program, [String(first), String(of), JSON.stringify(parts)]), "exit");
    if (code !== 0) throw new Error(`A share of the pages of species failed: ${code}.`);
  });
  await Promise.all(shares);
  return allProfiles.length * allLanguages.length;
}

const started = performance.now();
await rm(site, { recursive: true, force: true });
await writeAssets(site);
const parts = { example: await writeExample(site) };
const common = await writePages(await commonPages(parts), parts);
const count = common + (await writeProfiles(parts));
console.log(`${count} pages in ${((performance.now() - started) / 1000).toFixed(0)} s: ${site}`);
