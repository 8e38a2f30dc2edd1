import type { Condition } from "../compatibility";
import { overlap, type PartialRange } from "../ranges";

/** One condition that meets both, if they are about one fact and something meets both. */
export function jointCondition(a: Condition, b: Condition): Condition | undefined {
  if (a.on !== b.on || a.of !== b.of) return undefined;
  const about = { on: a.on, ...(a.of !== undefined && { of: a.of }) };
  if ("within" in a && "within" in b) {
    const within: PartialRange | undefined = overlap(a.within, b.within);
    return within && { ...about, within };
  }
  if ("is" in a && "is" in b) {
    const both = [a.is].flat().filter((value) => [b.is].flat().includes(value));
    const words = both.filter((value) => typeof value === "string");
    if (words.length > 1) return { ...about, is: words };
    return both[0] === undefined ? undefined : { ...about, is: both[0] };
  }
  return undefined;
}
