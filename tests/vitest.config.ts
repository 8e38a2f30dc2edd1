import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const source = (path: string) => fileURLToPath(new URL(`../src/${path}`, import.meta.url));

/** What takes seconds: programs run on copies, properties, and whatever goes through the whole catalog. */
const thorough = [
  "tests/{data,forge,generated,house,judgements,release,surface}/**/*.test.ts",
  "tests/{catalog,evidence}/{find-species,generated}.test.ts",
  "tests/advice/{any-plan,least-tank/catalog}.test.ts",
  "tests/advice/{remedies,turning-points,who-could-join}/*.test.ts",
  "tests/bad-input.test.ts",
  "tests/evidence/bibliography/*.test.ts",
  "tests/compatibility/{assess-pair,assess-plan,bad-input,ceilings,forms,witness}.test.ts",
  "tests/compatibility/bounds/bounds.test.ts",
  "tests/compatibility/engine/{judge,judge-plan}.test.ts",
  "tests/compatibility/rules/declared.test.ts",
  "tests/plan/{condition,left-out}.test.ts",
  "tests/plan/shape/shape-problems.test.ts",
  "tests/plan/saved/{parse-plan,plan-data,plan-json-schema}.test.ts",
  "tests/ranges/{gap,limiting-pair,measures}.test.ts",
  "tests/report/**/{blocks,describe,english,german,hostile,language,profile-markdown,trait-text}.test.ts",
  "tests/search/suggest-species.test.ts",
  "tests/schema/{folders,hostile,json-schema}.test.ts",
  "tests/schema/species/parse.test.ts",
  "tests/species/profile/{admission,facts,resolve}.test.ts",
  "tests/standards/official-requirements.test.ts",
  "tests/**/properties.test.ts",
];

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
