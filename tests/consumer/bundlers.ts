// Bundles code of a consumer in the ways that apps do.
import { readdir, readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { build as buildWithEsbuild } from "esbuild";
import { rollup } from "rollup";
import { build as buildWithVite } from "vite";

/** The text of every file that an app would serve, by name; the one to begin with is `page.js`. */
export type Bundle = ReadonlyMap<string, string>;

/** Each bundler makes a bundle of `page.js` in a folder. */
export const bundlers: Readonly<Record<string, (folder: string) => Promise<Bundle>>> = {
  async esbuild(folder) {
    const { outputFiles } = await buildWithEsbuild({
      entryPoints: [join(folder, "page.js")],
      absWorkingDir: folder,
      outdir: join(folder, "out"),
      bundle: true,
      splitting: true,
      minify: true,
      format: "esm",
      write: false,
      tsconfigRaw: {},
    });
    return new Map(outputFiles.map(({ path, text }) => [basename(path), text]));
  },

  async rollup(folder) {
    const installed = {
      name: "installed",
      resolveId: (name: string) =>
        name.startsWith("vivary/")
          ? join(folder, `node_modules/vivary/dist/${name.slice("vivary/".length)}.js`)
          : null,
    };
    const bundle = await rollup({ input: join(folder, "page.js"), plugins: [installed] });
    const { output } = await bundle.generate({ format: "es", entryFileNames: "page.js" });
    return new Map(output.map((file) => [file.fileName, "code" in file ? file.code : ""]));
  },

  async vite(folder) {
    const outDir = join(folder, "out-of-vite");
    await buildWithVite({
      root: folder,
      configFile: false,
      logLevel: "silent",
      build: {
        outDir,
        modulePreload: false,
        rolldownOptions: {
          input: join(folder, "page.js"),
          preserveEntrySignatures: "strict",
          output: { entryFileNames: "page.js", chunkFileNames: "[name].js" },
        },
      },
    });
    const names = (await readdir(outDir)).filter((name) => name.endsWith(".js"));
    return new Map(
      await Promise.all(
        names.map(async (name) => [name, await readFile(join(outDir, name), "utf8")] as const),
      ),
    );
  },
};
