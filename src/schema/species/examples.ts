import { frozen } from "../../frozen";
import type { TraitPath, TraitStatement } from "../../species";

/** Who says it: a key of the record's sources, which an example only supposes. */
const by = "handbook";
const practice = "common-practice";

/** A statement of each trait as it may stand in a record. */
const examples: { readonly [Path in TraitPath]: TraitStatement<Path> } = /* @__PURE__ */ frozen({
  "origin.regions": { by, value: "Rio Negro" },
  "origin.waters": { by, value: "fresh" },
  "origin.supply": { by, value: "farmed" },
  "origin.conservation": { by, value: { status: "LC", year: 2019 } },
  "size.adultLength": { by, value: 4, as: "usual", measure: "TL" },
  "size.standardShare": { by, value: 0.8 },
  "size.bodyShape": { by, value: "fusiform" },
  "size.bodyDepthShare": { by, value: 0.3 },
  "size.lengthWeight": { by, value: { a: 0.01, b: 3 } },
  "size.grownAt": { by, value: 8 },
  "size.lifespan": { by, value: 5, as: "usual" },
  "water.temperature": { by, value: { min: 20, max: 26 }, as: "kept" },
  "water.pH": { by, value: { min: 6, max: 7.5 }, as: "kept" },
  "water.generalHardness": { by, value: { min: 2, max: 12 }, as: "kept" },
  "water.carbonateHardness": { by, value: { min: 3, max: 10 }, as: "kept" },
  "water.coolSeason": { by, value: { min: 10, max: 16, months: 3 } },
  "water.salinity": { by, value: { max: 5 }, as: "tolerated" },
  "water.flow": { by, value: { min: "still", max: "gentle" } },
  "water.oxygenNeed": { by, value: "ordinary" },
  "water.airBreathing": { by, value: { kind: "obligate", from: "juvenile" } },
  "space.baseLength": { by, value: { least: 60, for: 8 } },
  "space.footprint": { by, value: { least: 1800, for: 8 } },
  "space.furtherFootprint": { by, value: 100 },
  "space.height": { by, value: 30 },
  "space.zones": { by, value: "midwater" },
  "space.cover": { by, value: 0.3 },
  "space.openWater": { by, value: 0.4 },
  "space.grownInPlants": { by, value: true },
  "space.substrate": { by, value: "sand" },
  "space.hides": { by, value: { anyOf: ["caves", "wood"], each: 1, holder: "male" } },
  "space.jumps": { by, value: "startled" },
  "space.territory": { by, value: { area: 400, zone: "bottom", holder: "male" } },
  "temperament.acts": { by: practice, value: { does: "chases", target: "own-sex", doer: "male" } },
  "temperament.shy": { by: practice, value: true },
  "temperament.varies": { by: practice, value: true },
  "social.living": { by, value: "shoal" },
  "social.group": { by, value: { least: 8 } },
  "social.largestGroup": { by, value: 2 },
  "social.femalesPerMale": { by, value: 2 },
  "social.settledBy": { by: practice, value: true },
  "social.settles": { by: practice, value: true },
  "appearance.looks": { by: practice, value: { tag: "neon-stripe" } },
  "appearance.longFins": { by: practice, value: false },
  "diet.type": { by, value: "omnivore" },
  "diet.foods": { by, value: "insects" },
  "diet.reach": { by: practice, value: "midwater" },
  "diet.pace": { by: practice, value: "ordinary" },
  "diet.light": { by: practice, value: "day" },
  "predation.eats": { by: practice, value: { prey: "fry" } },
  "reproduction.mode": { by, value: "scatters-eggs" },
  "reproduction.breedsFrom": { by, value: 4 },
  "reproduction.interbreedsWith": { by, value: "danio-kyathit" },
  "effects.digs": { by: practice, value: false },
  "effects.uproots": { by: practice, value: false },
  "effects.eatsPlants": { by: practice, value: false },
  "care.sensitive": { by, value: "copper" },
  "care.hazards": { by: practice, value: "none" },
  "care.rehoming": {
    by: practice,
    value: { en: "Only the whole group moves.", de: "Nur die ganze Gruppe zieht um." },
  },
});

/** A statement of a trait as it may stand in a record. */
export const exampleOf = <Path extends TraitPath>(path: Path): TraitStatement<Path> => examples[path];
