import { defineConfig, type Options } from "tsup";

const entry = {
  index: "src/index.ts",
  units: "src/units/index.ts",
  ranges: "src/ranges/index.ts",
  tank: "src/tank/index.ts",
  water: "src/water/index.ts",
  species: "src/species/index.ts",
  schema: "src/schema/index.ts",
  catalog: "src/catalog/index.ts",
  evidence: "src/evidence/index.ts",
  load: "src/load/index.ts",
  plan: "src/plan/index.ts",
  compatibility: "src/compatibility/index.ts",
  advice: "src/advice/index.ts",
  rules: "src/compatibility/rules/index.ts",
  standards: "src/standards/index.ts",
  report: "src/report/index.ts",
  tables: "src/tables/index.ts",
};

/** The declarations that tsc wrote, each put into one file a module: tsc alone checks types. */
const declared = Object.fromEntries(
  Object.entries({ ...entry, profile: "src/catalog/profile.ts", record: "src/evidence/record.ts" }).map(
    ([name, path]) => [name, `.cache/types/${path.replace(/\.ts$/, ".d.ts")}`],
  ),
);

const everywhere: Options = { format: ["esm"], target: "es2022", platform: "neutral", silent: true };

/** No module has side effects: an import for its effects alone would only make bundlers warn and files load. */
const withoutBareImports = {
  name: "without-bare-imports",
  renderChunk: (code: string) => ({ code: code.replaceAll(/^import "\.\/chunk-\w+\.js";\n/gm, "") }),
};

/** One module a species, each by itself; all share one file of types. */
const speciesOf = (floor: string): Options => ({
  ...everywhere,
  entry: [`src/${floor}/species/*.ts`],
  outDir: `dist/${floor}`,
  bundle: false,
  clean: true,
});

export default defineConfig([
  {
    ...everywhere,
    entry,
    dts: { entry: declared },
    splitting: true,
    clean: ["!catalog/**", "!evidence/**"],
    noExternal: ["convert-units"],
    plugins: [withoutBareImports],
  },
  speciesOf("catalog"),
  speciesOf("evidence"),
]);
