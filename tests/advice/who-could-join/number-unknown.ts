import type { OpenQuestion, Verdict } from "../../../src/compatibility";
import { factAt, type SpeciesProfile } from "../../../src/species";

/**
 * What a verdict on a plan asks about the size of the group that joined it, the last of its parties; nothing where it is known,
 * or that one may live by itself.
 */
export function numberUnknown(species: SpeciesProfile, verdict: Verdict): OpenQuestion | undefined {
  const living = factAt(species, "social.living")?.value ?? "shoal";
  if (factAt(species, "social.group") || living === "alone" || living === "either") return undefined;
  return verdict.open.find(
    (one) =>
      one.of === verdict.parties.length - 1 && one.reason === "missing" && one.trait === "social.group",
  );
}
