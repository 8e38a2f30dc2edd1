import { mergeConfig } from "vitest/config";
import config from "./vitest.config.ts";

/** A seed nobody has tried, or one that is given: `SEED=… npm run explore`. It is drawn once, however often this is read. */
process.env.SEED ??= String(Date.now() % 2 ** 31);
const seed = Number(process.env.SEED);
if (process.env.VITEST) console.log(`The seed is ${seed}.`);

/** The same tests with that seed, and ten times as many cases a property. */
export default mergeConfig(config, {
  test: { provide: { seed, depth: 10 }, testTimeout: 3_600_000 },
});
