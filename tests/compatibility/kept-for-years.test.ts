// Common practice, no source: tanks that keepers have run well for years, each given in full. Fine, or fine but for one thing.
import { expect, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { assessPlan } from "../../src/compatibility";
import type { FactName, Group, Plan, PlannedTank } from "../../src/plan";

type Offerings = NonNullable<Plan["offerings"]>;
type Animals = Omit<Group, "species">;

/** Flakes by day, tablets at lights out, frozen food twice a week, greens on the ground. */
const usual: Offerings = [
  ...(["surface", "midwater", "bottom"] as const).flatMap((place) => [
    { food: "dry", place } as const,
    { food: "frozen", place } as const,
  ]),
  ...(["dusk", "night"] as const).flatMap((light) => [
    { food: "dry", place: "bottom", light } as const,
    { food: "frozen", place: "bottom", light } as const,
    { food: "algae", place: "bottom", light } as const,
  ]),
  { food: "algae", place: "bottom" },
  { food: "algae", place: "midwater" },
];
const live: Offerings = (["surface", "midwater", "bottom"] as const).map((place) => ({
  food: "live",
  place,
}));

/** Length, width and height in cm. */
type Size = readonly [number, number, number];
/** °C, pH and °dH, then °C in the coolest season and on the hottest day. */
type Water = readonly [number, number, number, number, number];

interface Kept {
  readonly size: Size;
  readonly water: Water;
  readonly animals: Readonly<Record<string, number | Animals>>;
  readonly tank?: Partial<PlannedTank>;
  readonly salinity?: number;
  readonly food?: Offerings;
  readonly lacks?: FactName;
}

const pair = { males: 1, females: 1 };
const nano: Partial<PlannedTank> = {
  flow: { calmest: "still", strongest: "gentle" },
  filter: { mediaArea: 1, age: 200 },
  cover: 0.5,
  openWater: 0.45,
};
const bare = { plants: "none", openWater: 0.5 } as const;
const filter = (mediaArea: number) => ({ filter: { mediaArea, age: 200 } });

const kept: Readonly<Record<string, Kept>> = {
  "chili rasboras and cherry shrimps in a planted 54 l": {
    size: [60, 30, 30],
    water: [25, 6.8, 6, 23, 27],
    animals: { "boraras-brigittae": 10, "neocaridina-davidi": 12 },
    tank: nano,
  },
  "a male betta with a nerite in 40 l": {
    size: [45, 30, 30],
    water: [26, 7, 8, 25, 28],
    animals: { "betta-splendens": { males: 1 }, "vittina-natalensis": 1 },
    tank: nano,
  },
  "cherry shrimps and ramshorns in a 20 l cube": {
    size: [30, 25, 30],
    water: [22, 7.3, 9, 19, 26],
    animals: { "neocaridina-davidi": 20, "planorbella-duryi": 5 },
    tank: nano,
  },
  "bee shrimps alone in 54 l of soft water": {
    size: [60, 30, 30],
    water: [22, 6.3, 5, 20, 24],
    animals: { "caridina-logemanni": 20 },
    tank: nano,
  },
  "six male guppies and a nerite in 54 l": {
    size: [60, 30, 30],
    water: [24, 7.6, 14, 23, 27],
    animals: { "poecilia-reticulata": { males: 6 }, "vittina-natalensis": 1 },
    tank: nano,
  },
  "guppies and bronze corydoras in 112 l, on coarse gravel": {
    size: [80, 35, 40],
    water: [24, 7.5, 12, 22, 27],
    animals: { "poecilia-reticulata": { males: 3, females: 6 }, "osteogaster-aenea": 6 },
    tank: { substrate: "coarse-gravel" },
    lacks: "tank.substrate",
  },
  "a pair of cockatoo cichlids, cardinals and Sterba's corydoras in 160 l": {
    size: [100, 40, 40],
    water: [26, 6.5, 5, 25, 28],
    animals: { "apistogramma-cacatuoides": pair, "paracheirodon-axelrodi": 15, "hoplisoma-sterbai": 6 },
  },
  "pearl gouramis, harlequins and corydoras in 290 l, hardly planted": {
    size: [120, 50, 50],
    water: [25, 6.9, 7, 24, 27],
    animals: {
      "trichopodus-leerii": { males: 1, females: 3 },
      "trigonostigma-heteromorpha": 12,
      "osteogaster-aenea": 8,
    },
    tank: { cover: 0.1, openWater: 0.8, plants: "planted", ...filter(6) },
    lacks: "tank.cover",
  },
  "five angelfish, Congo tetras and corydoras in 360 l": {
    size: [120, 50, 60],
    water: [26, 6.8, 7, 25, 28],
    animals: {
      "pterophyllum-scalare": 5,
      "phenacogrammus-interruptus": 8,
      "hoplisoma-sterbai": 8,
      "ancistrus-cirrhosus": 1,
    },
    tank: filter(8),
  },
  "six discus alone in 450 l": {
    size: [150, 50, 60],
    water: [29, 6.5, 4, 28, 30],
    animals: { "symphysodon-aequifasciatus": 6 },
    tank: filter(10),
  },
  "eight shell-dwellers in 54 l": {
    size: [60, 30, 30],
    water: [25, 8.2, 13, 24, 27],
    animals: { "neolamprologus-multifasciatus": 8 },
    tank: { ...bare, cover: 0.3, hides: { shells: 16 }, ...filter(1.2) },
  },
  "slender cichlids, a pair of masked julies and shell-dwellers in 300 l": {
    size: [120, 50, 50],
    water: [25, 8.2, 14, 24, 27],
    animals: {
      "cyprichromis-leptosoma": { males: 3, females: 7 },
      "julidochromis-transcriptus": pair,
      "neolamprologus-multifasciatus": 8,
    },
    tank: {
      ...bare,
      cover: 0.35,
      openWater: 0.6,
      hides: { shells: 16, rocks: 4, caves: 4 },
      sightBreaks: 6,
      ...filter(6),
    },
  },
  "electric yellows, red zebras and petricolas on rocks in 300 l": {
    size: [120, 50, 50],
    water: [25.5, 8, 15, 24, 27],
    animals: {
      "labidochromis-caeruleus": { males: 2, females: 5 },
      "maylandia-estherae": { males: 1, females: 4 },
      "synodontis-petricola": 4,
    },
    tank: { ...bare, cover: 0.5, hides: { rocks: 10, caves: 10 }, sightBreaks: 10, ...filter(8) },
  },
  "butterfly peacocks and electric yellows in 500 l": {
    size: [150, 60, 55],
    water: [25.5, 8, 14, 24, 28],
    animals: { "aulonocara-jacobfreibergi": { males: 1, females: 4 }, "labidochromis-caeruleus": 8 },
    tank: { ...bare, hides: { rocks: 8, caves: 6 }, sightBreaks: 7, ...filter(9) },
  },
  "three common goldfish in an unheated 200 × 80 cm tank": {
    size: [200, 80, 60],
    water: [18, 7.5, 12, 8, 23],
    animals: { "carassius-auratus": 3 },
    tank: { cover: 0.2, openWater: 0.7, plants: "planted", ...filter(15) },
  },
  "two fantails in 300 l": {
    size: [120, 50, 50],
    water: [20, 7.5, 12, 16, 23],
    animals: { "carassius-auratus": { unsexed: 2, form: "fantail" } },
    tank: { cover: 0.2, openWater: 0.75, plants: "planted", ...filter(8) },
  },
  "white clouds and hillstream loaches in a stream tank": {
    size: [80, 35, 40],
    water: [21, 7.3, 8, 20, 22],
    animals: { "tanichthys-albonubes": 12, "sewellia-lineolata": 5 },
    tank: {
      flow: { calmest: "gentle", strongest: "strong" },
      hides: { rocks: 6 },
      substrate: "pebbles",
    },
  },
  "a pair of paradise fish alone in an unheated metre": {
    size: [100, 40, 40],
    water: [21, 7.2, 10, 16, 25],
    animals: { "macropodus-opercularis": pair },
  },
  "zebra danios and only four peppered corydoras, unheated": {
    size: [80, 35, 40],
    water: [22, 7.3, 10, 19, 25],
    animals: { "danio-rerio": 8, "hoplisoma-paleatum": 4 },
    lacks: "group.count",
  },
  "tiger barbs and zebra loaches in 300 l": {
    size: [120, 50, 50],
    water: [25, 7, 8, 24, 26],
    animals: { "puntigrus-tetrazona": 12, "botia-striata": 6 },
    tank: { hides: { caves: 5, wood: 4, rocks: 2, leaves: 5 }, ...filter(6) },
  },
  "a honey gourami trio, ember tetras and kuhlis in 112 l": {
    size: [80, 35, 40],
    water: [26, 6.8, 6, 25, 28],
    animals: {
      "trichogaster-chuna": { males: 1, females: 2 },
      "hyphessobrycon-amandae": 12,
      "pangio-kuhlii": 6,
    },
    tank: { cover: 0.45, openWater: 0.45, hides: { wood: 4, leaves: 8, caves: 2 } },
  },
  "a pair of kribensis and diamond tetras in 200 l, without a cave": {
    size: [100, 40, 50],
    water: [25, 6.8, 8, 24, 27],
    animals: { "pelvicachromis-pulcher": pair, "makunaima-pittieri": 10 },
    tank: { hides: { caves: 0, wood: 3, leaves: 4 }, ...filter(4) },
    lacks: "tank.hides",
  },
  "cardinals, rummy-noses, otos and Amano shrimps in a planted 240 l": {
    size: [120, 40, 50],
    water: [24.5, 6.6, 6, 24, 25],
    animals: {
      "paracheirodon-axelrodi": 20,
      "petitella-bleheri": 12,
      "otocinclus-vittatus": 8,
      "caridina-multidentata": 12,
    },
    tank: { cover: 0.45, ...filter(5) },
  },
  "black mollies in 160 l of hard water": {
    size: [100, 40, 40],
    water: [26, 7.9, 18, 25, 28],
    animals: { "poecilia-sphenops": { males: 2, females: 5, form: "black" } },
    tank: filter(4),
  },
  "a pair of firemouths and swordtails in 300 l": {
    size: [120, 50, 50],
    water: [25, 7.6, 12, 24, 27],
    animals: { "thorichthys-meeki": pair, "xiphophorus-hellerii": { males: 2, females: 6 } },
    tank: { hides: { caves: 4, wood: 4, rocks: 2 }, sightBreaks: 6, plants: "planted", ...filter(7) },
  },
  "an oscar alone in 540 l": {
    size: [150, 60, 60],
    water: [26, 7, 8, 25, 28],
    animals: { "astronotus-ocellatus": 1 },
    tank: { ...bare, cover: 0.2, openWater: 0.75, ...filter(14) },
  },
  "pea puffers by themselves in 54 l, fed live food": {
    size: [60, 30, 30],
    water: [26, 7.3, 9, 24, 28],
    animals: { "carinotetraodon-travancoricus": { males: 2, females: 4 } },
    tank: { ...nano, cover: 0.6, openWater: 0.35, sightBreaks: 6, ...filter(1.5) },
    food: [...usual, ...live],
  },
  "bumblebee gobies in 54 l of brackish water, fed flakes alone": {
    size: [60, 30, 30],
    water: [26, 8, 15, 25, 28],
    salinity: 4,
    animals: { "brachygobius-doriae": 8 },
    tank: { ...bare, hides: { caves: 10, rocks: 4 }, sightBreaks: 10, ...filter(1.2) },
    food: [{ food: "dry", place: "surface" }],
    lacks: "group.offerings",
  },
  "clown killifish in 54 l without a lid": {
    size: [60, 30, 30],
    water: [24.5, 6.5, 5, 23, 26],
    animals: { "epiplatys-annulatus": { males: 3, females: 5 } },
    tank: { ...nano, lid: false },
    food: [...usual, ...live],
    lacks: "tank.lid",
  },
  "celestial pearl danios and cherry shrimps in 54 l": {
    size: [60, 30, 30],
    water: [23, 7.2, 9, 21, 25],
    animals: { "danio-margaritatus": 12, "neocaridina-davidi": 15 },
    tank: nano,
  },
  "a pair of dwarf gouramis, cherry barbs and corydoras in 112 l": {
    size: [80, 35, 40],
    water: [25.5, 6.9, 7, 24, 27],
    animals: { "trichogaster-lalius": pair, "puntius-titteya": 8, "osteogaster-aenea": 6 },
    tank: { cover: 0.45, openWater: 0.45 },
  },
  "silver dollars and a pair of severums in 700 l": {
    size: [200, 60, 60],
    water: [26, 6.8, 6, 25, 28],
    animals: { "metynnis-argenteus": 6, "heros-severus": pair },
    tank: { ...bare, hides: { wood: 6, caves: 3 }, sightBreaks: 5, openWater: 0.6, ...filter(15) },
  },
  "Denison barbs and zebra loaches in 450 l": {
    size: [150, 60, 50],
    water: [24, 7, 8, 23, 26],
    animals: { "sahyadria-denisonii": 8, "botia-striata": 6 },
    tank: { cover: 0.35, openWater: 0.6, hides: { caves: 7, wood: 4, rocks: 3 }, ...filter(9) },
  },
  "harlequins, sparkling gouramis and kuhlis in 112 l": {
    size: [80, 35, 40],
    water: [25.5, 6.6, 5, 24, 27],
    animals: { "trigonostigma-heteromorpha": 10, "trichopsis-pumila": 4, "pangio-kuhlii": 8 },
    tank: { cover: 0.5, openWater: 0.4, hides: { wood: 4, leaves: 8, caves: 2 } },
  },
  "glass catfish and lambchop rasboras in 200 l": {
    size: [100, 40, 50],
    water: [25, 6.6, 6, 24, 27],
    animals: { "kryptopterus-vitreolus": 8, "trigonostigma-espei": 12 },
    tank: { cover: 0.45, openWater: 0.45, ...filter(4) },
  },
  "cardinals and panda corydoras in 84 l": {
    size: [80, 35, 30],
    water: [24, 6.8, 6, 23, 27],
    animals: { "paracheirodon-axelrodi": 10, "hoplisoma-panda": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 2, age: 200 } },
  },
  "neons, bronze corydoras and a honey gourami pair in 112 l": {
    size: [80, 35, 40],
    water: [24, 6.9, 7, 23, 27],
    animals: {
      "paracheirodon-innesi": 12,
      "osteogaster-aenea": 6,
      "trichogaster-chuna": { males: 1, females: 1 },
    },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "a male betta, six pygmy corydoras and two nerites in 54 l": {
    size: [60, 30, 30],
    water: [25, 7, 8, 24, 28],
    animals: { "betta-splendens": { males: 1 }, "gastrodermus-pygmaeus": 6, "vittina-natalensis": 2 },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 1.2, age: 200 },
      flow: { calmest: "still", strongest: "gentle" },
    },
  },
  "harlequins and kuhli loaches in 112 l": {
    size: [80, 35, 40],
    water: [25, 6.6, 5, 24, 28],
    animals: { "trigonostigma-heteromorpha": 10, "pangio-kuhlii": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "cherry barbs, bronze corydoras and a bristlenose pair in 160 l": {
    size: [100, 40, 40],
    water: [24, 7.2, 10, 23, 27],
    animals: {
      "puntius-titteya": { males: 4, females: 8 },
      "osteogaster-aenea": 6,
      "ancistrus-cirrhosus": { males: 1, females: 1 },
    },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 4, age: 200 } },
  },
  "platies and peppered corydoras in 112 l": {
    size: [80, 35, 40],
    water: [23, 7.5, 14, 21, 26],
    animals: { "xiphophorus-maculatus": { males: 2, females: 4 }, "hoplisoma-paleatum": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "guppy trio and cherry shrimps in 54 l": {
    size: [60, 30, 30],
    water: [24, 7.5, 14, 22, 27],
    animals: { "poecilia-reticulata": { males: 2, females: 4 }, "neocaridina-davidi": 15 },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 1.2, age: 200 },
      flow: { calmest: "still", strongest: "gentle" },
    },
  },
  "eight male guppies in 63 l": {
    size: [60, 30, 35],
    water: [24, 7.5, 14, 22, 27],
    animals: { "poecilia-reticulata": { males: 8 } },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 1.5, age: 200 },
      flow: { calmest: "still", strongest: "gentle" },
    },
  },
  "white clouds in an unheated 54 l": {
    size: [60, 30, 30],
    water: [20, 7.2, 10, 17, 25],
    animals: { "tanichthys-albonubes": 10 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 1.2, age: 200 } },
  },
  "zebra danios, bronze corydoras in 112 l": {
    size: [80, 35, 40],
    water: [23, 7.3, 11, 21, 26],
    animals: { "danio-rerio": 8, "osteogaster-aenea": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "two angelfish, Sterba's corydoras and a bristlenose in 200 l": {
    size: [100, 40, 50],
    water: [26, 6.8, 7, 25, 29],
    animals: {
      "pterophyllum-scalare": { males: 1, females: 1 },
      "hoplisoma-sterbai": 6,
      "ancistrus-cirrhosus": 1,
    },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 5, age: 200 } },
  },
  "six discus, cardinals and Sterba's in 450 l": {
    size: [150, 60, 50],
    water: [28.5, 6.5, 5, 28, 30],
    animals: { "symphysodon-aequifasciatus": 6, "paracheirodon-axelrodi": 25, "hoplisoma-sterbai": 8 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 12, age: 200 } },
  },
  "ram pair and rummy-noses in 112 l": {
    size: [80, 35, 40],
    water: [27, 6.3, 4, 26, 29],
    animals: { "mikrogeophagus-ramirezi": { males: 1, females: 1 }, "petitella-bleheri": 12 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "tiger barbs with a red-tailed shark in 240 l": {
    size: [120, 40, 50],
    water: [25, 7, 8, 23, 27],
    animals: { "puntigrus-tetrazona": 10, "epalzeorhynchos-bicolor": 1 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 6, age: 200 } },
  },
  "praecox rainbows and corydoras in 180 l": {
    size: [100, 40, 45],
    water: [25, 7.2, 10, 24, 28],
    animals: { "melanotaenia-praecox": { males: 4, females: 5 }, "osteogaster-aenea": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 4, age: 200 } },
  },
  "dwarf gourami pair, glowlights and kuhlis in 112 l": {
    size: [80, 35, 40],
    water: [25, 6.8, 6, 24, 28],
    animals: {
      "trichogaster-lalius": { males: 1, females: 1 },
      "hemigrammus-erythrozonus": 10,
      "pangio-kuhlii": 6,
    },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "eight yellow labs in 240 l on rocks": {
    size: [120, 40, 50],
    water: [25, 8, 14, 24, 27],
    animals: { "labidochromis-caeruleus": { males: 2, females: 6 } },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 6, age: 200 },
      plants: "none",
      sightBreaks: 8,
      hides: { caves: 8, rocks: 20 },
    },
  },
  "shell-dwellers alone in 84 l": {
    size: [80, 35, 30],
    water: [25, 8.2, 14, 24, 27],
    animals: { "neolamprologus-multifasciatus": 8 },
    tank: {
      cover: 0.4,
      openWater: 0.5,
      filter: { mediaArea: 2, age: 200 },
      plants: "none",
      hides: { shells: 20, rocks: 3 },
    },
  },
  "ember tetras and cherry shrimps in 54 l": {
    size: [60, 30, 30],
    water: [24, 6.8, 6, 23, 27],
    animals: { "hyphessobrycon-amandae": 10, "neocaridina-davidi": 15 },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 1.2, age: 200 },
      flow: { calmest: "still", strongest: "gentle" },
    },
  },
  "male Endlers and otos in 84 l": {
    size: [80, 35, 30],
    water: [24, 7.2, 10, 23, 27],
    animals: { "poecilia-wingei": { males: 8 }, "otocinclus-vittatus": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 2, age: 200 } },
  },
  "black neons, otos, Amano shrimps in a planted 160 l": {
    size: [100, 40, 40],
    water: [24, 6.8, 6, 23, 27],
    animals: { "hyphessobrycon-herbertaxelrodi": 12, "otocinclus-vittatus": 6, "caridina-multidentata": 8 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 4, age: 200 } },
  },
  "apistogramma agassizii pair and pencilfish in 112 l": {
    size: [80, 35, 40],
    water: [26, 6.2, 3, 25, 28],
    animals: { "apistogramma-agassizii": { males: 1, females: 1 }, "nannostomus-beckfordi": 10 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "platies and only three corydoras in 84 l": {
    size: [80, 35, 30],
    water: [23, 7.4, 12, 22, 26],
    animals: { "osteogaster-aenea": 3, "xiphophorus-maculatus": { males: 2, females: 4 } },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 2.5, age: 200 } },
    lacks: "group.count",
  },
  "six hatchetfish and cardinals without a lid": {
    size: [100, 40, 40],
    water: [25, 6.5, 5, 24, 28],
    animals: { "carnegiella-strigata": 8, "paracheirodon-axelrodi": 12 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 4, age: 200 }, lid: false },
    lacks: "tank.lid",
  },
  "glowlights, bronze corydoras and a bristlenose in 112 l": {
    size: [80, 35, 40],
    water: [24, 6.9, 8, 23, 27],
    animals: { "hemigrammus-erythrozonus": 12, "osteogaster-aenea": 6, "ancistrus-cirrhosus": 1 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "lemon tetras and a borelli pair in 112 l": {
    size: [80, 35, 40],
    water: [24.5, 6.8, 6, 23, 27],
    animals: { "hyphessobrycon-pulchripinnis": 10, "apistogramma-borellii": { males: 1, females: 1 } },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "a honey gourami pair and ember tetras in 63 l": {
    size: [60, 30, 35],
    water: [25, 6.9, 7, 24, 28],
    animals: { "trichogaster-chuna": { males: 1, females: 1 }, "hyphessobrycon-amandae": 10 },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 1.6, age: 200 },
      flow: { calmest: "still", strongest: "gentle" },
    },
  },
  "threadfin rainbows and otos in 84 l": {
    size: [80, 35, 30],
    water: [25, 6.9, 8, 24, 27],
    animals: { "iriatherina-werneri": { males: 4, females: 6 }, "otocinclus-vittatus": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 2, age: 200 } },
  },
  "forktail blue-eyes and cherry shrimps in 54 l": {
    size: [60, 30, 30],
    water: [25, 7.3, 10, 24, 27],
    animals: { "pseudomugil-furcatus": { males: 4, females: 6 }, "neocaridina-davidi": 15 },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 1.2, age: 200 },
      flow: { calmest: "still", strongest: "gentle" },
    },
  },
  "rummy-noses, Sterba's corydoras and rams in 200 l": {
    size: [100, 40, 50],
    water: [27, 6.3, 4, 26, 28],
    animals: {
      "petitella-bleheri": 15,
      "hoplisoma-sterbai": 8,
      "mikrogeophagus-ramirezi": { males: 1, females: 1 },
    },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 5, age: 200 } },
  },
  "Endlers alone, males and females, in 54 l": {
    size: [60, 30, 30],
    water: [25, 7.5, 14, 23, 28],
    animals: { "poecilia-wingei": { males: 3, females: 6 } },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 1.4, age: 200 },
      flow: { calmest: "still", strongest: "gentle" },
    },
  },
  "swordtail group and corydoras in 160 l": {
    size: [100, 40, 40],
    water: [24, 7.5, 14, 22, 27],
    animals: { "xiphophorus-hellerii": { males: 1, females: 4 }, "osteogaster-aenea": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 4, age: 200 } },
  },
  "an angelfish pair alone in 160 l": {
    size: [80, 40, 50],
    water: [26, 6.9, 7, 25, 29],
    animals: { "pterophyllum-scalare": { males: 1, females: 1 } },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 4, age: 200 } },
  },
  "assassin snails and neons in 84 l": {
    size: [80, 35, 30],
    water: [24, 7, 8, 23, 27],
    animals: { "anentome-helena": 4, "paracheirodon-innesi": 12 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 2, age: 200 } },
  },
  "firemouth pair in 200 l": {
    size: [100, 50, 45],
    water: [25, 7.4, 11, 24, 28],
    animals: { "thorichthys-meeki": { males: 1, females: 1 } },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 6, age: 200 } },
  },
  "bloodfins and peppered corydoras in 112 l": {
    size: [80, 35, 40],
    water: [23, 7, 9, 20, 26],
    animals: { "aphyocharax-anisitsi": 10, "hoplisoma-paleatum": 6 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 3, age: 200 } },
  },
  "black neons with pygmy corydoras in 84 l": {
    size: [80, 35, 30],
    water: [24, 6.8, 6, 23, 27],
    animals: { "hyphessobrycon-herbertaxelrodi": 10, "gastrodermus-pygmaeus": 10 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 2, age: 200 } },
  },
  "sparkling gouramis six in 54 l": {
    size: [60, 30, 30],
    water: [26, 6.6, 5, 25, 28],
    animals: { "trichopsis-pumila": 6 },
    tank: {
      cover: 0.45,
      openWater: 0.5,
      filter: { mediaArea: 1.2, age: 200 },
      flow: { calmest: "still", strongest: "gentle" },
    },
  },
  "upside-down catfish and Congo tetras in 375 l": {
    size: [150, 50, 50],
    water: [25, 6.9, 8, 24, 28],
    animals: { "synodontis-nigriventris": 6, "phenacogrammus-interruptus": 10 },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 8, age: 200 } },
  },
  "mystery snails and platies in 84 l": {
    size: [80, 35, 30],
    water: [24, 7.6, 15, 22, 27],
    animals: { "pomacea-diffusa": 2, "xiphophorus-maculatus": { males: 2, females: 4 } },
    tank: { cover: 0.4, openWater: 0.5, filter: { mediaArea: 2.5, age: 200 } },
  },
  "six discus in 420 l without plants": {
    size: [140, 60, 50],
    water: [29, 6.5, 5, 28, 31],
    animals: { "symphysodon-aequifasciatus": 6 },
    tank: {
      cover: 0.35,
      openWater: 0.6,
      filter: { mediaArea: 12, age: 200 },
      plants: "none",
      substrate: "sand",
    },
  },
};

function planOf({ size, water, animals, tank, salinity = 0, food = usual }: Kept): Plan {
  const [length, width, height] = size;
  const [temperature, pH, generalHardness, coolest, hottest] = water;
  return {
    tank: {
      base: { shape: "rectangle", length, width },
      height,
      lid: true,
      cover: 0.4,
      openWater: 0.5,
      openSurface: 0.6,
      sightBreaks: 4,
      plants: "grown-in",
      substrate: "sand",
      hides: { caves: 3, wood: 3, leaves: 8 },
      flow: { calmest: "still", strongest: "moderate" },
      filter: { mediaArea: 3, age: 200 },
      ...tank,
    },
    water: { temperature, pH, generalHardness, salinity, coolest, hottest },
    groups: Object.entries(animals).map(([id, group]) => {
      const species = speciesById(id);
      if (!species) throw new Error(`The catalog has no ${id}.`);
      return { species, ...(typeof group === "number" ? { unsexed: group } : group) };
    }),
    offerings: food,
  };
}

test.each(Object.entries(kept))("%s", (_, tank) => {
  const { outcome, conditions } = assessPlan(planOf(tank));
  expect(conditions.map(({ on }) => on)).toEqual(tank.lacks ? [tank.lacks] : []);
  expect(outcome).toBe(tank.lacks ? "conditional" : "suitable");
});
