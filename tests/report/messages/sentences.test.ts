import { expect, describe as suite, test } from "vitest";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { assessPlan } from "../../../src/compatibility";
import type { Group, PlannedTank, PlannedWater } from "../../../src/plan";
import { describe } from "../../../src/report";

/** The report on a plan in one line. */
const told = (groups: readonly Group[], tank: Partial<PlannedTank> = {}, water: PlannedWater = {}) =>
  describe(
    assessPlan({
      tank: { base: { shape: "rectangle", length: 100, width: 40 }, height: 45, cover: 0.2, ...tank },
      water: { temperature: 24, pH: 7, generalHardness: 9, ...water },
      groups,
    }),
  ).replaceAll(/\s+/g, " ");

suite("a shop adviser says it like this", () => {
  test("of a goldfish in a bowl", () => {
    const report = told([{ species: carassiusAuratus, unsexed: 1 }], {
      base: { shape: "rectangle", length: 30, width: 20 },
      height: 25,
    });
    expect(report).toMatch(/^Unsuitable: the tank is far too small\./);
    expect(report).toMatch(
      /Why not - The goldfish needs a tank of about \d+ × \d+ cm; yours is 30 × 20 cm\./,
    );
  });

  test("of minnows in water that is too warm", () => {
    const report = told([{ species: tanichthysAlbonubes, unsexed: 10 }], {}, { temperature: 27 });
    expect(report).toMatch(/^Not in this water: keep it at [\d.]+ to [\d.]+ °C\./);
  });

  test("of neons in water that is cold and salty at once, or too hot in summer and too cold in winter", () => {
    const report = told(
      [{ species: paracheirodonInnesi, unsexed: 10 }],
      {},
      { temperature: 14, salinity: 8 },
    );
    expect(report).toMatch(
      /^Not in this water: have water of [\d.]+ to [\d.]+ °C, salinity 0 to 0\.5 g\/kg\./,
    );
    const seasons = { temperature: 24, hottest: 35, coolest: 12 };
    expect(told([{ species: paracheirodonInnesi, unsexed: 10 }], {}, seasons)).toMatch(
      /^Not in this water: keep it at most \d+ °C on the hottest day; keep it at least \d+ °C in the coolest season\./,
    );
  });

  test("of a young oscar beside neons", () => {
    const young = { species: astronotusOcellatus, juveniles: 1, length: 6 };
    const report = told([young, { species: paracheirodonInnesi, unsexed: 10 }]);
    expect(report).toContain("1 oscar (Astronotus ocellatus; young, 6 cm long as bought)");
    expect(report).toContain("bought at 6 cm, it seems harmless; grown, it is not");
  });

  test("of an oscar in a tank that a young one fits", () => {
    const report = told([{ species: astronotusOcellatus, juveniles: 1, length: 6 }], {
      base: { shape: "rectangle", length: 80, width: 29 },
    });
    expect(report).toContain(
      "The oscar will outgrow this tank: grown to 30 cm, it needs a tank of about 120 × 50 cm; yours is 80 × 29 cm.",
    );
  });

  test("of danios beside honey gouramis", () => {
    const report = told([
      { species: trichogasterChuna, males: 1, females: 2 },
      { species: danioRerio, unsexed: 10 },
    ]);
    expect(report).toContain("zebra danios have eaten before honey gouramis get to the food.");
    expect(report).toContain("bustle of zebra danios keeps honey gouramis in hiding.");
    expect(report).toContain(
      "Keep at least 20 % of the surface free of leaves, with air between water and lid: honey gouramis drown unless they can take air at the surface",
    );
    expect(report).toContain("If bullying starts: break lines of sight");
    expect(report).toMatch(/Watch for: [^.]*hiding all day[^.]*honey gouramis/);
  });

  test("of goldfish among plants, in a tank whose filter nobody mentions", () => {
    const report = told([{ species: carassiusAuratus, unsexed: 2 }], { plants: "planted" });
    expect(report).toContain("Goldfish eat plants.");
    expect(report).toMatch(
      /Have a ripe filter, at work for eight weeks, with about \d+ L of coarse foam[:.;]/,
    );
    expect(report).not.toContain("m²,");
  });

  test("of guppies and their young", () => {
    const report = told([{ species: poeciliaReticulata, males: 2, females: 4 }]);
    expect(report).toContain("6 guppies (Poecilia reticulata; 2 males and 4 females)");
    expect(report).toContain("Guppies eat their own young");
  });

  test("of a doctor who does not know that his patient keeps fish", () => {
    const report = told([{ species: osteogasterAenea, unsexed: 6 }]);
    expect(report).toContain("tell a doctor about the tank");
    expect(report).toContain("Spines: bronze corydoras (a prick smarts, and the family has venom glands)");
    expect(report).toContain("is for a doctor");
  });
});

suite("what sentences rest on", () => {
  test("is said once, and marked only where it differs", () => {
    const report = told([{ species: tanichthysAlbonubes, unsexed: 10 }], {}, { temperature: 27 });
    expect(report).not.toContain("(common practice)");
    expect(report.match(/Unless marked, this is /g)).toHaveLength(1);
  });
});
