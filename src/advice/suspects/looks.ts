import type { Finding } from "../../compatibility";
import { frozen } from "../../frozen";
import { harmInWater, isShown, type ShownRule } from "./signs";

/**
 * What to look at. `measure-…`: with a thermometer or a test. `surface-at-dawn`: who hangs there before the lights are on,
 * and whether it is moved. `who-chases-whom`, `who-bites-whom`: from a distance, for half an hour by day. `by-night`: with
 * a dim light, two hours after dark. `who-eats`: who gets to the food, and who does not. `count-and-measure`: how many there
 * are of each and how long, mouths beside prey. `around-the-tank`: the floor, gaps in the lid, the filter. `spawning`:
 * pairs, eggs and who guards them. `places-to-hide`: whether each finds one, and who is driven from it. `room-to-swim`.
 * `current`: whom it drives about. `ground`: how sharp and how deep. `plants`: roots, edges and who is at them.
 * `company`: how many there are of it, and who comes out with whom. `males-and-females`. `the-animals`: by day and by night.
 */
export const looks = /* @__PURE__ */ frozen([
  "measure-temperature",
  "measure-ph",
  "measure-hardness",
  "measure-salinity",
  "measure-ammonia-and-nitrite",
  "surface-at-dawn",
  "who-chases-whom",
  "who-bites-whom",
  "by-night",
  "who-eats",
  "count-and-measure",
  "around-the-tank",
  "spawning",
  "places-to-hide",
  "room-to-swim",
  "current",
  "ground",
  "plants",
  "company",
  "males-and-females",
  "the-animals",
] as const);

/** One of {@link looks}. */
export type Look = (typeof looks)[number];

const byRule: Readonly<Record<ShownRule, Look>> = {
  temperature: "measure-temperature",
  ph: "measure-ph",
  "general-hardness": "measure-hardness",
  salinity: "measure-salinity",
  flow: "current",
  predation: "count-and-measure",
  "acts-own-kind": "who-chases-whom",
  "acts-look-alike": "who-chases-whom",
  "acts-others": "who-chases-whom",
  "fin-nipping": "who-bites-whom",
  "mucus-grazing": "by-night",
  "territory-contest": "who-chases-whom",
  "size-and-pace": "who-eats",
  "feeding-competition": "who-eats",
  shyness: "places-to-hide",
  interbreeding: "spawning",
  planting: "plants",
  "water-temperature": "measure-temperature",
  "water-ph": "measure-ph",
  "water-hardness": "measure-hardness",
  "water-salinity": "measure-salinity",
  "carbon-dioxide": "measure-ph",
  oxygen: "surface-at-dawn",
  "filter-nitrogen": "measure-ammonia-and-nitrite",
  "longest-run": "room-to-swim",
  footprint: "room-to-swim",
  zones: "room-to-swim",
  territories: "who-chases-whom",
  "group-size": "company",
  "sex-ratio": "males-and-females",
  "both-sexes": "males-and-females",
  cover: "places-to-hide",
  "open-water": "room-to-swim",
  ground: "ground",
  "hiding-places": "places-to-hide",
  plants: "plants",
  "plants-at-risk": "plants",
  "settling-company": "company",
  feeding: "who-eats",
  lid: "around-the-tank",
  "flow-places": "current",
  sensitive: "measure-ammonia-and-nitrite",
};

/** What to look at where a finding is suspected; of a rule of an app the animals. */
export function lookFor(finding: Finding): Look {
  if (harmInWater(finding) === "soft-water") return "measure-hardness";
  return isShown(finding.rule) ? byRule[finding.rule] : "the-animals";
}
