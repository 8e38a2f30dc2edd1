import type { Animals } from "../../plan";
import type { TraitValue } from "../../species";
import { bodyShapes } from "../../species/inner";

/** What tells of which build a fish is. */
interface Built {
  readonly party: Pick<Animals, "kind" | "family" | "order">;
  readonly "size.bodyShape"?: TraitValue<"size.bodyShape">;
}

/**
 * Whether two are of one build, so that a rival's outline is seen in the other: fish of one order that are equally deep,
 * and within a family also those of the next shape, for the fins and the bearing are those of the kin. A shape that
 * nobody stated counts as the other's. Much smaller ones count too: nobody found that size alone spares them.
 */
export function ofOneBuild(one: Built, other: Built): boolean {
  if (one.party.kind !== "fish" || other.party.kind !== "fish" || one.party.order !== other.party.order)
    return false;
  const [mine, theirs] = [one["size.bodyShape"], other["size.bodyShape"]];
  if (!mine || !theirs) return true;
  const apart = Math.abs(bodyShapes.indexOf(mine) - bodyShapes.indexOf(theirs));
  return apart <= (one.party.family === other.party.family ? 1 : 0);
}
