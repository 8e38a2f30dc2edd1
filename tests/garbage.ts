import { setTimeout } from "node:timers/promises";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

setFlagsFromString("--expose-gc");
const collect: unknown = runInNewContext("gc");

/** How many of some objects are still held by somebody, after everything that nobody holds is collected. */
export async function stillHeld(objects: readonly WeakRef<object>[]): Promise<number> {
  await setTimeout(); // What was made in this turn is held until its end.
  if (typeof collect === "function") collect();
  return objects.filter((object) => object.deref() !== undefined).length;
}
