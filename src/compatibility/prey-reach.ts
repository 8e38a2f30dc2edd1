import { decimal } from "../decimal";
import { factAt, type Kind, type SpeciesProfile } from "../species";
import { grownLength } from "./animals/lengths";
import { appetiteFor, preyKinds } from "./animals/prey";
import { reachOf } from "./rules/shared/meal";
import { thresholdValues } from "./threshold-values";

/** Up to which lengths of grown animals of a kind a hunter eats them, cm; infinite where no length keeps them safe. */
export interface PreyReach {
  readonly kind: Kind;
  /** Up to this length they are eaten. */
  readonly eats: number;
  /** From there up to this length it may try. */
  readonly tries: number;
}

/** What a species takes of each kind of animals, by the lengths that the rule of predation goes by; none of kinds that it leaves alone. */
export function preyReach(profile: SpeciesProfile): readonly PreyReach[] {
  const appetites = factAt(profile, "predation.eats")?.value ?? [];
  const lengths = factAt(profile, "size.adultLength")?.value;
  if (!lengths) return [];
  const hunter = grownLength({}, lengths);
  const kinds = Object.keys(preyKinds) as readonly Kind[];
  const thresholds = thresholdValues();
  const seizes = ["crayfish", "crab"].includes(profile.taxonomy.kind);
  return kinds.flatMap((kind): readonly PreyReach[] => {
    const appetite = appetiteFor(appetites, preyKinds[kind].grown);
    if (!appetite) return [];
    const { greatest } = appetite;
    if (seizes) {
      const reach = greatest ?? decimal(thresholds.clawReach * hunter);
      return [{ kind, eats: reach, tries: reach }];
    }
    return [{ kind, ...reachOf(greatest, hunter, kind === "fish", thresholds) }];
  });
}
