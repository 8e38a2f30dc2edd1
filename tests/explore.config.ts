import { mergeConfig } from "vitest/config";
import config from "./vitest.config.ts";

/** The same tests with a seed nobody has tried, and ten times as many cases a property. */
export default mergeConfig(config, {
  test: { provide: { seed: Date.now() % 2 ** 31, depth: 10 }, testTimeout: 3_600_000 },
});
