import { defineConfig } from "tsup";

/** No module has side effects: an import for its effects alone would only make bundlers warn and files load. */
const withoutBareImports = {
  name: "without-bare-imports",
  renderChunk: (code: string) => ({ code: code.replaceAll(/^import "\.\/chunk-\w+\.js";\n/gm, "") }),
};

export default defineConfig({
  entry: {
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
    compatibility: "src/compatibility/index.ts",
    standards: "src/standards/index.ts",
    report: "src/report/index.ts",
  },
  format: ["esm"],
  target: "es2022",
  platform: "neutral",
  splitting: true,
  clean: true,
  dts: true,
  noExternal: ["convert-units"],
  plugins: [withoutBareImports],
});
