// The words a trait may be answered with. Ordinals ascend. What each means stands in classes.ts.
import { frozen } from "../../frozen";

/** What sort of animal a species is. */
export const kind = /* @__PURE__ */ frozen([
  "fish",
  "shrimp",
  "crayfish",
  "crab",
  "snail",
  "mussel",
  "frog",
] as const);

/** The sexes. */
export const sex = /* @__PURE__ */ frozen(["male", "female"] as const);

/** Stages of life, the youngest first. */
export const stage = /* @__PURE__ */ frozen(["egg", "fry", "juvenile", "adult"] as const);

/** What a figure of water means. */
export const waterMeaning = /* @__PURE__ */ frozen([
  "kept",
  "optimum",
  "tolerated",
  "limit",
  "wild",
  "tested",
] as const);

/** What ended a test, or what a tested figure was best for. */
export const endpoint = /* @__PURE__ */ frozen([
  "balance",
  "half-dead",
  "death",
  "survival",
  "growth",
  "breeding",
  "choice",
  "performance",
  "housing",
  "mixed",
  "unstated",
] as const);

/** What a length or an age means. */
export const lengthMeaning = /* @__PURE__ */ frozen(["usual", "greatest"] as const);

/** What was measured. */
export const lengthMeasure = /* @__PURE__ */ frozen([
  "TL",
  "SL",
  "FL",
  "body",
  "shell",
  "disc",
  "unstated",
] as const);

/** Kinds of water. */
export const waters = /* @__PURE__ */ frozen(["fresh", "brackish", "marine"] as const);

/** How those that are sold came to be. */
export const supply = /* @__PURE__ */ frozen(["farmed", "mixed", "wild"] as const);

/** Red List categories of the IUCN, version 3.1. */
export const conservation = /* @__PURE__ */ frozen([
  "EX",
  "EW",
  "CR",
  "EN",
  "VU",
  "NT",
  "LC",
  "DD",
  "NE",
] as const);

/** Body shapes of Froese, Thorson & Reyes 2014, J. Appl. Ichthyol. 30:78-85. */
export const bodyShape = /* @__PURE__ */ frozen(["eel-like", "elongated", "fusiform", "short-deep"] as const);

/** Currents. */
export const flow = /* @__PURE__ */ frozen(["still", "gentle", "moderate", "strong"] as const);

/** How much oxygen it needs. */
export const oxygenNeed = /* @__PURE__ */ frozen(["low", "ordinary", "high"] as const);

/** Whether it breathes air. */
export const airBreathing = /* @__PURE__ */ frozen(["none", "facultative", "obligate"] as const);

/** Parts of the water. */
export const zone = /* @__PURE__ */ frozen(["surface", "midwater", "bottom"] as const);

/** How readily it leaves the water. */
export const jumps = /* @__PURE__ */ frozen(["seldom", "startled", "readily"] as const);

/** What covers the ground. */
export const ground = /* @__PURE__ */ frozen([
  "bare",
  "sand",
  "fine-gravel",
  "coarse-gravel",
  "pebbles",
] as const);

/** What an animal hides, sleeps or spawns in. */
export const hide = /* @__PURE__ */ frozen(["caves", "shells", "wood", "leaves", "rocks"] as const);

/** Who holds a territory. */
export const territoryHolder = /* @__PURE__ */ frozen(["male", "female", "pair", "each"] as const);

/** What an act does. */
export const does = /* @__PURE__ */ frozen([
  "chases",
  "bites",
  "kills",
  "nips-fins",
  "rasps-mucus",
  "robs-food",
] as const);

/** Whom an act falls on. */
export const target = /* @__PURE__ */ frozen([
  "own-sex",
  "other-sex",
  "own-kind",
  "look-alike",
  "long-finned",
  "smaller",
  "any",
] as const);

/** When an act happens; at any time where it is not said. */
export const when = /* @__PURE__ */ frozen([
  "always",
  "breeding",
  "guarding-brood",
  "feeding",
  "crowded",
] as const);

/** How many of a kind belong together. */
export const living = /* @__PURE__ */ frozen(["alone", "pair", "harem", "group", "shoal", "either"] as const);

/** Features by which one species may take another for its own. */
export const look = /* @__PURE__ */ frozen([
  "oval-thread-fins",
  "trailing-fins",
  "upright-bars",
  "long-stripe",
  "neon-stripe",
  "red-body",
  "blue-body",
  "yellow-body",
  "red-and-blue-bars",
  "sword-tail",
] as const);

/** What it lives on. */
export const dietType = /* @__PURE__ */ frozen([
  "herbivore",
  "omnivore",
  "carnivore",
  "detritivore",
] as const);

/** Foods. */
export const food = /* @__PURE__ */ frozen([
  "dry",
  "frozen",
  "live",
  "plankton",
  "fallen-insects",
  "insects",
  "crustaceans",
  "worms",
  "molluscs",
  "fish",
  "algae",
  "plants",
  "wood",
  "detritus",
] as const);

/** How fast it comes to food. */
export const pace = /* @__PURE__ */ frozen(["slow", "ordinary", "fast"] as const);

/** When it feeds. */
export const light = /* @__PURE__ */ frozen(["day", "dusk", "night"] as const);

/** Prey among tank mates. */
export const prey = /* @__PURE__ */ frozen([
  "egg",
  "fry",
  "fish",
  "shrimplet",
  "shrimp",
  "snail",
  "young-snail",
  "crayfish",
  "young-crayfish",
  "crab",
  "young-crab",
  "mussel",
  "frog",
  "tadpole",
] as const);

/** How it breeds. */
export const reproduction = /* @__PURE__ */ frozen([
  "scatters-eggs",
  "guards-eggs",
  "bubble-nest",
  "mouthbrooder",
  "livebearer",
  "large-young",
  "broods-young",
  "sea-larvae",
] as const);

/** What harms it. */
export const sensitivity = /* @__PURE__ */ frozen([
  "copper",
  "salt",
  "ammonia-nitrite",
  "handling",
  "soft-water",
] as const);

/** How it can hurt a person. */
export const hazard = /* @__PURE__ */ frozen(["venom", "spines", "bite", "shock"] as const);
