import { setTimeout } from "node:timers/promises";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

setFlagsFromString("--expose-gc");
const collect: unknown = runInNewContext("gc");

/** How often it is tried: code that is being compiled holds what it was called with until that is done. */
const mostTries = 50;

/** How many of some objects are still held by somebody, after everything that nobody holds is collected. */
export async function stillHeld(objects: readonly WeakRef<object>[]): Promise<number> {
  let held = objects.length;
  for (let tries = 0; held > 0 && tries < mostTries; tries += 1) {
    await setTimeout(20); // What was made or looked at in this turn is held until its end.
    if (typeof collect === "function") collect();
    held = objects.filter((object) => object.deref() !== undefined).length;
  }
  return held;
}
