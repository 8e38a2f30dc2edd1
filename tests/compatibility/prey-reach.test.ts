import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { assessPairBy, type Finding, pairRules, thresholds } from "../../src/compatibility";
import { preyReach } from "../../src/compatibility/inner";
import { factAt, type SpeciesProfile } from "../../src/species";
import { lengthsMeant } from "../../src/species/inner";

const rule = pairRules.filter(({ id }) => id === "predation");

/** What the rule finds of animals of two species, not of the eggs and the young that they will have. */
const found = (hunter: SpeciesProfile, prey: SpeciesProfile, length?: number): readonly Finding[] =>
  assessPairBy(rule, { species: hunter }, { species: prey, ...(length && { length }) }).findings.filter(
    ({ from, measures = {} }) => from === 0 && !("of" in measures),
  );

const smallest = (species: SpeciesProfile): number => {
  const lengths = factAt(species, "size.adultLength")?.value ?? [];
  return lengths.length > 0
    ? Math.min(...lengthsMeant(lengths, "usual").map(({ total }) => total.min))
    : Number.NaN;
};

/** What nobody said of a fish may be the shape of an eel. */
const mayBeEelLike = (species: SpeciesProfile) =>
  species.taxonomy.kind === "fish" && (factAt(species, "size.bodyShape")?.value ?? "eel-like") === "eel-like";

/** So short newly hatched ones are. */
const newlyHatched = Math.max(
  ...(["youngFish", "youngCrustacean", "youngSnail"] as const).map((name) => thresholds[name].value),
);

const species = (id: string): SpeciesProfile => {
  const profile = allSpecies.find((each) => each.id === id);
  if (!profile) throw new Error(id);
  return profile;
};

describe("the lengths up to which a hunter eats others", () => {
  test("leave out none of the catalog that the rule of predation finds", () => {
    for (const hunter of allSpecies) {
      const reaches = preyReach(hunter);
      for (const prey of allSpecies) {
        if (prey.id === hunter.id || !(smallest(prey) > newlyHatched)) continue;
        const { tries = 0, eatsEelLike = 0 } = reaches.find(({ kind }) => kind === prey.taxonomy.kind) ?? {};
        const reach = mayBeEelLike(prey) ? Math.max(tries, eatsEelLike) : tries;
        if (smallest(prey) > reach)
          expect([hunter.id, prey.id, found(hunter, prey)]).toEqual([hunter.id, prey.id, []]);
      }
    }
  });

  test.each(["pterophyllum-scalare", "astronotus-ocellatus", "ctenopoma-acutirostre"])(
    "end for %s where the rule ends",
    (id) => {
      const barb = species("sahyadria-denisonii");
      const [reach] = preyReach(species(id)).filter(({ kind }) => kind === "fish");
      const { eats = 0, tries = 0 } = reach ?? {};
      expect(found(species(id), barb, eats).some(({ weight }) => weight !== "advisory")).toBe(true);
      expect(found(species(id), barb, tries + 0.1)).toEqual([]);
    },
  );

  test("of crayfish are what their claws reach", () => {
    for (const { eats, tries } of preyReach(species("procambarus-virginalis"))) expect(tries).toBe(eats);
  });

  test("of snails that a fish pulls apart are none", () => {
    const [snail] = preyReach(species("ambastaia-sidthimunki")).filter(({ kind }) => kind === "snail");
    expect(snail).toMatchObject({ eats: 2, tries: Number.POSITIVE_INFINITY });
  });

  test("are none of kinds that are left alone", () => {
    expect(preyReach(species("otocinclus-vittatus"))).toEqual([]);
  });
});
