import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { assessPair, defineRule, outcomes, pairRules } from "../../../src/compatibility";
import type { SpeciesProfile } from "../../../src/species";
import { anySpecies, hashOf, someSpecies } from "../../drawn";
import { runs } from "../../runs";
import { fish } from "../arbitrary";
import { profileOf } from "../worlds";

const ofCatalog = outcomes(allSpecies);
const outcomeOf = (a: SpeciesProfile, b: SpeciesProfile) =>
  ofCatalog.outcome(allSpecies.indexOf(a), allSpecies.indexOf(b));

describe("the outcomes of many pairs", () => {
  test("are those of assessPair for pairs of the catalog, in either order", () => {
    fc.assert(
      fc.property(anySpecies, anySpecies, (a, b) => {
        expect(outcomeOf(a, b)).toBe(assessPair({ species: a }, { species: b }).outcome);
      }),
      { numRuns: runs(200) },
    );
  });

  test("are those of assessPair for any fishes, also where something essential is not known", () => {
    fc.assert(
      fc.property(fish("a").map(profileOf), fish("b").map(profileOf), (a, b) => {
        expect(outcomes([a, b]).outcome(0, 1)).toBe(assessPair({ species: a }, { species: b }).outcome);
      }),
      { numRuns: runs(100) },
    );
  });

  test("know every answer there is", () => {
    const all = allSpecies.flatMap((a) => someSpecies(20, hashOf(a.id)).map((b) => outcomeOf(a, b)));
    expect(new Set(all)).toEqual(new Set(["suitable", "conditional", "unsuitable", "undetermined"]));
  }, 60_000);

  test("name the species in the order given", () => {
    expect(ofCatalog.ids).toEqual(allSpecies.map(({ id }) => id));
  });

  test("are by the rules and thresholds that are named", () => {
    const [a, b] = ["danio-rerio", "betta-splendens"].flatMap((id) => speciesById(id) ?? []);
    if (!a || !b) throw new Error("A species is missing.");
    const rules = pairRules.filter(({ id }) => id === "salinity");
    expect(outcomes([a, b], { rules }).outcome(0, 1)).toBe("suitable");
    const never = defineRule({
      id: "x-never",
      way: "mutual",
      mayYield: ["blocking"],
      judge: () => [{ weight: "blocking" }],
    });
    expect(outcomes([a, b], { rules: [never] }).outcome(0, 1)).toBe("unsuitable");
  });

  test.each([-1, allSpecies.length, 0.5, Number.NaN])("refuse %s as a place", (place) => {
    expect(() => ofCatalog.outcome(place, 0)).toThrow(`a place from 0 to ${allSpecies.length - 1}`);
  });
});
