import type { WordKind } from "../../compatibility";
import type { TraitPath } from "../../species";

/** The kind of words that a trait is answered with, where a whole value is one word. */
export const wordKinds: { readonly [Path in TraitPath]?: WordKind } = {
  "origin.waters": "waters",
  "origin.supply": "supply",
  "size.bodyShape": "bodyShape",
  "water.oxygenNeed": "oxygenNeed",
  "space.zones": "zone",
  "space.substrate": "ground",
  "space.jumps": "jumps",
  "social.living": "living",
  "diet.type": "dietType",
  "diet.foods": "food",
  "diet.reach": "zone",
  "diet.pace": "pace",
  "diet.light": "light",
  "reproduction.mode": "reproduction",
  "care.sensitive": "sensitivity",
  "care.hazards": "hazard",
};
