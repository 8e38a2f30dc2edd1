// Checks what a consumer gets: packs the package, installs it elsewhere, and loads, types and bundles it there.
import { execFile } from "node:child_process";
import { readFile, rm } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { type BuildOptions, build } from "esbuild";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import ts from "typescript";
import { root } from "../data/files";
import { install } from "./consumer/install";

const run = promisify(execFile);

interface Manifest {
  readonly name: string;
  readonly exports: Readonly<Record<string, string | { readonly types: string; readonly default: string }>>;
}

interface Size {
  /** What a consumer writes. */
  readonly code: string;
  /** The species whose own JSON does not count. */
  readonly beyond?: string;
  /** Bytes, zipped. */
  readonly ceiling: number;
}

/** How large a bundle came out, in bytes. */
interface Measured {
  readonly name: string;
  readonly plain: number;
  readonly gzip: number;
  readonly counted: number;
  readonly ceiling: number;
}

/** The species that stands for all where a check looks at one. */
const example = "danio-rerio";

const manifest: Manifest = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
const sizes: Readonly<Record<string, Size>> = JSON.parse(
  await readFile(join(root, "tests/sizes.json"), "utf8"),
);
const exported = Object.entries(manifest.exports).flatMap(([path, target]) =>
  typeof target === "string" ? [] : [{ path, targets: Object.values(target) }],
);
const ofExample = (text: string) => text.replace("*", example);
const specifiers = exported.map(({ path }) => manifest.name + ofExample(path).slice(1));

const { folder, installed, tarball, files } = await install();
const catalog: typeof import("vivary/catalog") = await import(
  pathToFileURL(join(installed, "dist/catalog.js")).href
);
const measured: Measured[] = [];

type Check = () => readonly string[] | Promise<readonly string[]>;

/** The ways in which TypeScript finds modules. */
const resolutions: readonly (readonly [mode: string, options: ts.CompilerOptions])[] = [
  ["bundler", { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler }],
  ["node16", { module: ts.ModuleKind.Node16 }],
  ["node20", { module: ts.ModuleKind.Node20 }],
  ["nodenext", { module: ts.ModuleKind.NodeNext }],
];

/** How many types a consumer's compiler may make of our declarations. */
const mostInstantiations = 40_000;

/** Each check answers one line a problem. */
const checks: Readonly<Record<string, Check>> = {
  "The tarball holds what it should": () => {
    const entries = exported.flatMap(({ targets }) => targets.map((file) => ofExample(file).slice(2)));
    const needed = ["package.json", "README.md", "LICENSE", "NOTICE.md", "CITATION.cff", ...entries];
    const allowed = /^(CHANGELOG\.md|dist\/[\w.-]+\.(js|d\.ts)|dist\/(catalog|evidence)\/[a-z-]+\.js)$/;
    const missing = needed.filter((file) => !files.includes(file));
    const strange = files.filter((file) => !needed.includes(file) && !allowed.test(file));
    return [
      ...missing.map((file) => `${file} is missing`),
      ...strange.map((file) => `${file} does not belong there`),
    ];
  },

  "No file tells of a source map or of the machine": async () => {
    const trace = /sourceMappingURL|(?<![\w.])[\\/](home|root|tmp|Users)[\\/]/;
    const telling = files.map(async (file) => {
      const text = await readFile(join(installed, file), "utf8");
      return text.includes(root) || trace.test(text) ? [`${file} does`] : [];
    });
    return (await Promise.all(telling)).flat();
  },

  "publint is content": async () => {
    const packed = new Uint8Array(await readFile(tarball)).buffer;
    const { messages, pkg } = await publint({ pack: { tarball: packed }, strict: true });
    return messages.map((message) => formatMessage(message, pkg, { color: false }) ?? message.code);
  },

  "attw resolves every type": () => {
    const attw = new URL("dist/index.js", import.meta.resolve("@arethetypeswrong/cli/package.json"));
    return node(fileURLToPath(attw), tarball, "--profile", "esm-only");
  },

  "Node imports and requires every module alike": () => node(join(folder, "load.mjs"), ...specifiers),

  "Figures chosen at random lead to their sources": () => node(join(folder, "figures.mjs")),

  ...Object.fromEntries(
    resolutions.flatMap(([mode, options]) => [
      [`tsc finds the types as ${mode}`, () => typeProblems("app.ts", options)],
      [`The declarations hold by themselves as ${mode}, without a browser`, () => bareTypeProblems(options)],
    ]),
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
async function node(...args: readonly string[]): Promise<readonly string[]> {
  try {
    await run(process.execPath, args, { cwd: folder });
    return [];
  } catch (error) {
    const { stdout, stderr } = error as { readonly stdout?: string; readonly stderr?: string };
    return [stdout ?? String(error), stderr ?? ""].filter(Boolean);
  }
}

/** What tsc finds wrong in a file of the consumer. */
function typeProblems(file: string, options: ts.CompilerOptions): readonly string[] {
  return problemsOfProgram(programOf(file, { lib: ["lib.es2022.d.ts", "lib.dom.d.ts"], ...options }));
}

/** The same without the DOM, the declarations themselves checked, and with a bound on the work they make. */
function bareTypeProblems(options: ts.CompilerOptions): readonly string[] {
  const program = programOf("types.ts", { lib: ["lib.es2022.d.ts"], skipLibCheck: false, ...options });
  const problems = problemsOfProgram(program);
  const count = program.getInstantiationCount();
  return count <= mostInstantiations
    ? problems
    : [...problems, `${count} types instantiated, at most ${mostInstantiations}`];
}

const programOf = (file: string, options: ts.CompilerOptions) =>
  ts.createProgram([join(folder, file)], {
    target: ts.ScriptTarget.ES2022,
    types: [],
    strict: true,
    noEmit: true,
    ...options,
  });

const problemsOfProgram = (program: ts.Program): readonly string[] =>
  ts
    .getPreEmitDiagnostics(program)
    .map(
      ({ file, messageText }) => `${file?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`,
    );

/** Bundles for the browser. */
async function bundle(options: BuildOptions) {
  const { outputFiles, metafile } = await build({
    ...options,
    absWorkingDir: folder,
    bundle: true,
    minify: true,
    format: options.format ?? "esm",
    platform: "browser",
    write: false,
    metafile: true,
    logLevel: "silent",
    tsconfigRaw: {},
  });
  return { text: outputFiles[0]?.text ?? "", inputs: metafile.inputs };
}

const bundleOf = (contents: string) => bundle({ stdin: { contents, resolveDir: folder } });
const zipped = (text: string) => gzipSync(text, { level: 9 }).length;

async function problemsOf(check: Check): Promise<readonly string[]> {
  try {
    return await check();
  } catch (error) {
    return [String(error)];
  }
}

const problems: string[] = [];
for (const [name, check] of Object.entries(checks)) {
  const found = await problemsOf(check);
  console.log(`${found.length === 0 ? "ok    " : "FAILED"}  ${name}`);
  problems.push(...found.map((problem) => `${name}: ${problem}`));
}
console.table(measured);
await rm(folder, { recursive: true });

for (const problem of problems) console.error(problem);
process.exitCode = problems.length > 0 ? 1 : 0;
