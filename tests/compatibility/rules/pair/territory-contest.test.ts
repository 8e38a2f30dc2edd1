import { expect, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import { territoryContest } from "../../../../src/compatibility/rules/pair/territory-contest";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const holder = (id: string, territory: Value<"space.territory">) =>
  animal(id, { "space.territory": territory });
const bottom = (id: string, area: number, held: "male" | "pair" | "each" = "male") =>
  holder(id, { area, zone: "bottom", holder: held });

test("two kinds that hold territories on the ground need room for one of each", () => {
  expect(
    pairBy(territoryContest, { species: bottom("a", 1200) }, { species: bottom("b", 800) }).findings,
  ).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "tank.footprint", wanted: { min: 2000 } },
      watchFor: "chasing",
    },
  ]);
});

test("holders in different parts of the tank do not meet", () => {
  const nest = holder("b", { area: 800, zone: "surface", holder: "male" });
  expect(pairBy(territoryContest, { species: bottom("a", 1200) }, { species: nest }).findings).toEqual([]);
  expect(
    pairBy(territoryContest, { species: bottom("a", 1200) }, { species: holder("b", "none") }).findings,
  ).toEqual([]);
});

test("nobody holds where none of the sex that does is kept, and a single animal is no pair", () => {
  const females = { species: bottom("a", 1200), sex: "female" } as const;
  expect(pairBy(territoryContest, females, { species: bottom("b", 800) }).findings).toEqual([]);
  const single = { species: bottom("a", 1200, "pair"), count: 1 };
  expect(pairBy(territoryContest, single, { species: bottom("b", 800) }).findings).toEqual([]);
});

test("a floor that holds both is enough", () => {
  const on = (length: number) =>
    weighed(
      planBy(
        territoryContest,
        [
          { species: bottom("a", 1200), males: 1 },
          { species: bottom("b", 800), males: 1 },
        ],
        { tank: { base: { shape: "rectangle", length, width: 40 } } },
      ),
    );
  expect(on(49)).toEqual({ findings: ["restricting"], met: [] });
  expect(on(50)).toEqual({ findings: [], met: ["restricting"] });
});

test("in a keeper's tank: convicts and a bristlenose both claim the ground", () => {
  const beside = (species: typeof osteogasterAenea) =>
    pairBy(territoryContest, { species: amatitlaniaNigrofasciata }, { species });
  expect(beside(ancistrusCirrhosus).outcome).toBe("conditional");
  expect(beside(osteogasterAenea).findings).toEqual([]);
});
