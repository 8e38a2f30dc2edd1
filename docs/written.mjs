// Writes a page of docs that is made from the library itself. `--check` only tells whether it is stale.
import { readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";

export async function written(name, text) {
  const file = fileURLToPath(new URL(name, import.meta.url));
  if (!process.argv.includes("--check")) return writeFile(file, text);
  if ((await readFile(file, "utf8").catch(() => "")) === text) return;
  console.error(`docs/${name} is stale: npm run pages`);
  process.exitCode = 1;
}

/** A Markdown table. */
export const table = (head, rows) =>
  [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");
