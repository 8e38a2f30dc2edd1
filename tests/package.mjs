// Checks what a consumer gets: packs the package, installs it elsewhere, and loads, types and bundles it there.
import { execFile } from "node:child_process";
import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import ts from "typescript";
import { install, root } from "./consumer/install.mjs";

const run = promisify(execFile);
const manifest = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
/** The species that stands for all where a check looks at one. */
const example = "danio-rerio";
const sizes = JSON.parse(await readFile(join(root, "tests/sizes.json"), "utf8"));
const subpaths = Object.entries(manifest.exports)
  .filter(([, target]) => target.types)
  .map(([path, { types, default: module }]) =>
    [path, types, module].map((part) => part.replace("*", example)),
  );
const specifiers = subpaths.map(([path]) => manifest.name + path.slice(1));

const { folder, installed, tarball, files } = await install();
const catalog = await import(pathToFileURL(join(installed, "dist/catalog.js")).href);
const measured = [];

/** Each check answers one line a problem. */
const checks = {
  "The tarball holds what it should": () => {
    const entries = subpaths.flatMap(([, ...targets]) => targets.map((file) => file.slice(2)));
    const needed = ["package.json", "README.md", "LICENSE", "NOTICE.md", "THIRD-PARTY.md", ...entries];
    const allowed = /^(CHANGELOG\.md|dist\/[\w-]+\.(js|d\.ts)|dist\/(catalog|evidence)\/[a-z-]+\.js)$/;
    const missing = needed.filter((file) => !files.includes(file));
    const strange = files.filter((file) => !needed.includes(file) && !allowed.test(file));
    return [
      ...missing.map((file) => `${file} is missing`),
      ...strange.map((file) => `${file} does not belong there`),
    ];
  },

  "No file tells of a source map or of the machine": async () => {
    const trace = /sourceMappingURL|(?<![\w.])[\\/](home|root|tmp|Users)[\\/]/;
    const texts = await Promise.all(files.map((file) => readFile(join(installed, file), "utf8")));
    return files
      .filter((_, index) => texts[index].includes(root) || trace.test(texts[index]))
      .map((file) => `${file} does`);
  },

  "publint is content": async () => {
    const { buffer } = await readFile(tarball);
    const { messages } = await publint({ pack: { tarball: buffer }, strict: true });
    return messages.map((message) => formatMessage(message, manifest, { color: false }));
  },

  "attw resolves every type": () => {
    const attw = new URL("dist/index.js", import.meta.resolve("@arethetypeswrong/cli/package.json"));
    return node(fileURLToPath(attw), tarball, "--profile", "esm-only");
  },

  "Node imports and requires every module alike": () => node(join(folder, "load.mjs"), ...specifiers),

  ...Object.fromEntries(
    Object.entries({
      bundler: { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler },
      node16: { module: ts.ModuleKind.Node16 },
      node20: { module: ts.ModuleKind.Node20 },
      nodenext: { module: ts.ModuleKind.NodeNext },
    }).map(([mode, options]) => [`tsc finds the types as ${mode}`, () => typeProblems(options)]),
  ),

  "dist imports zod and nothing else": async () => {
    const entryPoints = files.filter((file) => file.endsWith(".js")).map((file) => join(installed, file));
    const { inputs } = await bundle({ entryPoints, packages: "external", outdir: folder });
    const imports = Object.values(inputs).flatMap((input) => input.imports);
    const foreign = new Set(imports.filter(({ external }) => external).map(({ path }) => path));
    return [...foreign].filter((path) => path !== "zod").map((path) => `imports ${path}`);
  },

  "Only schema brings zod": async () => {
    const problems = specifiers.map(async (path) => {
      const { inputs } = await bundleOf(`export * from "${path}";`);
      const brings = Object.keys(inputs).some((input) => input.includes("node_modules/zod/"));
      return brings === path.endsWith("/schema") ? [] : [`${path} brings ${brings ? "zod" : "no zod"}`];
    });
    return (await Promise.all(problems)).flat();
  },

  "The root brings no species": async () => {
    const { text } = await bundleOf(`export * from "${manifest.name}";`);
    const names = catalog.allSpecies.flatMap(({ id, taxonomy }) => [id, taxonomy.name]);
    return names.filter((name) => text.includes(name)).map((name) => `the bundle says ${name}`);
  },

  "An app runs with nothing but the language": async () => {
    const { text } = await bundle({
      entryPoints: [join(folder, "app.ts")],
      format: "iife",
      globalName: "app",
    });
    const context = createContext({}, { codeGeneration: { strings: false, wasm: false } });
    const found = runInContext(`delete globalThis.console; ${text} JSON.stringify(app.answers)`, context);
    const expected = '["betta-splendens",60.96,"unsuitable","Unsuitable"]';
    return found === expected ? [] : [`found ${found}, expected ${expected}`];
  },

  "Bundles stay under their ceilings": async () => {
    for (const [name, { code, beyond, ceiling }] of Object.entries(sizes)) {
      const { text } = await bundleOf(code);
      const own = beyond ? zipped(JSON.stringify(catalog.speciesById(beyond))) : 0;
      measured.push({ name, plain: text.length, gzip: zipped(text), counted: zipped(text) - own, ceiling });
    }
    return measured
      .filter(({ counted, ceiling }) => counted >= ceiling)
      .map(({ name, counted, ceiling }) => `${name}: ${counted} B, ceiling ${ceiling} B`);
  },
};

/** Runs a script in the consumer's folder; what it prints is a problem if it fails. */
async function node(...args) {
  try {
    await run(process.execPath, args, { cwd: folder });
    return [];
  } catch ({ stdout, stderr }) {
    return [stdout, stderr].filter(Boolean);
  }
}

function typeProblems(options) {
  const program = ts.createProgram([join(folder, "app.ts")], {
    ...options,
    target: ts.ScriptTarget.ES2022,
    lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
    types: [],
    strict: true,
    noEmit: true,
  });
  return ts
    .getPreEmitDiagnostics(program)
    .map(
      ({ file, messageText }) => `${file?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`,
    );
}

/** Bundles for the browser. */
async function bundle(options) {
  const { outputFiles, metafile } = await build({
    absWorkingDir: folder,
    bundle: true,
    minify: true,
    format: "esm",
    platform: "browser",
    write: false,
    metafile: true,
    logLevel: "silent",
    ...options,
  });
  return { text: outputFiles[0].text, inputs: metafile.inputs };
}

const bundleOf = (contents) => bundle({ stdin: { contents, resolveDir: folder } });
const zipped = (text) => gzipSync(text, { level: 9 }).length;

async function problemsOf(check) {
  try {
    return await check();
  } catch (error) {
    return [error.message];
  }
}

const problems = [];
for (const [name, check] of Object.entries(checks)) {
  const found = await problemsOf(check);
  console.log(`${found.length === 0 ? "ok    " : "FAILED"}  ${name}`);
  problems.push(...found.map((problem) => `${name}: ${problem}`));
}
console.table(measured);
await rm(folder, { recursive: true });

for (const problem of problems) console.error(problem);
process.exitCode = problems.length > 0 ? 1 : 0;
