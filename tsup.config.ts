import { basename } from "node:path";
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
  search: "src/search/index.ts",
  evidence: "src/evidence/index.ts",
  load: "src/load/index.ts",
  plan: "src/plan/index.ts",
  compatibility: "src/compatibility/index.ts",
  advice: "src/advice/index.ts",
  rules: "src/compatibility/rules/index.ts",
  standards: "src/standards/index.ts",
  report: "src/report/index.ts",
  "report/de": "src/report/de/index.ts",
  tables: "src/tables/index.ts",
};

/** What is declared for each module of a folder alike. */
const alike = {
  profile: "src/catalog/profile.ts",
  record: "src/evidence/record.ts",
  names: "src/search/language.ts",
};

/** The declarations that tsc wrote, each put into one file a module: tsc alone checks types. */
const declared = Object.fromEntries(
  Object.entries({ ...entry, ...alike }).map(([name, path]) => [
    name,
    `.cache/types/${path.replace(/\.ts$/, ".d.ts")}`,
  ]),
);

const everywhere: Options = { format: ["esm"], target: "es2022", platform: "neutral", silent: true };

/** No module has side effects: an import for its effects alone would only make bundlers warn and files load. */
const withoutBareImports = {
  name: "without-bare-imports",
  renderChunk: (code: string) => ({ code: code.replaceAll(/^import "\.\/chunk-\w+\.js";\n/gm, "") }),
};

/** Modules of one species or one language stay files of their own, whoever imports them. */
const modulesApart: NonNullable<Options["esbuildPlugins"]>[number] = {
  name: "modules-apart",
  setup({ onResolve }) {
    const keep = (filter: RegExp, folder: string) =>
      onResolve({ filter }, ({ path }) => ({ path: `./${folder}/${basename(path)}.js`, external: true }));
    keep(/^\.\.\/catalog\/species\//, "catalog");
    keep(/^\.\/languages\//, "search");
  },
};

/** The modules of a folder, each by itself; all share one file of types. */
const apart = (folder: string, outDir: string): Options => ({
  ...everywhere,
  entry: [`${folder}/*.ts`],
  outDir,
  bundle: false,
  clean: true,
});

export default defineConfig([
  {
    ...everywhere,
    entry,
    dts: { entry: declared },
    splitting: true,
    clean: ["!catalog/**", "!evidence/**", "!search/**"],
    noExternal: ["convert-units"],
    plugins: [withoutBareImports],
    esbuildPlugins: [modulesApart],
  },
  apart("src/catalog/species", "dist/catalog"),
  apart("src/evidence/species", "dist/evidence"),
  apart("src/search/languages", "dist/search"),
]);
