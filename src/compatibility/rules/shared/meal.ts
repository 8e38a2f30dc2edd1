import { decimal } from "../../../decimal";
import { type Kind, standardLength } from "../../../species";
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
  readonly clawReach: number;
}

/** A hunter that eats grown animals of a kind: how long it is, and the greatest of them that a source states, cm. */
interface Hunter {
  readonly kind: Kind;
  readonly length: number;
  readonly greatest: number | undefined;
}

/** Whether hunters of a kind seize with claws what rests beside them. */
export const isClawed = (kind: Kind): boolean => kind === "crayfish" || kind === "crab";

/**
 * What a hunter takes of a kind, at most: habits of the prey may lessen it. Crayfish and crabs seize what their claws
 * reach. Of others a stated greatest prey decides; without one fish by the hunter's length, and all else whatever its
 * length. Of fish that take snails too large to be swallowed no length is safe.
 */
export function reachOf(
  { kind, length, greatest }: Hunter,
  prey: Kind,
  { likelyPrey, possiblePrey, bandAboveStated, clawReach }: Shares,
): Reach {
  if (isClawed(kind)) {
    const reach = greatest ?? decimal(clawReach * length);
    return { eats: reach, tries: reach };
  }
  if (greatest === undefined)
    return prey === "fish"
      ? { eats: decimal(likelyPrey * length), tries: decimal(possiblePrey * length) }
      : { eats: Number.POSITIVE_INFINITY, tries: Number.POSITIVE_INFINITY };
  const piecemeal = kind === "fish" && prey === "snail" && greatest > likelyPrey * length;
  return {
    eats: greatest,
    tries: piecemeal ? Number.POSITIVE_INFINITY : decimal(bandAboveStated * greatest),
  };
}

/** Up to which length prey is surely eaten, cm. Prey like an eel goes down lengthwise: it counts at half its length. */
export const eatenUpTo = ({ eats }: Pick<Reach, "eats">, eelLike: boolean): number =>
  eelLike ? 2 * eats : eats;

/** What becomes of prey of a length, cm: in the band above what is surely eaten, also prey like an eel counts whole. */
export function fateOf(length: number, reach: Reach, eelLike: boolean): "eaten" | "tried" | "safe" {
  if (length <= eatenUpTo(reach, eelLike)) return "eaten";
  return length <= reach.tries ? "tried" : "safe";
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
