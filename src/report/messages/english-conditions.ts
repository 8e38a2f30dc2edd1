import type { Quantity, Words } from "../../compatibility";
import { anyOf, them, they, verb } from "./english-grammar";
import { feedingHours, grounds, grown, offered, places } from "./english-words";
import type { Messages, ToldCondition } from "./messages";
import { choicesOfFood, foam, halfUp, spaced } from "./sentences";

/** At a figure, or at least or at most one. */
const held = ({ wanted, min, max }: Pick<ToldCondition, "wanted" | "min" | "max">) =>
  min === undefined || max === undefined ? wanted : `at ${wanted}`;

/** `keep no more than 1 male swordtail`, `keep no male swordtail`. */
function noMoreThan({ max, one, several, figure }: ToldCondition, sex = ""): string {
  if (max === 0) return `keep no ${sex}${one}`;
  const most: Quantity | undefined = max === undefined ? undefined : { value: max };
  return `keep no more than ${figure(most)} ${sex}${max === 1 ? one : several}`;
}

/** What food is called, and how it reaches an animal. */
const foods = () => ({ ...offered, algae: "greens and algae", ...grown });
const feedingWays = () => ({ ...places, ...feedingHours, apart: "where the quicker ones do not get at it" });

/** `give neon tetras frozen food where and when they feed`, `let food reach neon tetras after dark`. */
function fedWith({ of, many, words }: ToldCondition): string {
  const { given, reached } = choicesOfFood(words, foods(), feedingWays());
  return [
    given.length > 0 &&
      `give ${of} ${anyOf(given)} where and when ${they(many)} ${verb(many, "feeds", "feed")}`,
    reached.length > 0 && `feed ${given.length > 0 ? them(many) : of} ${anyOf(reached)}`,
  ]
    .filter(Boolean)
    .join(", or ");
}

/** How a share of the tank is seen, which is said once in a sentence. */
export const seenFromAbove = ", seen from above,";

/** What a plan is asked to have, a clause each fact. */
export const conditions = (): Messages["conditions"] => ({
  "tank.longestRun": ({ wanted }) => `have a tank ${wanted} long`,
  "tank.footprint": ({ wanted }) => `have a floor of ${wanted}`,
  "tank.height": ({ wanted }) => `have a tank ${wanted} high`,
  "tank.openWater": ({ wanted }) => `leave ${wanted} of the tank, seen from above, free to swim in`,
  "tank.substrate": ({ words }) =>
    `have ${anyOf(words.map((word) => grounds[word as Words["ground"]] ?? String(word)))} on the ground`,
  "tank.hides": ({ of, wanted, min }) =>
    `give ${of} ${min === 1 ? "a place" : `${wanted} places`} to hide, sleep or spawn in`,
  "tank.openSurface": ({ wanted }) =>
    `keep ${wanted} of the surface free of leaves, with air between water and lid`,
  "tank.sightBreaks": ({ wanted, min }) =>
    `break the line of sight over the ground with roots, stones or thickets in ${wanted} ${min === 1 ? "place" : "places"}`,
  // Eight weeks: the end of ripening in `filterCapacity`.
  "tank.filter.ripeArea": ({ min = 0, figure }) =>
    `have a ripe filter, at work for eight weeks, with about ${figure(foam(min))} of coarse foam`,
  "tank.lid": () => "cover the tank without a gap",
  "tank.cover": ({ wanted }) => `cover ${wanted} of the tank, seen from above, with plants, roots or stones`,
  "tank.plants": ({ words }) =>
    words.includes("none") ? "keep no plants that you would miss" : "let the plants grow in first",
  "tank.flow.calmest": ({ words }) => `keep some place calm, with no more than ${words.at(-1)} current`,
  "tank.flow.strongest": ({ words }) => `have at least ${words[0]} current somewhere`,
  "water.temperature": (told) => `keep the water ${held(told)}`,
  "water.hottest": (told) => `keep the water ${held(told)} on the hottest day`,
  "water.coolest": (told) => `keep the water ${held(told)} in the coolest season`,
  "water.pH": ({ wanted }) => `keep the water at a pH of ${wanted}`,
  "water.generalHardness": ({ wanted }) => `keep the water at a hardness of ${wanted}`,
  "water.salinity": ({ wanted }) =>
    `keep the water at a salinity of ${wanted} (grams of sea salt to a kilogram of water)`,
  "group.count": (told) =>
    told.max === undefined
      ? `keep ${told.wanted} ${told.min === 1 ? told.one : told.several}`
      : noMoreThan(told),
  "group.males": (told) => noMoreThan(told, "male "),
  "group.females": (told) => noMoreThan(told, "female "),
  "group.pairs": ({ several }) => `keep ${several} of one sex only, so that none breed`,
  "group.femalesPerMale": ({ several, wanted, min }) =>
    `keep ${wanted} ${min === 1 ? "female" : "females"} to each male of the ${several}`,
  "group.length": ({ several, min, max, figure }) =>
    max === undefined
      ? `buy ${several} that measure ${figure({ min: halfUp(min ?? 0), unit: "cm" })}`
      : `choose ${several} that do not grow beyond ${figure({ value: max, unit: "cm" })}`,
  "group.longFins": ({ several }) => `choose a form of ${several} with short fins`,
  "group.sex": ({ several, words }) => `keep ${words.join(" or ")} ${several} only`,
  "group.form": ({ several, words }) =>
    `choose ${several} of this form: ${anyOf(words.map((word) => spaced(String(word))))}`,
  "group.grown": ({ several }) => `keep only young ${several}, and move them out before they are grown`,
  "group.offerings": (told) => fedWith(told),
  "group.company": ({ several }) =>
    `keep calm fish in the open water that neither eat ${several} nor are eaten by them`,
});
