// Writes pages into the folder of the site.
import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { documentOf, type SiteParts } from "./layout";
import type { Page } from "./page";
import { site } from "./site";

/** Writes pages as documents. */
export async function writePages(pages: readonly Page[], parts: SiteParts): Promise<void> {
  for (const page of pages) {
    const file = join(site, page.path);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, documentOf(page, parts));
  }
}
