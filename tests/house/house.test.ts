import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { root } from "../../data/reading/files";

interface Violation {
  readonly from: string;
  readonly to: string;
  readonly rule: { readonly name: string };
}

/** The rules that a small house breaks, given what each of its files imports. */
function broken(files: Readonly<Record<string, readonly string[]>>): readonly string[] {
  const folder = mkdtempSync(join(tmpdir(), "vivary-house-"));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  writeFileSync(join(folder, "tsconfig.json"), "{}");
  for (const [file, imported] of Object.entries(files)) {
    const lines = imported.map((from, index) => `import type * as name${index} from "${from}";`);
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), `${lines.join("\n")}\nexport const one = 1;\n`);
  }
  const program = join(root, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
  const config = join(root, ".config/house.mjs");
  const { stdout } = spawnSync(
    process.execPath,
    [program, "--config", config, "--output-type", "json", "src"],
    {
      cwd: folder,
      encoding: "utf8",
    },
  );
  const { summary }: { readonly summary: { readonly violations: readonly Violation[] } } = JSON.parse(stdout);
  return summary.violations
    .map(({ from, to, rule }) =>
      `${rule.name}: ${from} → ${to}`.replaceAll(/\S*node_modules/g, "node_modules"),
    )
    .sort();
}

/** A house that stands. */
const sound = {
  "src/errors.ts": [],
  "src/frozen.ts": ["./errors"],
  "src/index.ts": ["./units", "./species", "./compatibility"],
  "src/units/index.ts": ["./convert"],
  "src/units/convert.ts": ["../errors", "convert-units"],
  "src/species/index.ts": ["../units", "../errors"],
  "src/water/index.ts": ["../species"],
  "src/water/kelvin.ts": ["../units"],
  "src/tank/index.ts": ["../species"],
  "src/shelf/index.ts": ["../frozen"],
  "src/catalog/index.ts": ["../shelf", "../species"],
  "src/schema/index.ts": ["../species", "zod"],
  "src/compatibility/index.ts": ["./rules/one", "./thresholds"],
  "src/compatibility/thresholds.ts": ["../units", "../species/inner"],
  "src/species/inner.ts": [],
  "src/compatibility/animals/lengths.ts": ["../thresholds"],
  "src/compatibility/engine/judge.ts": ["../animals/lengths", "../../tank"],
  "src/compatibility/rules/one.ts": ["../engine/judge", "../thresholds"],
  "src/compatibility/verdict/verdict.ts": ["../rules/one"],
  "src/compatibility/assess/assess-plan.ts": ["../verdict/verdict"],
  "src/compatibility/meeting/witness.ts": ["../assess/assess-plan"],
  "src/report/matters/order.ts": [],
  "src/report/messages/english.ts": ["../matters/order"],
  "src/report/profile/trait-text.ts": ["../messages/english"],
  "src/report/describe/describe.ts": ["../profile/trait-text", "../messages/english"],
  "src/report/page/page-of.ts": ["../describe/describe"],
};

test("a house that stands breaks nothing", () => {
  expect(broken(sound)).toStrictEqual([]);
});

test("whatever breaks the plan is told, by the file that does", () => {
  const unsound = {
    ...sound,
    "src/errors.ts": ["./units"],
    "src/index.ts": ["./catalog", "./species/inner"],
    "src/units/convert.ts": ["../species"],
    "src/water/index.ts": ["../tank"],
    "src/water/files.ts": ["node:fs", "zod"],
    "src/species/index.ts": ["../units/convert", "../schema"],
    "src/compatibility/animals/lengths.ts": ["../engine/judge"],
    "src/compatibility/thresholds.ts": ["./rules/one"],
    "src/compatibility/engine/judge.ts": ["../index"],
    "src/compatibility/rules/one.ts": ["../verdict/verdict"],
    "src/compatibility/verdict/verdict.ts": ["../assess/assess-plan"],
    "src/compatibility/assess/assess-plan.ts": ["../meeting/witness"],
    "src/report/matters/order.ts": ["../messages/english"],
    "src/report/messages/english.ts": ["../profile/trait-text"],
    "src/report/describe/describe.ts": ["../page/page-of"],
    "src/attic/index.ts": ["../units"],
  };
  const told = broken(unsound).filter((line) => !line.startsWith("no-circle"));
  expect(new Set(told.map((line) => line.replace(/ → .*/, "")))).toStrictEqual(
    new Set([
      "the-ground-bears-all: src/errors.ts",
      "the-root-brings-no-data: src/index.ts",
      "units-stands-on-the-ground: src/units/convert.ts",
      "water-stands-on-species: src/water/index.ts",
      "nothing-foreign: src/water/files.ts",
      "only-schema-uses-zod: src/water/files.ts",
      "by-the-door: src/species/index.ts",
      "by-the-front-door: src/index.ts",
      "species-stands-on-ranges: src/species/index.ts",
      "stairs-of-src/compatibility-1: src/compatibility/animals/lengths.ts",
      "stairs-of-src/compatibility-1: src/compatibility/thresholds.ts",
      "stairs-of-src/compatibility-2: src/compatibility/engine/judge.ts",
      "stairs-of-src/compatibility-3: src/compatibility/rules/one.ts",
      "stairs-of-src/compatibility-4: src/compatibility/verdict/verdict.ts",
      "stairs-of-src/compatibility-5: src/compatibility/assess/assess-plan.ts",
      "stairs-of-src/report-1: src/report/matters/order.ts",
      "stairs-of-src/report-2: src/report/messages/english.ts",
      "stairs-of-src/report-4: src/report/describe/describe.ts",
      "every-floor-is-in-the-plan: src/attic/index.ts",
    ]),
  );
});

test("a circle is told, though it is one of types alone", () => {
  const round = { ...sound, "src/units/there.ts": ["./back"], "src/units/back.ts": ["./there"] };
  expect(broken(round)).toStrictEqual(["no-circle: src/units/back.ts → src/units/there.ts"]);
});
