import { decimal } from "../../../decimal";
import { standardLength } from "../../../species";
import type { MeasureKinds } from "../../engine/rule/measures";

/** The measures of a finding about a meal. */
export const mealMeasures = {
  prey: "cm",
  hunter: "cm",
  share: "1",
  greatestPrey: "cm",
  safeFrom: "cm",
  hunts: "light",
  defence: "hazard",
  of: "prey",
} as const satisfies MeasureKinds;

/** Up to which lengths of prey, in cm, a hunter surely eats it, and up to which it may try. */
export interface Reach {
  readonly eats: number;
  readonly tries: number;
}

interface Shares {
  readonly likelyPrey: number;
  readonly possiblePrey: number;
  readonly bandAboveStated: number;
}

/** What a hunter takes: by a stated greatest prey; without one fish by its own length, and all else whatever its length. */
export function reachOf(
  greatest: number | undefined,
  hunter: number,
  preyIsFish: boolean,
  { likelyPrey, possiblePrey, bandAboveStated }: Shares,
): Reach {
  if (greatest !== undefined) return { eats: greatest, tries: decimal(bandAboveStated * greatest) };
  if (!preyIsFish) return { eats: Number.POSITIVE_INFINITY, tries: Number.POSITIVE_INFINITY };
  return { eats: decimal(likelyPrey * hunter), tries: decimal(possiblePrey * hunter) };
}

/**
 * What becomes of prey of a length, cm. Prey like an eel goes down lengthwise: it counts at half its length for what is
 * surely eaten, at its whole length in the band above.
 */
export function fateOf(length: number, { eats, tries }: Reach, eelLike: boolean): "eaten" | "tried" | "safe" {
  if ((eelLike ? length / 2 : length) <= eats) return "eaten";
  return length <= tries ? "tried" : "safe";
}

/** Whether prey is deeper than the hunter's mouth takes, with both lengths at the ends that harm. */
export function isTooDeep(
  depthShare: number | undefined,
  prey: number,
  hunter: number,
  preyDepth: number,
): boolean {
  return (
    depthShare !== undefined && depthShare * standardLength(prey).min > preyDepth * standardLength(hunter).max
  );
}
