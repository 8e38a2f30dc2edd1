import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Figure, median, urlOf } from "./timing";

/** Milliseconds of the processor that a fresh Node takes to import a module. */
const importTime = (url: string) =>
  Number(
    execFileSync(process.execPath, [
      "--input-type=module",
      "--eval",
      `const start = process.cpuUsage(); await import("${url}"); const { user, system } = process.cpuUsage(start); console.log((user + system) / 1000);`,
    ]),
  );

/** What is measured of imports. */
export function startFigures(): readonly Figure[] {
  const folder = mkdtempSync(join(tmpdir(), "vivary-bench-"));
  const empty = join(folder, "empty.mjs");
  writeFileSync(empty, "");
  const modules = {
    empty: pathToFileURL(empty).href,
    root: urlOf("index"),
    zod: import.meta.resolve("zod"),
    schema: urlOf("schema"),
  };
  const names = Object.keys(modules) as (keyof typeof modules)[];
  const rounds = Array.from({ length: 15 }, () => names.map((name) => importTime(modules[name])));
  rmSync(folder, { recursive: true });
  const time = (name: keyof typeof modules) =>
    median(rounds.map((round) => round[names.indexOf(name)] ?? Number.NaN));
  console.log(`imports: ${names.map((name) => `${name} ${time(name).toFixed(1)} ms`).join(", ")}`);
  return [
    {
      figure: "import of the root, as times an empty file",
      found: time("root") / time("empty"),
      target: 3,
      held: 14,
    },
    { figure: "import of the schema, as times zod alone", found: time("schema") / time("zod"), target: 1.5 },
  ];
}
