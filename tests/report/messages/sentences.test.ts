import { expect, describe as suite, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { assessPlan } from "../../../src/compatibility";
import type { Group, PlannedTank } from "../../../src/plan";
import { describe } from "../../../src/report";

/** The report on a plan in one line. */
const told = (groups: readonly Group[], tank: Partial<PlannedTank> = {}) =>
  describe(
    assessPlan({
      tank: { base: { shape: "rectangle", length: 100, width: 40 }, height: 45, cover: 0.2, ...tank },
      water: { temperature: 24, pH: 7, generalHardness: 9 },
      groups,
    }),
  ).replaceAll(/\s+/g, " ");

suite("a shop adviser says it like this", () => {
  test("of a young oscar beside neons", () => {
    const young = { species: astronotusOcellatus, juveniles: 1, length: 6 };
    const report = told([young, { species: paracheirodonInnesi, unsexed: 10 }]);
    expect(report).toContain(
      "Now 6 cm long, oscar goes with neon tetra only until it can swallow it, at about 7.6 cm.",
    );
  });

  test("of an oscar in a tank that a young one fits", () => {
    const report = told([{ species: astronotusOcellatus, juveniles: 1, length: 6 }], {
      base: { shape: "rectangle", length: 80, width: 29 },
    });
    expect(report).toContain(
      "Oscar grows to 30 cm and cannot turn in a tank 29 cm wide. Now 6 cm long, it fits only until it measures 29 cm.",
    );
  });

  test("of danios beside honey gouramis", () => {
    const report = told([
      { species: trichogasterChuna, males: 1, females: 2 },
      { species: danioRerio, unsexed: 10 },
    ]);
    expect(report).toContain("Zebra danio has eaten before honey gourami gets to the food.");
    expect(report).toContain("The bustle of zebra danio keeps honey gourami in hiding.");
    expect(report).toContain(
      "Works if at least 20 % of the surface stays free of leaves, with air between water and lid.",
    );
  });

  test("of goldfish among plants, in a tank whose filter nobody mentions", () => {
    const report = told([{ species: carassiusAuratus, unsexed: 2 }], { plants: "planted" });
    expect(report).toContain("Goldfish eats plants.");
    expect(report).toContain("Works if there are no plants to lose.");
    expect(report).toMatch(
      /Works if the filter has run for eight weeks and holds at least [\d.]+ m² of media/,
    );
  });

  test("of convicts over corydoras", () => {
    const report = told([
      { species: amatitlaniaNigrofasciata, males: 2, females: 2 },
      { species: osteogasterAenea, unsexed: 6 },
    ]);
    expect(report).toContain(
      "A breeding pair of convict cichlid defends 3,000 cm² on the ground; 2 such places are held here.",
    );
    expect(report).toContain(
      "Bronze corydoras feeds by night and eats the eggs that convict cichlid guards.",
    );
  });
});
