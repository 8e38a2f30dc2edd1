import type { TraitValue } from "../../species";

/** The least number to keep, or the next above a span in which one animal would take all the harm. */
export function leastNumber({ least, avoid }: TraitValue<"social.group">, count: number): number {
  const avoided = avoid && count >= Math.max(least, avoid.min) && count <= avoid.max;
  return avoided ? avoid.max + 1 : least;
}
