import { frozen } from "../../frozen";
import type { TraitPath } from "./values";

/** What a program must know of a trait to resolve it, convert it and check it. */
export interface TraitDefinition {
  /**
   * How its statements become one value: `one` of them, `figures` and `ages` by meaning, `lengths` by sex and measure,
   * `rooms` by the number of animals, or `all` of them together.
   */
  readonly way: "one" | "figures" | "lengths" | "rooms" | "ages" | "all";
  /** The unit of the sizes in its value; `1` for a share. */
  readonly unit?: string;
  /** Below this there is nothing: where only an upper end is stated, the span reaches down to it. In the trait's unit. */
  readonly floor?: number;
  /** Its classes ascend. */
  readonly ordinal?: true;
  /** A record without it is incomplete. */
  readonly essential?: true;
}

/** The traits with what a program must know of each, in the order of pages. */
const traits = /* @__PURE__ */ frozen({
  "origin.regions": { way: "all" },
  "origin.waters": { way: "all" },
  "origin.supply": { way: "one" },
  "origin.conservation": { way: "one" },
  "size.adultLength": { way: "lengths", unit: "cm", essential: true },
  "size.standardShare": { way: "one", unit: "1" },
  "size.bodyShape": { way: "one" },
  "size.bodyDepthShare": { way: "one", unit: "1" },
  "size.lengthWeight": { way: "one" },
  "size.grownAt": { way: "one", unit: "mo" },
  "size.lifespan": { way: "ages", unit: "a" },
  "water.temperature": { way: "figures", unit: "degC", essential: true },
  "water.pH": { way: "figures" },
  "water.generalHardness": { way: "figures", unit: "dH", floor: 0 },
  "water.carbonateHardness": { way: "figures", unit: "dH", floor: 0 },
  "water.coolSeason": { way: "one", unit: "degC" },
  "water.salinity": { way: "figures", unit: "g/kg", floor: 0 },
  "water.flow": { way: "one", ordinal: true },
  "water.oxygenNeed": { way: "one", ordinal: true },
  "water.airBreathing": { way: "one", ordinal: true },
  "space.baseLength": { way: "rooms", unit: "cm" },
  "space.footprint": { way: "rooms", unit: "cm2" },
  "space.furtherFootprint": { way: "one", unit: "cm2" },
  "space.height": { way: "one", unit: "cm" },
  "space.zones": { way: "all", essential: true },
  "space.cover": { way: "one", unit: "1" },
  "space.openWater": { way: "one", unit: "1" },
  "space.grownInPlants": { way: "one" },
  "space.substrate": { way: "all" },
  "space.hides": { way: "all" },
  "space.jumps": { way: "one", ordinal: true },
  "space.territory": { way: "one", unit: "cm2" },
  "temperament.acts": { way: "all" },
  "temperament.shy": { way: "one" },
  "temperament.varies": { way: "one" },
  "social.living": { way: "one", essential: true },
  "social.group": { way: "one" },
  "social.largestGroup": { way: "one" },
  "social.femalesPerMale": { way: "one" },
  "social.settledBy": { way: "one" },
  "social.settles": { way: "one" },
  "appearance.looks": { way: "all" },
  "appearance.longFins": { way: "one" },
  "diet.type": { way: "one" },
  "diet.foods": { way: "all" },
  "diet.reach": { way: "all" },
  "diet.pace": { way: "one", ordinal: true },
  "diet.light": { way: "all" },
  "predation.eats": { way: "all", unit: "cm", essential: true },
  "reproduction.mode": { way: "one" },
  "reproduction.breedsFrom": { way: "one", unit: "mo" },
  "reproduction.interbreedsWith": { way: "all" },
  "effects.digs": { way: "one" },
  "effects.uproots": { way: "one" },
  "effects.eatsPlants": { way: "one" },
  "care.sensitive": { way: "all" },
  "care.hazards": { way: "all" },
  "care.rehoming": { way: "one" },
} as const satisfies Record<TraitPath, TraitDefinition>);

/** The way in which a trait resolves; without a path, all the ways there are. */
export type TraitWay<Path extends TraitPath = TraitPath> = (typeof traits)[Path]["way"];

/** Whether the sizes of a trait have a unit. */
export type HasUnit<Path extends TraitPath> = (typeof traits)[Path] extends { readonly unit: string }
  ? true
  : false;

/** What a program must know of each trait, without a word of prose. */
export const traitDefinitions: Readonly<Record<TraitPath, TraitDefinition>> = traits;
