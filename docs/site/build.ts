// Writes the site into docs/site/dist. Every link in it is relative: it works from a folder and under any address.
import { fork } from "node:child_process";
import { once } from "node:events";
import { rm } from "node:fs/promises";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { program } from "commander";
import { writeAssets } from "./assets";
import { commonPages } from "./common-pages";
import { writeExample } from "./example";
import type { Share } from "./share";
import { site } from "./site";
import { writePages } from "./write-pages";

const shareProgram = fileURLToPath(new URL("share.ts", import.meta.url));

async function writeShare(share: Share): Promise<void> {
  const [code] = await once(fork(shareProgram, [JSON.stringify(share)]), "exit");
  if (code !== 0) throw new Error(`Some pages of species were not written: ${code}.`);
}

async function build(company: boolean): Promise<void> {
  const started = performance.now();
  await rm(site, { recursive: true, force: true });
  await writeAssets(site);
  const parts = { example: await writeExample(site) };
  await writePages(await commonPages(parts), parts);
  const of = availableParallelism();
  await Promise.all(Array.from({ length: of }, (_, first) => writeShare({ parts, first, of, company })));
  console.log(`The site stands in ${site}, after ${((performance.now() - started) / 1000).toFixed(0)} s.`);
}

await program
  .option("--no-company", "leave company out of the pages of species: it takes most of the time")
  .action(({ company }: { readonly company: boolean }) => build(company))
  .parseAsync();
