// Prints what the smoke test answers, as JSON.
import { answers } from "./smoke.mjs";

console.log(JSON.stringify(await answers()));
