import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import brachygobiusDoriae from "vivary/catalog/brachygobius-doriae";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import carnegiellaStrigata from "vivary/catalog/carnegiella-strigata";
import danioRerio from "vivary/catalog/danio-rerio";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import potamotrygonMotoro from "vivary/catalog/potamotrygon-motoro";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import vittinaNatalensis from "vivary/catalog/vittina-natalensis";
import xiphophorusHellerii from "vivary/catalog/xiphophorus-hellerii";
import xiphophorusMaculatus from "vivary/catalog/xiphophorus-maculatus";
import type { Group, Plan, PlannedTank, PlannedWater } from "../../src/plan";

/** A furnished, covered tank with a ripe filter and currents from still to moderate, by its sizes in cm. */
function tank(
  length: number,
  width: number,
  height: number,
  changed: Partial<PlannedTank> = {},
): PlannedTank {
  return {
    base: { shape: "rectangle", length, width },
    height,
    lid: true,
    cover: 0.35,
    plants: "planted",
    openSurface: 0.6,
    sightBreaks: 3,
    filter: { mediaArea: 4, age: 90 },
    flow: { calmest: "still", strongest: "moderate" },
    ...changed,
  };
}

const water = (temperature: number, pH: number, generalHardness: number, salinity = 0): PlannedWater => ({
  temperature,
  pH,
  generalHardness,
  salinity,
});

const plan = (inTank: PlannedTank, inWater: PlannedWater, groups: readonly Group[]): Plan => ({
  tank: inTank,
  water: inWater,
  groups,
});

const soft = water(25, 6.7, 6);
const middling = water(24.5, 7.2, 10);
const hard = water(25, 7.8, 15);

/** Invented plans with real species, good and bad. */
export const plans: Readonly<Record<string, Plan>> = {
  "fifteen neon tetras with six corydoras in a metre of soft water": plan(tank(100, 40, 45), soft, [
    { species: paracheirodonInnesi, unsexed: 15 },
    { species: osteogasterAenea, unsexed: 6 },
  ]),
  "five neon tetras alone in 60 cm": plan(tank(60, 30, 36), soft, [
    { species: paracheirodonInnesi, unsexed: 5 },
  ]),
  "ten neon tetras and two grown angelfish": plan(tank(120, 50, 50), water(26, 6.7, 6), [
    { species: paracheirodonInnesi, unsexed: 10 },
    { species: pterophyllumScalare, unsexed: 2 },
  ]),
  "eight tiger barbs and an angelfish": plan(tank(120, 50, 50), water(25.5, 6.9, 8), [
    { species: puntigrusTetrazona, unsexed: 8 },
    { species: pterophyllumScalare, unsexed: 1 },
  ]),
  "ten tiger barbs alone in a metre": plan(tank(100, 40, 45), middling, [
    { species: puntigrusTetrazona, unsexed: 10 },
  ]),
  "one male betta alone in 40 cm": plan(
    tank(40, 25, 25, { flow: { calmest: "still", strongest: "gentle" } }),
    middling,
    [{ species: bettaSplendens, males: 1 }],
  ),
  "two male bettas in a metre": plan(tank(100, 40, 45), middling, [{ species: bettaSplendens, males: 2 }]),
  "a male betta and six male guppies": plan(tank(60, 30, 36), middling, [
    { species: bettaSplendens, males: 1 },
    { species: poeciliaReticulata, males: 6 },
  ]),
  "three male and six female guppies with cherry shrimps": plan(tank(80, 35, 40), middling, [
    { species: poeciliaReticulata, males: 3, females: 6 },
    { species: neocaridinaDavidi, unsexed: 20 },
  ]),
  "platies and swordtails of both sexes": plan(tank(120, 40, 50), water(23.5, 7.5, 14), [
    { species: xiphophorusMaculatus, males: 2, females: 4 },
    { species: xiphophorusHellerii, males: 1, females: 4 },
  ]),
  "platies and swordtails, females only": plan(tank(120, 40, 50), water(23.5, 7.5, 14), [
    { species: xiphophorusMaculatus, females: 5 },
    { species: xiphophorusHellerii, females: 5 },
  ]),
  "ten white clouds in an unheated tank": plan(
    tank(80, 35, 40),
    { ...water(19, 7, 10), hottest: 24, coolest: 16 },
    [{ species: tanichthysAlbonubes, unsexed: 10 }],
  ),
  "white clouds in a tropical tank": plan(tank(80, 35, 40), water(27, 7, 8), [
    { species: tanichthysAlbonubes, unsexed: 10 },
  ]),
  "two common goldfish in 80 cm": plan(tank(80, 35, 40), water(18, 7.5, 12), [
    { species: carassiusAuratus, unsexed: 2 },
  ]),
  "an oscar with ten neon tetras": plan(tank(200, 70, 60), soft, [
    { species: astronotusOcellatus, unsexed: 1 },
    { species: paracheirodonInnesi, unsexed: 10 },
  ]),
  "a pair of convicts with corydoras": plan(tank(100, 40, 45), hard, [
    { species: amatitlaniaNigrofasciata, males: 1, females: 1 },
    { species: osteogasterAenea, unsexed: 6 },
  ]),
  "ten yellow cichlids in hard water": plan(tank(120, 50, 50), hard, [
    { species: labidochromisCaeruleus, males: 2, females: 8 },
  ]),
  "bumblebee gobies in brackish water with a zebra nerite": plan(tank(60, 30, 36), water(26, 7.8, 15, 4), [
    { species: brachygobiusDoriae, unsexed: 8 },
    { species: vittinaNatalensis, unsexed: 3 },
  ]),
  "bumblebee gobies in fresh water": plan(tank(60, 30, 36), water(26, 7.8, 15), [
    { species: brachygobiusDoriae, unsexed: 8 },
  ]),
  "hatchetfish and neon tetras without a lid": plan(tank(100, 40, 45, { lid: false }), soft, [
    { species: carnegiellaStrigata, unsexed: 10 },
    { species: paracheirodonInnesi, unsexed: 12 },
  ]),
  "a honey gourami trio beside neon tetras": plan(tank(80, 35, 40, { plants: "grown-in" }), soft, [
    { species: trichogasterChuna, males: 1, females: 2 },
    { species: paracheirodonInnesi, unsexed: 12 },
  ]),
  "a honey gourami trio by themselves": plan(tank(80, 35, 40, { plants: "grown-in" }), soft, [
    { species: trichogasterChuna, males: 1, females: 2 },
  ]),
  "hillstream loaches and zebra danios in a stream tank": plan(
    tank(100, 40, 45, { flow: { calmest: "moderate", strongest: "strong" } }),
    water(22.5, 7, 8),
    [
      { species: sewelliaLineolata, unsexed: 5 },
      { species: danioRerio, unsexed: 10 },
    ],
  ),
  "a stingray in two metres": plan(tank(200, 100, 60), water(26, 6.5, 4), [
    { species: potamotrygonMotoro, unsexed: 1 },
  ]),
};
