// The words a trait may be answered with, each with one sentence that an observer can check. Ordinals ascend.
import { frozen } from "../../frozen";
import type * as lists from "./class-lists";

/** A sentence for each word of a list, and for no other. */
type Explained<List extends readonly string[]> = Readonly<Record<List[number], string>>;

/** What sort of animal a species is. */
export const kind = /* @__PURE__ */ frozen({
  fish: "A bony or cartilaginous fish.",
  shrimp: "A shrimp or prawn: a long abdomen with swimming legs.",
  crayfish: "A crayfish: a pair of large claws.",
  crab: "A crab: the abdomen folded under the body.",
  snail: "A snail with one coiled shell.",
  mussel: "A mussel or clam with two shells.",
  frog: "A frog that stays in the water.",
} as const satisfies Explained<typeof lists.kind>);

/** The sexes. */
export const sex = /* @__PURE__ */ frozen({ male: "Male.", female: "Female." } as const satisfies Explained<
  typeof lists.sex
>);

/** Stages of life, the youngest first. */
export const stage = /* @__PURE__ */ frozen({
  egg: "Not yet hatched.",
  fry: "Hatched, feeding on the finest food.",
  juvenile: "Looks like a small adult, not yet able to breed.",
  adult: "Able to breed.",
} as const satisfies Explained<typeof lists.stage>);

/** What a figure of water means. */
export const waterMeaning = /* @__PURE__ */ frozen({
  kept: "The span a handbook or database gives for keeping it over years.",
  optimum: "The span a source on keeping calls best.",
  tolerated: "The span it stands for a while without visible harm.",
  limit: "Past this it dies or loses balance in a test.",
  wild: "Measured where the animal was found; informs only.",
  tested: "A laboratory or farm value with another purpose, such as fastest growth; informs only.",
} as const satisfies Explained<typeof lists.waterMeaning>);

/** What ended a test, or what a tested figure was best for. */
export const endpoint = /* @__PURE__ */ frozen({
  balance: "Lost its balance while the water was warmed or cooled: the critical maximum or minimum.",
  "half-dead": "Half of the animals died.",
  death: "The animals died, on average or at all.",
  survival: "All or nearly all lived on.",
  growth: "They grew or ate best.",
  breeding: "They bred or hatched.",
  choice: "They chose it where they could choose.",
  performance: "They swam best, or had most breath to spare.",
  housing: "A laboratory or a farm keeps them so.",
  mixed: "The source pools tests of several kinds.",
  unstated: "The source does not say.",
} as const satisfies Explained<typeof lists.endpoint>);

/** What a length or an age means. */
export const lengthMeaning = /* @__PURE__ */ frozen({
  usual: "What most adults reach in aquaria.",
  greatest: "The greatest on record.",
} as const satisfies Explained<typeof lists.lengthMeaning>);

/** What was measured. */
export const lengthMeasure = /* @__PURE__ */ frozen({
  TL: "Total length: tip of the snout to the end of the tail fin.",
  SL: "Standard length: tip of the snout to the base of the tail fin.",
  FL: "Fork length: tip of the snout to the middle of a forked tail fin.",
  body: "Body length of shrimps and crayfish: tip of the rostrum or head to the end of the tail fan.",
  shell: "Greatest dimension of the shell.",
  disc: "Width of a ray's disc.",
  unstated: "The source does not say what was measured.",
} as const satisfies Explained<typeof lists.lengthMeasure>);

/** Kinds of water. */
export const waters = /* @__PURE__ */ frozen({
  fresh: "Grown animals live in fresh water.",
  brackish: "Grown animals live where fresh water and sea water mix.",
  marine: "Grown animals live in sea water.",
} as const satisfies Explained<typeof lists.waters>);

/** How those that are sold came to be. */
export const supply = /* @__PURE__ */ frozen({
  farmed: "Nearly all that are sold were bred on farms or by keepers.",
  mixed: "Both bred and caught animals are sold.",
  wild: "Nearly all that are sold were caught.",
} as const satisfies Explained<typeof lists.supply>);

/** Red List categories of the IUCN, version 3.1. */
export const conservation = /* @__PURE__ */ frozen({
  EX: "Extinct.",
  EW: "Extinct in the wild.",
  CR: "Critically endangered.",
  EN: "Endangered.",
  VU: "Vulnerable.",
  NT: "Near threatened.",
  LC: "Least concern.",
  DD: "Data deficient.",
  NE: "Not evaluated.",
} as const satisfies Explained<typeof lists.conservation>);

/** Body shapes of Froese, Thorson & Reyes 2014, J. Appl. Ichthyol. 30:78-85. */
export const bodyShape = /* @__PURE__ */ frozen({
  "eel-like": "Snake-like: many times longer than deep.",
  elongated: "Slender: clearly longer than the usual fish.",
  fusiform: "The usual fish: a spindle.",
  "short-deep": "Clearly deeper than a spindle, up to a disc seen from the side.",
} as const satisfies Explained<typeof lists.bodyShape>);

/** Currents. */
export const flow = /* @__PURE__ */ frozen({
  still: "A floating leaf stays where it is.",
  gentle: "A floating leaf drifts; fine leaves of plants just move.",
  moderate: "Leaves of plants sway all the time; food is carried along.",
  strong: "Leaves lie flat in the stream; a fish must swim to stay in place.",
} as const satisfies Explained<typeof lists.flow>);

/** How much oxygen it needs. */
export const oxygenNeed = /* @__PURE__ */ frozen({
  low: "Comes through a warm night without a pump.",
  ordinary: "Breathes calmly wherever the surface moves a little.",
  high: "Breathes fast or leaves its place as soon as the current or the aeration stops.",
} as const satisfies Explained<typeof lists.oxygenNeed>);

/** Whether it breathes air. */
export const airBreathing = /* @__PURE__ */ frozen({
  none: "Never takes air.",
  facultative: "Takes air when the water holds little oxygen.",
  obligate: "Drowns if it cannot reach the surface.",
} as const satisfies Explained<typeof lists.airBreathing>);

/** Parts of the water. */
export const zone = /* @__PURE__ */ frozen({
  surface: "The upper third of the water.",
  midwater: "The middle third of the water.",
  bottom: "On the ground or holding on to wood, leaves, stones or panes at any height.",
} as const satisfies Explained<typeof lists.zone>);

/** How readily it leaves the water. */
export const jumps = /* @__PURE__ */ frozen({
  seldom: "Is hardly ever found outside the water.",
  startled: "Leaves the water when frightened or chased.",
  readily: "Jumps or climbs out without any visible cause.",
} as const satisfies Explained<typeof lists.jumps>);

/** What covers the ground. Grain sizes follow ISO 14688-1 (from memory). */
export const ground = /* @__PURE__ */ frozen({
  bare: "The bare pane.",
  sand: "Grains up to 2 mm, rounded.",
  "fine-gravel": "Grains of 2 to 6 mm.",
  "coarse-gravel": "Grains of 6 to 20 mm.",
  pebbles: "Rounded stones of more than 20 mm.",
} as const satisfies Explained<typeof lists.ground>);

/** What an animal hides, sleeps or spawns in. */
export const hide = /* @__PURE__ */ frozen({
  caves: "A hollow with a narrow entrance, of stone, clay or wood.",
  shells: "An empty snail shell it fits into.",
  wood: "A root or a branch to hang on, under or behind.",
  leaves: "Fallen leaves on the ground, or broad leaves near it.",
  rocks: "A pile of stones with gaps.",
} as const satisfies Explained<typeof lists.hide>);

/** Who holds a territory. */
export const territoryHolder = /* @__PURE__ */ frozen({
  male: "Each male holds one.",
  female: "Each female holds one.",
  pair: "A breeding pair holds one together.",
  each: "Each animal holds one.",
} as const satisfies Explained<typeof lists.territoryHolder>);

/** What an act does. */
export const does = /* @__PURE__ */ frozen({
  chases: "Drives another away without wounding it.",
  bites: "Wounds skin or fins.",
  kills: "Goes on until the other is dead.",
  "nips-fins": "Bites pieces out of fins.",
  "rasps-mucus": "Rasps the slime coat off another's flank.",
  "robs-food": "Takes food from another's mouth or place.",
} as const satisfies Explained<typeof lists.does>);

/** Whom an act falls on. */
export const target = /* @__PURE__ */ frozen({
  "own-sex": "Animals of its species and its sex.",
  "other-sex": "Animals of its species and of the other sex.",
  "own-kind": "Any animal of its species.",
  "look-alike": "Animals of another species that share its markings or outline.",
  "long-finned": "Animals with long, trailing fins.",
  smaller: "Animals clearly smaller than itself.",
  any: "Whoever is near.",
} as const satisfies Explained<typeof lists.target>);

/** When an act happens; at any time where it is not said. */
export const when = /* @__PURE__ */ frozen({
  always: "At any time.",
  breeding: "While it courts or spawns.",
  "guarding-brood": "While it has eggs or young.",
  feeding: "At food.",
  crowded: "When the other cannot get out of its sight or reach.",
} as const satisfies Explained<typeof lists.when>);

/** How many of a kind belong together. */
export const living = /* @__PURE__ */ frozen({
  alone: "One animal to a tank.",
  pair: "A male and a female.",
  harem: "One male with several females.",
  group: "Several animals that seek each other but do not swim as one.",
  shoal: "Many animals that swim together.",
  either: "Alone or with its kind: it is at ease both ways.",
} as const satisfies Explained<typeof lists.living>);

/** Features by which one species may take another for its own. */
export const look = /* @__PURE__ */ frozen({
  "oval-thread-fins": "Oval, flat body with the pelvic fins drawn out to threads.",
  "trailing-fins": "Tail and other unpaired fins hang or spread like a veil.",
  "upright-bars": "Dark bars from back to belly.",
  "long-stripe": "One dark or shining stripe from head to tail.",
  "neon-stripe": "A stripe of shining blue or green on the flank.",
  "red-body": "Body mostly red or orange.",
  "blue-body": "Body mostly blue.",
  "yellow-body": "Body mostly yellow.",
  "red-and-blue-bars": "Slanting bars of red and blue.",
  "sword-tail": "Lower rays of the tail fin drawn out to a sword.",
} as const satisfies Explained<typeof lists.look>);

/** What it lives on. */
export const dietType = /* @__PURE__ */ frozen({
  herbivore: "Lives on plants and algae.",
  omnivore: "Lives on animals and plants.",
  carnivore: "Lives on animals.",
  detritivore: "Lives on fine dead matter and what grows on it.",
} as const satisfies Explained<typeof lists.dietType>);

/** Foods. */
export const food = /* @__PURE__ */ frozen({
  dry: "Flakes, granules or tablets.",
  frozen: "Frozen small animals.",
  live: "Living small animals.",
  plankton: "Animals and algae adrift in the water.",
  "fallen-insects": "Insects from the water's surface.",
  insects: "Insects and their larvae.",
  crustaceans: "Shrimps, water fleas and the like.",
  worms: "Worms.",
  molluscs: "Snails and mussels.",
  fish: "Fish.",
  algae: "Algae and the film that grows on surfaces.",
  plants: "Leaves, vegetables and fruit.",
  wood: "Wood, rasped.",
  detritus: "Fine dead matter.",
} as const satisfies Explained<typeof lists.food>);

/** How fast it comes to food. */
export const pace = /* @__PURE__ */ frozen({
  slow: "Looks at food before it takes it; others are there first.",
  ordinary: "Comes to food with the others.",
  fast: "Is at the food first and takes most of it.",
} as const satisfies Explained<typeof lists.pace>);

/** When it feeds. */
export const light = /* @__PURE__ */ frozen({
  day: "Feeds by daylight.",
  dusk: "Feeds at dusk and dawn.",
  night: "Feeds in the dark.",
} as const satisfies Explained<typeof lists.light>);

/** Prey among tank mates. */
export const prey = /* @__PURE__ */ frozen({
  egg: "Eggs of fish.",
  fry: "Newly hatched fish.",
  fish: "Fish past the fry stage.",
  shrimplet: "Newly hatched shrimps.",
  shrimp: "Grown shrimps.",
  snail: "Grown snails.",
  "young-snail": "Newly hatched snails.",
  crayfish: "Grown crayfish.",
  "young-crayfish": "Crayfish just off their mother.",
  crab: "Grown crabs.",
  "young-crab": "Crabs just off their mother, and crab larvae.",
  mussel: "Mussels and clams.",
  frog: "Frogs.",
  tadpole: "Tadpoles.",
} as const satisfies Explained<typeof lists.prey>);

/** How it breeds. */
export const reproduction = /* @__PURE__ */ frozen({
  "scatters-eggs": "Lets eggs or clutches fall or stick and leaves them.",
  "guards-eggs": "Lays eggs on a surface or in a hollow and guards them or the young.",
  "bubble-nest": "Builds a nest of bubbles and guards it.",
  mouthbrooder: "Carries eggs or young in the mouth.",
  livebearer: "Bears swimming young that small fish can swallow.",
  "large-young": "Bears few young, too large for small fish to swallow.",
  "broods-young": "Carries eggs on the body; the young hatch complete and live in the same water.",
  "sea-larvae": "Larvae grow up only in brackish or sea water.",
} as const satisfies Explained<typeof lists.reproduction>);

/** What harms it. */
export const sensitivity = /* @__PURE__ */ frozen({
  copper: "Harmed by copper at doses used against parasites or algae.",
  salt: "Harmed by salt at doses used as a treatment.",
  "ammonia-nitrite": "Among the first to die in an unripe filter.",
  handling: "Harmed by nets or by being lifted into air.",
  "soft-water": "Shell or moult fails in soft, acid water.",
} as const satisfies Explained<typeof lists.sensitivity>);

/** How it can hurt a person. */
export const hazard = /* @__PURE__ */ frozen({
  venom: "Venom that can harm a person.",
  spines: "Spines or fin rays that wound a hand or catch in a net.",
  bite: "A bite that can wound a person.",
  shock: "Electric shocks that a person feels.",
} as const satisfies Explained<typeof lists.hazard>);
