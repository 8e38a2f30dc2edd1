import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { assessPair, assessPairBy, assessPlan, outcomes, pairRules } from "../../../src/compatibility";
import { preyReach } from "../../../src/compatibility/inner";
import { speciesPage } from "../../../src/report";
import { type Companion, companionsOf } from "../../../src/report/page/company/companions";
import { relationsTo } from "../../../src/report/page/company/relations";
import { breadth } from "../../../src/report/page/company/shared-water";
import { typicalTank } from "../../../src/report/page/company/typical-tank";
import { headcount, usualGroup } from "../../../src/report/page/company/usual-group";
import type { SpeciesProfile } from "../../../src/species";

const species = (id: string): SpeciesProfile => {
  const found = speciesById(id);
  if (!found) throw new Error(id);
  return found;
};

const candidates = allSpecies.filter((_, index) => index % 3 === 0);

function companions(profile: SpeciesProfile): readonly Companion[] {
  const own = usualGroup(profile);
  const tank = typicalTank(profile, headcount(own));
  if (!tank) throw new Error(profile.id);
  return companionsOf(own, tank, candidates, outcomes([profile, ...candidates]));
}

const some = ["puntigrus-tetrazona", "paracheirodon-innesi", "julidochromis-transcriptus"].map(species);

describe("companions", () => {
  test.each(some.map((profile) => [profile.id, profile] as const))(
    "of %s are judged suitable with it in the tank that is named, furnished as both ask",
    (_, profile) => {
      const found = companions(profile);
      const tank = typicalTank(profile, headcount(usualGroup(profile)));
      expect(found.length).toBeGreaterThan(0);
      expect(found.length).toBeLessThanOrEqual(10);
      for (const { species: other, plan } of found) {
        expect(assessPlan(plan).outcome, other.id).toBe("suitable");
        expect(plan.tank.base).toEqual(tank?.base);
        expect(plan.groups.map((group) => group.species.id)).toEqual([profile.id, other.id]);
        expect(["suitable", "conditional"]).toContain(
          assessPair({ species: profile }, { species: other }).outcome,
        );
      }
    },
  );

  test("are of many families, and none is told twice", () => {
    const found = companions(species("puntigrus-tetrazona"));
    expect(new Set(found.map((one) => one.species.id)).size).toBe(found.length);
    expect(new Set(found.map((one) => one.species.taxonomy.family)).size).toBeGreaterThan(3);
  });

  test("are never what it eats, nor what eats it", () => {
    const oscar = species("astronotus-ocellatus");
    const { prey, hunters } = relationsTo(oscar, candidates, outcomes([oscar, ...candidates]));
    const never = [...prey, ...hunters].map(({ id }) => id);
    expect(prey.length).toBeGreaterThan(20);
    expect(companions(oscar).filter((one) => never.includes(one.species.id))).toEqual([]);
  });

  test("leave nobody hungry", () => {
    for (const profile of ["carinotetraodon-travancoricus", "saxatilia-saxatilis"].map(species))
      for (const { species: other } of companions(profile)) {
        const { findings } = assessPair({ species: profile }, { species: other });
        const hungry = findings.filter(({ rule }) => rule === "feeding-competition");
        expect(hungry.filter(({ weight }) => weight === "restricting")).toEqual([]);
      }
  });

  test("are found for one whose water is narrow, among those who live in the like", () => {
    const molly = species("poecilia-sphenops");
    const kin = ["xiphophorus-hellerii", "trichogaster-chuna", "paracheirodon-innesi"].map(species);
    const tank = typicalTank(molly, headcount(usualGroup(molly)));
    if (!tank) throw new Error("no tank");
    const found = companionsOf(usualGroup(molly), tank, kin, outcomes([molly, ...kin]));
    expect(found.map((one) => one.species.id)).toContain("xiphophorus-hellerii");
    expect(found.map((one) => one.species.id)).not.toContain("paracheirodon-innesi");
  });

  test("are called harmless to all only if they eat none that is grown", () => {
    for (const profile of allSpecies.filter((_, index) => index % 20 === 0 || index % 20 === 7))
      if (!profile.incomplete && typicalTank(profile, headcount(usualGroup(profile))))
        for (const { species: other, reason } of companions(profile))
          if (reason === "harmless") expect([other.id, preyReach(other)]).toEqual([other.id, []]);
  });

  test("are none where nothing that is given goes with it", () => {
    const page = speciesPage(species("astronotus-ocellatus"), {
      candidates: [species("paracheirodon-innesi")],
    });
    expect(page.replaceAll("\n", " ")).toContain(
      "Of 1 species none was found that suits a pair of oscars in a tank of 200 × 80 cm.",
    );
    expect(page).toContain("What it would eat:\n- Neon tetra (Paracheirodon innesi)");
  });
});

describe("the relations that a page tells", () => {
  const gourami = species("trichogaster-chuna");
  const told = relationsTo(gourami, candidates, outcomes([gourami, ...candidates]));

  test("are what the verdicts on the pairs say, for every candidate", () => {
    const named = (list: readonly SpeciesProfile[]) => list.map(({ id }) => id);
    for (const other of candidates.filter(({ id }) => id !== gourami.id)) {
      const { findings, outcome } = assessPair({ species: gourami }, { species: other });
      const says = (rule: string, from: number, weight?: string) =>
        findings.some(
          (finding) =>
            finding.rule === rule && finding.from === from && (weight ?? finding.weight) === finding.weight,
        );
      expect(named(told.prey).includes(other.id), other.id).toBe(says("predation", 0, "blocking"));
      expect(named(told.hunters).includes(other.id), other.id).toBe(says("predation", 1, "blocking"));
      expect(named(told.robbers).includes(other.id), other.id).toBe(
        outcome !== "unsuitable" && says("feeding-competition", 1, "restricting"),
      );
      expect(named(told.lookAlikes).includes(other.id), other.id).toBe(
        (says("acts-look-alike", 0) || says("acts-look-alike", 1)) &&
          !(says("predation", 0, "blocking") || says("predation", 1, "blocking")) &&
          breadth(gourami, other) > 0,
      );
    }
  });

  test("name the calm that settle a shy one", () => {
    expect(told.settlers.length).toBeGreaterThan(0);
    for (const other of told.settlers) expect(other.social?.settles?.value).toBe(true);
  });
});

describe("the length up to which others are eaten", () => {
  const rule = pairRules.filter(({ id }) => id === "predation");
  const neon = species("paracheirodon-innesi");

  /** Whether a fish of a length is eaten, by the rule itself. */
  const isEaten = (hunter: SpeciesProfile, length: number) =>
    assessPairBy(rule, { species: hunter }, { species: neon, length }).findings.some(
      ({ weight, measures = {} }) => weight !== "advisory" && !("of" in measures),
    );

  test.each(["pterophyllum-scalare", "astronotus-ocellatus", "ctenopoma-acutirostre", "danio-rerio"])(
    "is for %s that of the rule of predation",
    (id) => {
      const hunter = species(id);
      const reach = preyReach(hunter).find(({ kind }) => kind === "fish");
      if (!reach) {
        expect(isEaten(hunter, 3)).toBe(false);
        return;
      }
      expect(isEaten(hunter, reach.eats)).toBe(true);
      const past = assessPairBy(rule, { species: hunter }, { species: neon, length: reach.tries + 0.1 });
      expect(past.findings.filter(({ measures = {} }) => !("of" in measures))).toEqual([]);
    },
  );

  test("of crayfish is what their claws reach, and of shrimps that fish pick apart there is none", () => {
    const crayfish = species("procambarus-virginalis");
    for (const { eats, tries } of preyReach(crayfish)) expect(tries).toBe(eats);
    const loach = species("carinotetraodon-travancoricus");
    const [snail] = preyReach(loach).filter(({ kind }) => kind === "snail");
    expect(snail?.eats).toBeGreaterThan(0);
  });

  test("is what the page says", () => {
    const reach = preyReach(species("pterophyllum-scalare")).find(({ kind }) => kind === "fish");
    expect(reach).toEqual({ kind: "fish", eats: 4, tries: 5 });
    const page = speciesPage(species("pterophyllum-scalare")).replaceAll("\n", " ");
    expect(page).toContain("of up to 4 cm are eaten, and those of up to 5 cm may be tried.");
  });
});
