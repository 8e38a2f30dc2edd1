import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { assessPair, assessPlan, outcomes } from "../../../src/compatibility";
import { preyReach } from "../../../src/compatibility/inner";
import { headcount } from "../../../src/plan/inner";
import { speciesPage } from "../../../src/report";
import { germanPages } from "../../../src/report/de";
import { type Companion, companionsOf } from "../../../src/report/page/company/companions";
import { foundCompany } from "../../../src/report/page/company/found-company";
import { relationsTo } from "../../../src/report/page/company/relations";
import { breadth } from "../../../src/report/page/company/shared-water";
import { typicalTank } from "../../../src/report/page/company/typical-tank";
import { usualGroup } from "../../../src/report/page/company/usual-group";
import { factAt, type SpeciesProfile, splitPath, type TraitPath, traitPaths } from "../../../src/species";
import { someSpecies } from "../../drawn";

const species = (id: string): SpeciesProfile => {
  const found = speciesById(id);
  if (!found) throw new Error(id);
  return found;
};

const candidates = someSpecies(58, 0);

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

  test("are never its rivals, for which it is told to look out", () => {
    const multi = species("neolamprologus-multifasciatus");
    const { companions: found, relations } = foundCompany(multi, allSpecies);
    expect(relations.lookAlikes.map(({ id }) => id)).toContain("julidochromis-transcriptus");
    expect(found.map((one) => one.species.id)).not.toContain("julidochromis-transcriptus");
    expect(found.length).toBeGreaterThan(0);
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

  test("stand apart where only room and cover keep one from biting the other, after those that never would", () => {
    for (const profile of ["pelvicachromis-pulcher", "heros-severus", "danio-rerio"].map(species)) {
      const found = companions(profile);
      for (const { species: other, mayBite } of found) {
        const { findings } = assessPair({ species: profile }, { species: other });
        const bites = findings.some(
          (finding) =>
            finding.rule === "acts-others" &&
            finding.weight === "restricting" &&
            ["bites", "kills"].includes(finding.measures?.act?.value ?? ""),
        );
        expect(mayBite, `${profile.id} and ${other.id}`).toBe(bites);
      }
      expect(found.length).toBeGreaterThan(0);
    }
    const robust = [
      ...["polypterus-senegalus", "rasbora-trilineata", "pterophyllum-scalare", "crossocheilus-oblongus"],
      ...["panaqolus-maccus", "helostoma-temminckii", "synodontis-eupterus", "andinoacara-pulcher"],
    ].map(species);
    const page = speciesPage(species("heros-severus"), { candidates: robust });
    expect(page).not.toContain("Good companions");
    expect(page).toContain("Only while room and cover keep bites off");
    const enough = [
      ...["macropodus-opercularis", "pelvicachromis-pulcher"], // which may bite, and are not needed beside ten others
      ...["hoplisoma-paleatum", "macrotocinclus-affinis", "pethia-padamya", "tanichthys-albonubes"],
      ...["fundulopanchax-gardneri", "melanotaenia-praecox", "puntigrus-tetrazona", "xiphophorus-maculatus"],
      ...["planorbella-duryi", "megalamphodus-megalopterus"],
    ].map(species);
    expect(speciesPage(species("danio-rerio"), { candidates: enough })).not.toContain("keep bites off");
  });

  test("of a goldfish live in most of the water that is best for it, and those that winter cool come first", () => {
    const goldfish = species("carassius-auratus");
    const best = factAt(goldfish, "water.temperature")?.value.optimum;
    expect(best).toEqual({ min: 18, max: 22 });
    const { companions: found } = foundCompany(goldfish, allSpecies);
    const warmest = found.map((one) => factAt(one.species, "water.temperature")?.value.kept.min ?? 0);
    expect(Math.max(...warmest)).toBeLessThanOrEqual(19.5);
    const few = ["pethia-conchonius", "misgurnus-anguillicaudatus", "barbodes-semifasciolatus"].map(species);
    expect(foundCompany(goldfish, few).companions.map((one) => one.species.id)).toEqual([
      "misgurnus-anguillicaudatus",
      "pethia-conchonius",
      "barbodes-semifasciolatus",
    ]);
  });

  test("hardly longer than what it takes come after those that are clearly so", () => {
    const angelfish = species("pterophyllum-scalare");
    const { tries = 0 } = preyReach(angelfish).find(({ kind }) => kind === "fish") ?? {};
    const grown = (id: string, length: number): SpeciesProfile => {
      const like = species("hoplisoma-sterbai");
      const lengths = [{ length, measure: "TL", as: "usual", total: { min: length, max: length } }] as const;
      return { ...like, id, size: { ...like.size, adultLength: { value: lengths, basis: "published" } } };
    };
    const [slight, sturdy] = [grown("aaa", 1.2 * tries), grown("zzz", 1.4 * tries)];
    const found = foundCompany(angelfish, [slight, sturdy]).companions;
    expect(found.map((one) => one.species.id)).toEqual(["zzz", "aaa"]);
  });

  test("that laws name are told as such, in English and German", () => {
    const guppy = species("poecilia-reticulata");
    const line = (page: string, name: string) =>
      page.split("\n").find((each) => each.startsWith("- ") && each.includes(name)) ?? "";
    const few = ["danio-rerio", "pomacea-diffusa"].map(species);
    const page = speciesPage(guppy, { candidates: few, format: "markdown" });
    expect(line(page, "Pomacea diffusa")).toContain("laws of some places name it");
    expect(line(page, "Danio rerio")).toContain("for the same water");
    expect(line(page, "Danio rerio")).not.toContain("laws of some");
    const german = { candidates: few, format: "markdown", messages: germanPages } as const;
    expect(line(speciesPage(guppy, german), "Pomacea diffusa")).toContain("Gesetze mancher Orte");
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
    for (const profile of someSpecies(18, 1))
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

describe("company", () => {
  const minnow = species("tanichthys-albonubes");

  test("is that of the profiles as they are, where they are frozen on the outside alone", () => {
    const profile = structuredClone(species("danio-rerio"));
    const other = structuredClone(minnow);
    const given = [Object.freeze(profile), Object.freeze([other])] as const;
    expect(foundCompany(...given).companions.map((one) => one.species.id)).toEqual([minnow.id]);
    Reflect.set(other.water?.temperature?.value ?? {}, "kept", { min: 5, max: 8 });
    expect(foundCompany(...given).companions).toEqual([]);
  });

  test("is sought once for profiles and lists that nobody can change", () => {
    const given = [species("danio-rerio"), Object.freeze([minnow])] as const;
    expect(foundCompany(...given)).toBe(foundCompany(...given));
  });
});

describe("the length up to which others are eaten", () => {
  test("is what the page says, however they are shaped", () => {
    const page = speciesPage(species("pterophyllum-scalare")).replaceAll(/\s+/g, " ");
    expect(page).toContain(
      "of up to 4 cm are eaten, and those of up to 5 cm may be tried; eel-like ones are eaten up to 8 cm.",
    );
    const crayfish = speciesPage(species("procambarus-virginalis")).replaceAll(/\s+/g, " ");
    expect(crayfish).toContain("Fish of up to 5 cm are eaten; eel-like ones are eaten up to 10 cm.");
  });

  test("is none of snails that are pulled apart, in either language", () => {
    const loach = species("ambastaia-sidthimunki");
    expect(speciesPage(loach).replaceAll(/\s+/g, " ")).toContain(
      "Snails of up to 2 cm are eaten, and longer ones may be tried.",
    );
    expect(speciesPage(loach, { messages: germanPages }).replaceAll(/\s+/g, " ")).toContain(
      "Schnecken bis 2 cm Länge werden gefressen, längere womöglich auch.",
    );
  });
});

describe("of a profile that somebody made by hand", () => {
  const barb = species("puntigrus-tetrazona");
  const few = candidates.slice(0, 12);
  const without = (path: TraitPath): SpeciesProfile => {
    const [section, name] = splitPath(path);
    return { ...barb, [section]: { ...barb[section], [name]: undefined } };
  };

  test.each(traitPaths)("a page is written without %s", (path) => {
    const page = speciesPage(without(path), { candidates: few });
    expect(page).toContain("Tiger barb");
    expect(page).not.toMatch(/undefined|NaN|Infinity/);
  });

  test("no tank is named for company of a species whose length nobody knows", () => {
    expect(typicalTank(without("size.adultLength"), 6)).toBeUndefined();
  });

  test("two and a half females to a male are whole animals", () => {
    const harem = {
      ...barb,
      social: {
        ...barb.social,
        group: { value: { least: 1 }, basis: "published" },
        femalesPerMale: { value: 2.5, basis: "published" },
      },
    } as SpeciesProfile;
    const { males = 0, females = 0 } = usualGroup(harem);
    expect([males, females].every(Number.isInteger)).toBe(true);
    expect(females).toBeGreaterThanOrEqual(2.5 * males);
  });
});
