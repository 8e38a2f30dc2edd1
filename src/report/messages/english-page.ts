import type { Words } from "../../compatibility";
import { frozen } from "../../frozen";
import type { Kind } from "../../species";
import { english as reports } from "./english";
import type { PageMessages, PageWords, ToldAct } from "./page-messages";
import { sentenceCase as capital, scientificOf, spaced } from "./sentences";

const listed = (type: "conjunction" | "disjunction") => (items: readonly string[]) =>
  new Intl.ListFormat("en-GB", { type }).format(items);

const allOf = /* @__PURE__ */ listed("conjunction");
const anyOf = /* @__PURE__ */ listed("disjunction");

const numbers = [
  "none",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];

/** A small number as a word. */
const count = (many: number) => numbers[many] ?? String(many);

const living: Readonly<Record<Words["living"], (animal: string) => string>> = {
  alone: (animal) => `${animal} that lives by itself`,
  pair: (animal) => `${animal} that lives in pairs`,
  harem: (animal) => `${animal} of which one male lives with several females`,
  group: (animal) => `${animal} that lives in company`,
  shoal: (animal) => `${animal.replace(/^(an?) /, "$1 shoaling ").replace(/^an /, "a ")}`,
  either: (animal) => `${animal} at ease alone or with its kind`,
};

const animals: Readonly<Record<Kind, string>> = {
  fish: "a fish",
  shrimp: "a shrimp",
  crayfish: "a crayfish",
  crab: "a crab",
  snail: "a snail",
  mussel: "a mussel",
  frog: "a frog",
};

const several: Readonly<Record<Kind, string>> = {
  fish: "fish",
  shrimp: "shrimps",
  crayfish: "crayfish",
  crab: "crabs",
  snail: "snails",
  mussel: "mussels",
  frog: "frogs",
};

const places: Readonly<Record<Words["zone"], string>> = {
  surface: "the surface",
  midwater: "the open water",
  bottom: "the ground",
};

/** `the ground`, `the surface and the open water`, `every level`. */
const placesOf = (zones: readonly Words["zone"][]) =>
  zones.length >= 3 ? "every level" : allOf(zones.map((zone) => places[zone]));

const where: Readonly<Record<Words["zone"], string>> = {
  surface: "at the surface",
  midwater: "in the open water",
  bottom: "on the ground",
};

const hours: Readonly<Record<Words["light"], string>> = { day: "by day", dusk: "at dusk", night: "at night" };

const flows: Readonly<Record<Words["flow"], string>> = {
  still: "still water",
  gentle: "a gentle current",
  moderate: "a lively current",
  strong: "a strong current",
};

const given: Readonly<Partial<Record<Words["food"], string>>> = {
  dry: "dry food",
  frozen: "frozen food",
  live: "live food",
  algae: "algae and what grows on leaves and stones",
  plants: "vegetables and leaves",
  wood: "wood to rasp",
};

const eaten: Readonly<Record<Words["food"], string>> = {
  dry: "dry food",
  frozen: "frozen food",
  live: "live food",
  plankton: "plankton",
  "fallen-insects": "insects that fall on the water",
  insects: "insects and their larvae",
  crustaceans: "small crustaceans",
  worms: "worms",
  molluscs: "snails and mussels",
  fish: "fish",
  algae: "algae",
  plants: "plants and fruit",
  wood: "wood",
  detritus: "fine dead matter",
};

const young: Readonly<Record<Words["prey"], string>> = {
  egg: "eggs",
  fry: "fry",
  fish: "fish",
  shrimplet: "young shrimps",
  shrimp: "shrimps",
  snail: "snails",
  "young-snail": "young snails",
  crayfish: "crayfish",
  "young-crayfish": "young crayfish",
  crab: "crabs",
  "young-crab": "young crabs",
  mussel: "mussels",
  frog: "frogs",
  tadpole: "tadpoles",
};

const deeds: Readonly<Record<Words["does"], string>> = {
  chases: "chase",
  bites: "bite",
  kills: "kill",
  "nips-fins": "bite pieces out of the fins of",
  "rasps-mucus": "rasp the slime coat of",
  "robs-food": "take food away from",
};

const whom: Readonly<Record<Words["target"], string>> = {
  "own-sex": "their own sex",
  "other-sex": "the other sex",
  "own-kind": "their own kind",
  "look-alike": "others that look like them",
  "long-finned": "fish with long fins",
  smaller: "smaller animals",
  any: "whoever is near",
};

const occasions: Readonly<Record<Words["when"], string>> = {
  always: "",
  breeding: " when they breed",
  "guarding-brood": " when they guard eggs or young",
  feeding: " at food",
  crowded: " where there is no room to get out of the way",
};

function act({ does, doer, targets, when, from }: ToldAct): string {
  const who = doer === undefined ? "They" : doer === "male" ? "Males" : "Females";
  const grown = from === "adult" ? ", once grown," : "";
  const named = doer === undefined ? "" : doer;
  const at = targets.map((target) =>
    target === "own-sex" && named
      ? `other ${named}s`
      : target === "other-sex" && named
        ? named === "male"
          ? "females"
          : "males"
        : whom[target],
  );
  return `${who}${grown} ${deeds[does]} ${allOf(at)}${when ? occasions[when] : ""}.`;
}

const holders: Readonly<Record<Words["territoryHolder"], string>> = {
  male: "each male",
  female: "each female",
  pair: "each pair",
  each: "each of them",
};

const hideWords: Readonly<Record<Words["hide"], readonly [one: string, many: string]>> = {
  caves: ["a cave", "caves"],
  shells: ["an empty snail shell", "empty snail shells"],
  wood: ["a root or branch", "roots or branches"],
  leaves: ["broad or fallen leaves", "broad or fallen leaves"],
  rocks: ["a pile of stones", "piles of stones"],
};

const page: PageWords = {
  headings: {
    glance: "At a glance",
    origin: "Where they come from",
    size: "How large they grow",
    water: "Water",
    tank: "The tank",
    behaviour: "How they behave",
    company: "Company",
    feeding: "Feeding",
    breeding: "Breeding and young",
    forms: "Forms that were bred",
    watch: "What to watch for",
    certainty: "How sure this is",
    cautions: "Take care",
    sources: "Sources",
  },
  alsoCalled: (names) => `Also called ${allOf(names)}.`,
  formerly: (synonyms) => `In older books and in shops: ${allOf(synonyms)}.`,
  formOf: (scientific) => `A form bred of ${scientific}.`,
  one: (name) => `one ${name}`,
  count,
  region: (region) => region,
  jurisdiction: (jurisdiction) => jurisdiction,
  effect: (effect) => effect,
  scientific: scientificOf,
  glance: {
    summary: ({ kind, living: how, zones, length, temperature }) => {
      const animal = how ? living[how](animals[kind]) : animals[kind];
      const parts = [
        `${capital(animal)}${zones.length > 0 ? ` ${how && how !== "shoal" ? "on" : "of"} ${placesOf(zones)}` : ""}`,
        length && `${length} long when grown`,
        temperature && `for water of ${temperature}`,
      ];
      return `${parts.filter(Boolean).join(", ")}.`;
    },
    terms: {
      length: "Grown length",
      temperature: "Temperature",
      pH: "pH",
      hardness: "Hardness",
      salinity: "Salt",
      tank: "Tank",
      number: "Number",
      food: "Food",
      life: "Age",
    },
    tank: (size, many) => `at least ${size} for ${count(many)}`,
    number: (least, how) => {
      if (how === "pair") return "a pair";
      if (how === "alone") return "one";
      if (how === "harem") return "one male and several females";
      return least > 1 ? `${count(least)} or more` : "one or more";
    },
    know: "Know before you buy",
    incomplete: (traits) => `Not enough is known to judge all: ${allOf(traits)} is missing.`,
    grows: (length) => `They grow to ${length}.`,
    hunts: (length) => `They eat other fish, and may try those of up to ${length}.`,
    harms: "They wound or kill tank mates.",
    lives: (age) => `They live for ${age} or so.`,
    hazards: {
      venom: "They are venomous.",
      spines: "Their spines wound hands and catch in nets.",
      bite: "Their bite can wound a person.",
      shock: "They give electric shocks that a person feels.",
    },
    laws: (jurisdictions) => `The law restricts them in some places: ${allOf(jurisdictions)}.`,
    threatened: (status) => `In the wild they are ${status}: ask for bred ones.`,
  },
  origin: {
    from: (regions, who) => `${capital(who)} come from ${allOf(regions)}.`,
    waters: (waters) =>
      `They live in ${allOf(waters.map((water) => ({ fresh: "fresh", brackish: "brackish", marine: "sea" })[water]))} water.`,
    supply: {
      farmed: "Nearly all that are sold were bred, on farms or by keepers.",
      mixed: "Both bred and wild-caught ones are sold.",
      wild: "Nearly all that are sold were caught in the wild.",
    },
    conservation: (status, year) => {
      const told = {
        EX: "extinct",
        EW: "extinct in the wild",
        CR: "critically endangered",
        EN: "endangered",
        VU: "vulnerable",
        NT: "near threatened",
        LC: "of least concern",
        DD: "too little known to judge",
        NE: "not yet assessed",
      }[status];
      return `The Red List has them as ${told}${year ? ` (${year})` : ""}.`;
    },
  },
  size: {
    length: ({ sex, usual, greatest, of }) => {
      const who = sex === undefined ? "Grown, they" : sex === "male" ? "Males" : "Females";
      const what = { whole: "", shell: " across the shell", disc: " across the disc" }[of];
      if (!usual) return `${who} measure ${greatest} at most${what}.`;
      return `${who} usually measure ${usual}${what}${greatest ? `; the greatest on record is ${greatest}` : ""}.`;
    },
    grownAt: (age) => `They are grown at about ${age}.`,
    lifespan: (usual, greatest) => {
      if (!usual) return `The oldest known reached ${greatest}.`;
      return `Well kept they live about ${usual}${greatest ? `, at most ${greatest}` : ""}.`;
    },
  },
  water: {
    table: "The water to keep them in",
    columns: ["", "keep at", "best at", "never past", "others say"],
    flow: (calmest, strongest) =>
      calmest === strongest
        ? `They want ${flows[calmest]}.`
        : `They are at home in anything from ${flows[calmest]} to ${flows[strongest]}.`,
    oxygen: {
      low: "A warm night without a pump does not trouble them.",
      ordinary: "They breathe calmly wherever the surface moves a little.",
      high: "They need much oxygen and breathe hard as soon as the water stops moving.",
    },
    air: (kind, from) => {
      if (kind === "none") return "";
      const since = from && from !== "adult" && from !== "egg" ? ` from the ${spaced(from)} stage on` : "";
      return kind === "obligate"
        ? `They breathe air${since} and drown if they cannot reach the surface.`
        : `They take air at the surface${since} when the water holds little oxygen.`;
    },
    coolSeason: (temperature, months) =>
      `Each year they need a cool season at ${temperature}${months && ` for ${months}`}.`,
    saidTable: "What sources say",
    saidColumns: ["", "says", "meaning", "source", "remark"],
    setAside: (why) => `Set aside: ${why}`,
    ofClass: "a handbook's class",
  },
  tank: {
    least: (who, many, length, floor) =>
      `${capital(count(many))} ${who} need a tank ${length ? `at least ${length} long` : ""}${length && floor ? " " : ""}${floor ? `with a floor of ${floor}` : ""}.`,
    further: (floor) => `Each further one asks for ${floor} more.`,
    height: (height) => `The tank is at least ${height} high.`,
    zones: (zones) => `They use ${placesOf(zones)}.`,
    cover: (cover, openWater) => {
      if (cover && openWater)
        return `Seen from above, plant or furnish at least ${cover} of the tank as cover, and leave ${openWater} free to swim in.`;
      return cover
        ? `Seen from above, plant or furnish at least ${cover} of the tank as cover.`
        : `Leave at least ${openWater} of the tank free to swim in.`;
    },
    grownIn: "They do well only among plants that have grown in.",
    ground: (grounds) =>
      grounds.length > 0
        ? `They need ${anyOf(grounds.map((ground) => (ground === "bare" ? "bare glass" : spaced(ground))))} on the ground.`
        : "Any ground will do.",
    hides: ({ anyOf: kinds, each, holder, sharedBy }) => {
      const what =
        each > 1
          ? `${count(each)} ${anyOf(kinds.map((kind) => hideWords[kind][1]))}`
          : anyOf(kinds.map((kind) => hideWords[kind][0]));
      return sharedBy && sharedBy > 1
        ? `${capital(anyOf(kinds.map((kind) => hideWords[kind][1])))} serve them to hide, sleep or spawn in, one for every ${count(sharedBy)}.`
        : `${capital(holders[holder])} needs ${what} to hide, sleep or spawn in.`;
    },
    jumps: {
      seldom: "They hardly ever leave the water.",
      startled: "Frightened, they jump: cover the tank.",
      readily: "They leave the water without any cause: cover the tank without a gap.",
    },
    effects: ({ digs, uproots, eatsPlants }) => {
      const does = [digs && "dig", uproots && "pull plants out", eatsPlants && "eat plants"].filter(
        (deed) => deed !== false,
      );
      return does.length > 0 ? `They ${allOf(does)}.` : "Plants are safe with them.";
    },
    territory: (holder, sides, zone) =>
      `${capital(holders[holder])} defends a place of about ${sides} ${where[zone]}.`,
  },
  behaviour: {
    living: (who, how) =>
      ({
        alone: `${capital(who)} live alone: one to a tank.`,
        pair: `${capital(who)} live in pairs.`,
        harem: `${capital(who)} live as one male with several females.`,
        group: `${capital(who)} seek the company of their kind.`,
        shoal: `${capital(who)} swim in shoals.`,
        either: `${capital(who)} are at ease alone and with their kind.`,
      })[how],
    least: (least, avoid) => `Keep ${count(least)} or more${avoid ? `; with ${avoid} things go wrong` : ""}.`,
    largest: (most) => `More than ${count(most)} together is too many.`,
    females: (each) =>
      `Give each male ${each === 1 ? "at least one female" : `at least ${count(each)} females`}.`,
    shy: "They are shy, and hide or stay pale in a bare tank or beside restless company.",
    settledBy: "Calm fish in the open water bring them out of hiding.",
    settles: "Their calm settles shy fish.",
    varies: "No two are alike: one may do what the next never does.",
    act,
    harmless: "They leave all others alone.",
  },
  company: {
    chosen: ({ who, tank, among }) =>
      `Worked out for ${who} in a tank of ${tank}, furnished and kept as all in it ask, from ${among} species. Each was judged beside them alone; judge the whole plan before you buy.`,
    none: ({ who, tank, among }) =>
      `Of ${among} species none was found that suits ${who} in a tank of ${tank}.`,
    table: "Good companions",
    columns: ["", "how many", "because"],
    why: (reason) => {
      switch (reason.why) {
        case "settles-them":
          return "calm in the open water, they bring them out of hiding";
        case "settled-by-them":
          return "shy ones that settle beside them";
        case "elsewhere":
          return `they keep to ${placesOf(reason.zones)}, out of their way`;
        case "same-home":
          return `they share their home: ${reason.region}`;
        case "same-water":
          return `the same water suits both, ${reason.temperature}`;
        case "leaves-alone":
          return "neither troubles the other";
      }
    },
    more: (further) => `and ${further} more`,
    settlers: "They bring them out of hiding",
    settled: "Shy ones that settle beside them",
    eats: (kind, eatenUpTo, tried) => {
      const what = capital(several[kind]);
      if (!eatenUpTo) return `${what} are eaten whatever their length.`;
      return `${what} of up to ${eatenUpTo} are eaten${tried ? `; of those of up to ${tried} nobody can tell` : ""}.`;
    },
    eatsYoung: (prey) => `They take ${allOf(prey.map((one) => young[one]))} too.`,
    eatsNothing: "They eat no tank mate.",
    prey: "They would eat",
    hunters: "They would be eaten by",
    hungry: "They would go hungry beside",
    lookAlikes: "Mistaken for rivals, for they look alike",
  },
  feeding: {
    type: {
      herbivore: "They live on plants and algae.",
      omnivore: "They eat animals and plants.",
      carnivore: "They live on animals.",
      detritivore: "They live on fine dead matter and what grows on it.",
    },
    given: (foods) => `Give ${anyOf(foods.map((food) => given[food] ?? eaten[food]))}.`,
    wild: (foods) => `In the wild they find ${allOf(foods.map((food) => eaten[food]))}.`,
    when: (zones, lights) =>
      `They feed ${[zones.length === 3 ? "at every level" : allOf(zones.map((zone) => where[zone])), allOf(lights.map((light) => hours[light]))].filter(Boolean).join(", ")}.`,
    pace: {
      slow: "They look at food before they take it, so that quicker ones are there first: see that they get theirs.",
      ordinary: "",
      fast: "They are at the food first and take most of it.",
    },
  },
  breeding: {
    mode: {
      "scatters-eggs": "They scatter their eggs and leave them.",
      "guards-eggs": "They lay their eggs on a surface or in a hollow and guard them.",
      "bubble-nest": "The eggs are guarded in a nest of bubbles.",
      mouthbrooder: "Eggs or young are carried in the mouth.",
      livebearer: "They bear live young, which small fish can swallow.",
      "large-young": "They bear few young, too large for small fish to swallow.",
      "broods-young": "The eggs are carried on the body, and the young hatch complete.",
      "sea-larvae":
        "The larvae grow up only in brackish or sea water, so that none grow up in a freshwater tank.",
    },
    from: (age) => `They breed from about ${age} on.`,
    eatsOwn: (eggs, fry) =>
      `They eat ${eggs && fry ? "eggs and fry" : eggs ? "eggs" : "fry"}, their own too: without dense cover, or a tank of their own, few young grow up.`,
    crosses: "They cross with these; keep only one of them, or pass on no young",
  },
  forms: {
    intro: (forms) =>
      forms === 1 ? "One form differs in more than colour." : `${capital(count(forms))} forms were bred.`,
    table: "How they differ",
    columns: ["", "differs in"],
    alike: "colour alone",
  },
  watch: {
    table: "Signs of trouble",
    columns: ["you see", "it may be", "what to do"],
    troubles: {
      "nips-fins": { why: "they bite fins", act: "keep more of them, and no fish with long fins" },
      bites: { why: "one bites the others", act: "take out the bully, break lines of sight, return it last" },
      chases: { why: "rank or a brood", act: "break lines of sight with roots, stones or plants" },
      shy: { why: "too bare a tank or too restless company", act: "add cover, and calm the company" },
      "settled-by": { why: "nobody tells them that all is well", act: "add calm fish in the open water" },
      "alone-in-need": { why: "too few of their kind", act: "keep more of them" },
      "slow-eater": { why: "others eat first", act: "feed them apart, or where and when only they feed" },
      "fine-food": { why: "what they live on is not there", act: "offer it every day" },
      "eats-others": { why: "they have eaten them", act: "move out what is small enough" },
      jumps: { why: "they leaped out", act: "look on the floor; cover the tank without a gap" },
      oxygen: { why: "too little oxygen", act: "move the surface, cool the water, change some of it" },
      air: {
        why: "they take air, which is their way; often and fast is not",
        act: "keep the surface free; if they hurry, test the water",
      },
      "egg-eater": { why: "they ate the eggs or the young", act: "raise young apart" },
      "many-young": {
        why: "more young than anybody takes",
        act: "keep one sex only, or know who takes them",
      },
    },
    vet: "Whoever stays thin, gasps or has wounds that do not heal although the water is right needs a vet.",
  },
  certainty: {
    support: ({ known, published, practice, recalled, reckoned }) =>
      `Of ${known} facts on this page ${allOf(
        [
          published > 0 && `${published} ${published === 1 ? "was" : "were"} read in print`,
          practice > 0 &&
            `${practice} ${practice === 1 ? "is" : "are"} what keepers commonly do and no source states`,
          recalled > 0 && `${recalled} ${recalled === 1 ? "was" : "were"} recalled and not checked`,
          reckoned > 0 &&
            `${reckoned} ${reckoned === 1 ? "was" : "were"} reckoned from what is nearest known`,
        ].filter((part) => part !== false),
      )}.`,
    weak: (traits) => `No source that was read states these essentials: ${allOf(traits)}.`,
    disputed: (traits) => `Sources differ on ${allOf(traits)}.`,
    unknown: (traits) => `Nobody has said: ${allOf(traits)}.`,
  },
  cautions: {
    law: (jurisdiction, effect, instrument, date, recalled) =>
      `${jurisdiction}: ${effect} (${instrument}, ${date}${recalled ? "; recalled, not read" : ""})`,
    lawDecides: "What the law says",
    textDecides: "The text in force decides.",
    release: "Never release them, nor plants or water from their tank: rehome them, or ask a vet.",
    vet: "Animals that ail are for a vet; medicine by guess kills as often as it cures.",
    sensitive: {
      copper: "Copper, as in some medicines and algae killers, harms them.",
      salt: "Salt as a remedy harms them.",
      "ammonia-nitrite": "They are among the first to die in an unripe filter: add them last.",
      handling: "Nets and air harm them: move them in a box of water.",
      "soft-water": "Shell or moult fails in soft, acid water.",
    },
  },
  sources: {
    recalled: "recalled, not checked",
    beside: "not adopted",
    under: (synonym) => `as ${synonym}`,
    of: (relative) => `of ${relative}, standing in`,
    at: (place) => place,
    and: (names, others) => (others ? `${names[0]} and others` : allOf(names)),
  },
  notes: "Remarks",
  readsNotes: true,
};

/** What reports, pictures and pages say in English. */
export const english: PageMessages = /* @__PURE__ */ frozen({ ...reports, page });
