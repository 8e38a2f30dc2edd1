import { describe, expect, test } from "vitest";
import { english } from "../../../src/report";
import { traitText } from "../../../src/report/profile/trait-text";
import { wordKinds } from "../../../src/report/profile/word-kinds";
import { quantityWriter, type UnitSystem } from "../../../src/report/quantities";
import { factAt, type TraitPath, traitPaths } from "../../../src/species";
import { everyKind } from "../verdicts";

const told = (path: TraitPath, value: unknown, units: UnitSystem = "metric") =>
  traitText(path, value, english, quantityWriter(english, units));

describe("a trait in words", () => {
  test.each<readonly [TraitPath, unknown, string]>([
    ["water.temperature", { kept: { min: 18, max: 26 } }, "18 to 26 °C"],
    [
      "water.temperature",
      { kept: { min: 18 }, limit: { max: 36 } },
      "at least 18 °C; suffers or dies above 36 °C",
    ],
    ["water.pH", { kept: { min: 5, max: 7 }, limit: { min: 3.5 } }, "5 to 7; suffers or dies below 3.5"],
    [
      "water.temperature",
      { kept: { min: 18 }, limit: { min: 8, max: 36 } },
      "at least 18 °C; suffers or dies outside 8 to 36 °C",
    ],
    [
      "water.temperature",
      { kept: { min: 22, max: 24 }, optimum: { min: 22, max: 24 }, standIn: true },
      "optimum 22 to 24 °C",
    ],
    ["water.pH", { kept: { min: 6, max: 7.5 } }, "6 to 7.5"],
    ["water.flow", { min: "still", max: "gentle" }, "still to gentle"],
    ["water.flow", { min: "still", max: "still" }, "still"],
    ["space.baseLength", [{ least: 60, for: 8 }], "60 cm for 8"],
    [
      "space.baseLength",
      [
        { least: 60, for: 1 },
        { least: 100, for: 6 },
      ],
      "60 cm for 1; 100 cm for 6",
    ],
    ["origin.supply", "wild", "caught"],
    ["size.grownAt", 8, "8 months"],
    ["reproduction.breedsFrom", 4, "4 months"],
    [
      "water.carbonateHardness",
      { kept: { max: 4 }, wild: { min: 1, max: 2 } },
      "at most 4 °dH; wild 1 to 2 °dH",
    ],
    ["water.coolSeason", "none", "none"],
    ["water.coolSeason", { min: 10, max: 16, months: 3 }, "10 to 16 °C for 3 months"],
    ["water.coolSeason", { max: 16 }, "at most 16 °C"],
    ["social.largestGroup", 2, "2"],
    ["size.lifespan", { usual: 5, greatest: 10 }, "5 years, at most 10 years"],
    ["space.footprint", [{ least: 4000, for: 2 }], "4,000 cm² for 2"],
    ["space.cover", 0.3, "30 %"],
    ["space.territory", "none", "none"],
    [
      "space.territory",
      { area: 900, zone: "bottom", holder: "pair" },
      "900 cm² on the ground, held by a pair",
    ],
    ["space.jumps", "startled", "when frightened"],
    ["size.bodyShape", "short-deep", "short and deep"],
    ["social.group", { least: 6, avoid: { min: 2, max: 4 } }, "at least 6 (2 to 4 do worst)"],
    ["diet.foods", ["dry", "fallen-insects"], "dry food; insects on the surface"],
    ["predation.eats", [], "none"],
    ["predation.eats", [{ prey: "fish", greatest: 2.5 }, { prey: "egg" }], "fish up to 2.5 cm; eggs"],
    [
      "temperament.acts",
      [{ does: "nips-fins", target: "long-finned" }],
      "bite pieces out of the fins of fish with long fins",
    ],
    ["effects.digs", false, "no"],
    ["origin.regions", ["Lake Malawi", "Niassa"], "Lake Malawi; Niassa"],
  ])("%s of %j", (path, value, text) => {
    expect(told(path, value)).toBe(text);
  });

  test("is in the reader's units", () => {
    // 1 in = 2.54 cm (agreement of 1959).
    expect(told("space.baseLength", [{ least: 60, for: 8 }], "us")).toBe("24 in for 8");
    expect(told("predation.eats", [{ prey: "fish", greatest: 2.54 }], "imperial")).toBe("fish up to 1 in");
    expect(told("water.temperature", { kept: { min: 20, max: 25 } }, "us")).toBe("68 to 77 °F");
  });

  test("is a word of the language wherever the catalog has one of the vocabulary", () => {
    for (const species of everyKind) {
      for (const path of traitPaths) {
        const kind = wordKinds[path];
        const fact = kind && factAt(species, path);
        if (!kind || !fact) continue;
        for (const word of [fact.value].flat()) {
          if (word === "none") continue;
          expect(Object.keys(english.words[kind]), path).toContain(String(word));
        }
      }
    }
  });
});
