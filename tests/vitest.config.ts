import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";
import { thorough } from "./thorough.ts";

const source = (path: string) => fileURLToPath(new URL(`../src/${path}`, import.meta.url));

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  resolve: {
    alias: [
      { find: /^vivary$/, replacement: source("index.ts") },
      { find: /^vivary\/(catalog|evidence)\/(.+)$/, replacement: source("$1/species/$2.ts") },
      { find: /^vivary\/search\/(.+)$/, replacement: source("search/languages/$1.ts") },
      { find: /^vivary\/(.+)$/, replacement: source("$1/index.ts") },
    ],
  },
  test: {
    // Property tests and runs of the tools take seconds on a busy machine.
    testTimeout: 300_000,
    maxWorkers: "100%",
    // These mock nothing and change nothing, so that they may share what they import.
    isolate: false,
    setupFiles: ["tests/seed.ts"],
    provide: { seed: 1, depth: 1 },
    experimental: { fsModuleCache: true, fsModuleCachePath: ".cache/vitest" },
    projects: [
      // One after the other: workers are shared among files of one project alone.
      {
        extends: true,
        test: {
          name: "quick",
          include: ["tests/**/*.test.ts"],
          exclude: thorough,
          sequence: { groupOrder: 0 },
        },
      },
      { extends: true, test: { name: "thorough", include: thorough, sequence: { groupOrder: 1 } } },
    ],
    coverage: {
      provider: "v8",
      include: ["src/**/*.ts"],
      exclude: [
        "src/**/generated.ts",
        "src/{catalog,evidence}/species/**",
        "src/search/languages/**",
        "src/**/index.ts",
      ],
    },
  },
});
