// Installs the packed package as a stranger would, and does the same with it in every runtime: all must answer alike.
// The runtimes are installed for this alone, into .cache; CI runs it beside the tests.
import { copyFile, mkdir, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { build } from "esbuild";
import { root } from "../data/reading/files";
import { install } from "./consumer/install";
import { answersOfNode, printed } from "./consumer/smoke";

if (process.platform !== "linux" || process.arch !== "x64")
  throw new Error("The runtimes are installed for Linux on x64 alone: nothing was tried.");

const runtimes = join(root, ".cache/runtimes");
await mkdir(runtimes, { recursive: true });
await copyFile(join(root, "tests/runtimes/package.json"), join(runtimes, "package.json"));
await printed(runtimes, "npm", "install", "--ignore-scripts", "--no-audit", "--no-fund");
const program = (path: string) => join(runtimes, "node_modules", path);

const { folder } = await install();
const expected = await answersOfNode(folder);

/** What each answers; it throws where the runtime says that something is wrong. */
const tries: Readonly<Record<string, () => Promise<string>>> = {
  "Node 20": () => answersOfNode(folder, program("node20/bin/node")),
  "Node 22": () => answersOfNode(folder, program("node22/bin/node")),
  "Node 24": () => answersOfNode(folder, program("node24/bin/node")),
  "Deno, which may read and reach nothing": () =>
    printed(
      folder,
      program("@deno/linux-x64-glibc/deno"),
      "run",
      "--no-remote",
      "--no-prompt",
      "--node-modules-dir=manual",
      "answer.mjs",
    ),
  workerd: answersOfWorkerd,
};

/** Bundled for workerd, which compares by itself. */
async function answersOfWorkerd(): Promise<string> {
  const contents = `import assert from "node:assert/strict";
import { answers } from "./smoke.mjs";
export default {
  async test() {
    assert.equal(JSON.stringify(await answers()), ${JSON.stringify(expected)});
  },
};
`;
  await build({
    stdin: { contents, resolveDir: folder },
    absWorkingDir: folder,
    outfile: join(folder, "worker.js"),
    bundle: true,
    format: "esm",
    external: ["node:assert/strict"],
    logLevel: "silent",
    tsconfigRaw: {},
  });
  await writeFile(join(folder, "workerd.capnp"), workerdConfig);
  await printed(folder, program("@cloudflare/workerd-linux-64/bin/workerd"), "test", "workerd.capnp");
  return expected;
}

const workerdConfig = `using Workerd = import "/workerd/workerd.capnp";
const config :Workerd.Config = (services = [(name = "main", worker = .worker)]);
const worker :Workerd.Worker = (
  modules = [(name = "worker", esModule = embed "worker.js")],
  compatibilityDate = "2026-01-01",
  compatibilityFlags = ["nodejs_compat"],
);
`;

for (const [name, answer] of Object.entries(tries)) {
  const found = await answer().catch(String);
  console.log(`${found === expected ? "ok    " : "FAILED"}  ${name}`);
  if (found === expected) continue;
  console.error(`${name}: ${found}`);
  process.exitCode = 1;
}
await rm(folder, { recursive: true });
