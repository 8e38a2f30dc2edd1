// Every property draws its cases from the seed that the run names: `npm test` always the same, `npm run explore` new ones.
import fc from "fast-check";
import { inject } from "vitest";
import { runs } from "./runs";

fc.configureGlobal({ seed: inject("seed"), numRuns: runs(100) });
