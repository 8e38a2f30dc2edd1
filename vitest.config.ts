import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const source = (path: string) => fileURLToPath(new URL(`./src/${path}`, import.meta.url));

export default defineConfig({
  resolve: {
    alias: [
      { find: /^vivary$/, replacement: source("index.ts") },
      { find: /^vivary\/(catalog|evidence)\/(.+)$/, replacement: source("$1/species/$2.ts") },
      { find: /^vivary\/(.+)$/, replacement: source("$1/index.ts") },
    ],
  },
  test: {
    include: ["tests/**/*.test.ts"],
    // Property tests and runs of the tools take seconds on a busy machine.
    testTimeout: 30_000,
    typecheck: { enabled: true, include: ["tests/**/*.test-d.ts"] },
    coverage: {
      provider: "v8",
      include: ["src/**/*.ts"],
      exclude: ["src/**/generated.ts", "src/**/index.ts"],
    },
  },
});
