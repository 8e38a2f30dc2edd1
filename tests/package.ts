// Checks what a consumer gets: packs the package, installs it elsewhere, and loads, types and bundles it there. A word
// behind it picks the checks that have it in their names.
import { execFile } from "node:child_process";
import { readFile, rm, writeFile } from "node:fs/promises";
import { join, posix } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { createContext, runInContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { type BuildOptions, build } from "esbuild";
import type { Browser } from "playwright-core";
import { publint } from "publint";
import { formatMessage } from "publint/utils";
import ts from "typescript";
import { root } from "../data/reading/files";
import { type Bundle, bundlers } from "./consumer/bundlers";
import { chromiumHere, launched, type Seen, seenIn } from "./consumer/chromium";
import { install } from "./consumer/install";
import { answersOfNode } from "./consumer/smoke";

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

/** The species, and the language, that stand for all where a check looks at one. */
const example = "danio-rerio";
const exampleLanguage = "en";

const manifest: Manifest = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
const sizes: Readonly<Record<string, Size>> = JSON.parse(
  await readFile(join(root, "tests/sizes.json"), "utf8"),
);
const exported = Object.entries(manifest.exports).flatMap(([path, target]) =>
  typeof target === "string" ? [] : [{ path, targets: Object.values(target) }],
);
const ofExample = (text: string) =>
  text.replace("search/*", `search/${exampleLanguage}`).replace("*", example);
const specifiers = exported.map(({ path }) => manifest.name + ofExample(path).slice(1));

const { folder, installed, tarball, files } = await install();
const catalog: typeof import("vivary/catalog") = await import(
  pathToFileURL(join(installed, "dist/catalog.js")).href
);
const measured: Measured[] = [];

const ids = catalog.allSpecies.map(({ id }) => id);

/** Why a check could not be made: it has neither passed nor failed. */
class Skipped extends Error {}

type Check = () => readonly string[] | Promise<readonly string[]>;

/** The ways in which TypeScript finds modules. */
const resolutions: readonly (readonly [mode: string, options: ts.CompilerOptions])[] = [
  ["bundler", { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler }],
  ["node16", { module: ts.ModuleKind.Node16 }],
  ["node20", { module: ts.ModuleKind.Node20 }],
  ["nodenext", { module: ts.ModuleKind.NodeNext }],
];

/** The oldest TypeScript that types are promised for, in the ways of those above that it knows. */
const oldest = fileURLToPath(import.meta.resolve("typescript-5.4/lib/tsc.js"));
const resolutionsOfOldest: readonly (readonly [mode: string, ...options: string[]])[] = [
  ["bundler", "--module", "esnext", "--moduleResolution", "bundler"],
  ["node16", "--module", "node16"],
  ["nodenext", "--module", "nodenext"],
];

/** How many types a consumer's compiler may make of our declarations. */
const mostInstantiations = 42_500;

const tscOptions = ["--target", "es2022", "--lib", "es2022,dom", "--strict", "--noEmit"];

/** Bytes, zipped, that the search may take besides names. */
const searchItself = 3000;

/** Each check answers one line a problem. */
const checks: Readonly<Record<string, Check>> = {
  "The tarball holds what it should": () => {
    const entries = exported.flatMap(({ targets }) => targets.map((file) => ofExample(file).slice(2)));
    const needed = ["package.json", "README.md", "LICENSE", "NOTICE.md", "CITATION.cff", ...entries];
    const allowed =
      /^((CHANGELOG|DEVELOPERS)\.md|docs\/(rules|guides\/[\w-]+)\.md|dist\/[\w.-]+\.(js|d\.ts)|dist\/(catalog|evidence|search)\/[a-z-]+\.js)$/;
    const missing = needed.filter((file) => !files.includes(file));
    const strange = files.filter((file) => !needed.includes(file) && !allowed.test(file));
    return [
      ...missing.map((file) => `${file} is missing`),
      ...strange.map((file) => `${file} does not belong there`),
    ];
  },

  "Every link of a page leads to a file of the package, or to an address": async () => {
    const pages = files.filter((file) => file.endsWith(".md"));
    const broken = pages.map(async (page) => {
      const text = await readFile(join(installed, page), "utf8");
      const links = [...text.matchAll(/\]\(([^)\s]+)\)/g)].map(([, link = ""]) => link);
      const own = links.filter((link) => !/^(https:|#)/.test(link)).map((link) => link.replace(/#.*/, ""));
      return own
        .filter((link) => !files.includes(posix.join(posix.dirname(page), link)))
        .map((link) => `${page}: ${link}`);
    });
    return (await Promise.all(broken)).flat();
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

  ...Object.fromEntries(
    resolutionsOfOldest.map(([mode, ...options]) => [
      `TypeScript 5.4 finds the types as ${mode}`,
      () => node(oldest, ...tscOptions, ...options, "app.ts", "types.ts"),
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

  "Chromium gives the same answers as Node, in a page and in a worker, under a strict policy": async () => {
    await writeFile(join(folder, "page.js"), 'export { answers } from "./smoke.mjs";');
    const expected = await answersOfNode(folder);
    return inChromium("esbuild", ({ page, worker, complaints }) => [
      ...complaints,
      ...Object.entries({ page, worker }).flatMap(([where, found]) =>
        JSON.stringify(found) === expected ? [] : [`in the ${where}: ${JSON.stringify(found)}`],
      ),
    ]);
  },

  ...Object.fromEntries(
    Object.keys(bundlers).map((bundler) => [
      `A page that shows three fishes loads three of them: ${bundler}`,
      async () => {
        await writeFile(join(folder, "page.js"), pageOfThree);
        return inChromium(bundler, threeFishesProblems);
      },
    ]),
  ),

  "The names of a language take no more than 50 bytes a species, zipped, those of science neither":
    async () => {
      const most = 50 * catalog.allSpecies.length;
      const languages = files.filter((file) => /^dist\/search\/.+\.js$/.test(file));
      const named = await Promise.all(
        languages.map(async (file) => ({
          file,
          bytes: zipped(await readFile(join(installed, file), "utf8")),
        })),
      );
      const { text } = await bundleOf('export { suggestSpecies } from "vivary/search";');
      const english = named.find(({ file }) => file.endsWith("/en.js"))?.bytes ?? 0;
      const counted = zipped(text) - english;
      measured.push({
        name: "suggestSpecies, beyond its English",
        plain: text.length,
        gzip: zipped(text),
        counted,
        ceiling: searchItself + most,
      });
      for (const { file, bytes } of named) console.log(`        ${file}: ${bytes} B, at most ${most} B`);
      return named.filter(({ bytes }) => bytes > most).map(({ file, bytes }) => `${file}: ${bytes} B`);
    },

  "Bundles stay under their ceilings": async () => {
    for (const [name, { code, beyond, ceiling }] of Object.entries(sizes)) {
      const { text } = await bundleOf(code);
      const own = beyond ? zipped(JSON.stringify(catalog.speciesById(beyond))) : 0;
      measured.push({ name, plain: text.length, gzip: zipped(text), counted: zipped(text) - own, ceiling });
    }
    const readme = await readFile(join(root, "README.md"), "utf8");
    const told = [...readme.matchAll(/^\| ([\w ,]+) \| ([\d.]+) kB \|$/gm)];
    const wrong = told.flatMap(([, name = "", size]) => {
      const bytes = measured.find((one) => one.name === name)?.gzip ?? Number.NaN;
      return Math.abs(Number(size) * 1000 - bytes) <= Math.max(100, bytes / 10)
        ? []
        : [`README.md says ${size} kB for ${name}, measured ${bytes} B`];
    });
    const over = measured
      .filter(({ counted, ceiling }) => counted >= ceiling)
      .map(({ name, counted, ceiling }) => `${name}: ${counted} B, ceiling ${ceiling} B`);
    return [...over, ...wrong, ...(told.length > 0 ? [] : ["README.md tells no size"])];
  },
};

/** A page that shows three fishes, one of them by an old id, and searches. */
const pageOfThree = `import { loadSpecies, suggestSpecies } from "vivary/search";
export async function answers() {
  const shown = await Promise.all(["danio-rerio", "betta-splendens", "corydoras-paleatus"].map(loadSpecies));
  return [suggestSpecies("gupp")[0].name, ...shown.map(({ id }) => id)];
}
`;

/** The browser that all checks share. */
let browser: Promise<Browser> | undefined;

/** Bundles `page.js` and looks at it in Chromium, or says that nothing was looked at where there is none. */
async function inChromium(
  bundler: string,
  problems: (seen: Seen, bundle: Bundle) => readonly string[],
): Promise<readonly string[]> {
  const program = chromiumHere();
  if (!program) {
    if (process.env.CI) return ["Chromium is not installed"];
    throw new Skipped("Chromium is not installed");
  }
  const bundle = (await bundlers[bundler]?.(folder)) ?? new Map<string, string>();
  browser ??= launched(program);
  return problems(await seenIn(await browser, bundle), bundle);
}

function threeFishesProblems({ page, complaints, loaded }: Seen, bundle: Bundle): readonly string[] {
  const expected = ["guppy", "danio-rerio", "betta-splendens", "hoplisoma-paleatum"];
  const ofOne = [...bundle.keys()].filter((name) => ids.some((id) => name.startsWith(id)));
  const shown = ofOne.filter((name) => loaded.has(name));
  const bytes = [...loaded].map(([name, size]) => `${name} ${size} B`);
  console.log(`        ${bytes.join(", ")}`);
  return [
    ...complaints,
    ...(JSON.stringify(page) === JSON.stringify(expected) ? [] : [`answered ${JSON.stringify(page)}`]),
    ...(ofOne.length === ids.length ? [] : [`${ofOne.length} files of one species, expected ${ids.length}`]),
    ...(shown.length === 3 ? [] : [`loaded ${shown.join(", ")}`]),
  ];
}

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

async function problemsOf(check: Check): Promise<readonly string[] | Skipped> {
  try {
    return await check();
  } catch (error) {
    return error instanceof Skipped ? error : [String(error)];
  }
}

const asked = process.argv[2] ?? "";

const problems: string[] = [];
for (const [name, check] of Object.entries(checks).filter(([name]) => name.includes(asked))) {
  const found = await problemsOf(check);
  if (found instanceof Skipped) {
    console.log(`skipped  ${name}: ${found.message}`);
    continue;
  }
  console.log(`${found.length === 0 ? "ok    " : "FAILED"}  ${name}`);
  problems.push(...found.map((problem) => `${name}: ${problem}`));
}
await (await browser)?.close();
console.table(measured);
await rm(folder, { recursive: true });

for (const problem of problems) console.error(problem);
process.exitCode = problems.length > 0 ? 1 : 0;
