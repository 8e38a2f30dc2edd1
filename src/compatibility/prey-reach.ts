import { factAt, type Kind, type SpeciesProfile } from "../species";
import { grownLength } from "./animals/lengths";
import { appetiteFor, preyKinds } from "./animals/prey";
import { eatenUpTo, type Reach, reachOf } from "./rules/shared/meal";
import { thresholdValues } from "./threshold-values";

/** Up to which lengths of grown animals of a kind a hunter eats them, cm; infinite where no length keeps them safe. */
export interface PreyReach extends Reach {
  readonly kind: Kind;
  /** Up to this length those are eaten that are shaped like eels: of fish alone more than of others. */
  readonly eatsEelLike: number;
}

/**
 * What a species takes of each kind of animals, by the lengths that the rule of predation goes by, whatever the habits of
 * the prey; none of kinds that it leaves alone.
 */
export function preyReach(profile: SpeciesProfile): readonly PreyReach[] {
  const appetites = factAt(profile, "predation.eats")?.value ?? [];
  const lengths = factAt(profile, "size.adultLength")?.value;
  if (!lengths) return [];
  const hunter = { kind: profile.taxonomy.kind, length: grownLength({}, lengths) };
  const kinds = Object.keys(preyKinds) as readonly Kind[];
  return kinds.flatMap((kind): readonly PreyReach[] => {
    const appetite = appetiteFor(appetites, preyKinds[kind].grown);
    if (!appetite) return [];
    const reach = reachOf({ ...hunter, greatest: appetite.greatest }, kind, thresholdValues());
    return [{ kind, ...reach, eatsEelLike: eatenUpTo(reach, kind === "fish") }];
  });
}
