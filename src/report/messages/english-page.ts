import type { Words } from "../../compatibility";
import type { Kind } from "../../species";
import { english } from "./english";
import { allOf, anyOf, the as theOne } from "./english-grammar";
import { deeds, grounds, grown, holders, occasions, offered, places, prey, statuses } from "./english-words";
import type { PageMessages, PageWords, ToldAct, ToldGroup, ToldName } from "./page-messages";
import { sentenceCase as capital, scientificOf } from "./sentences";
import { withPage } from "./with-page";

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

/** What lives, how: `a shoaling fish`, `a snail that lives by itself`. */
const living: Readonly<Record<Words["living"], (animal: string) => string>> = {
  alone: (animal) => `a ${animal} that lives by itself`,
  pair: (animal) => `a ${animal} that lives in pairs`,
  harem: (animal) => `a ${animal} that lives in harems`,
  group: (animal) => `a ${animal} that lives in company`,
  shoal: (animal) => `a shoaling ${animal}`,
  either: (animal) => `a ${animal} at ease alone or with its kind`,
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

/** `on the ground`, `at the surface and in the open water`, `at every level`. */
const whereOf = (zones: readonly Words["zone"][]) =>
  zones.length >= 3 ? "at every level" : allOf(zones.map((zone) => places[zone]));

const hours: Readonly<Record<Words["light"], string>> = {
  day: "by day",
  dusk: "at dusk",
  night: "at night",
};

const flows: Readonly<Record<Words["flow"], string>> = {
  still: "still water",
  gentle: "a gentle current",
  moderate: "a moderate current",
  strong: "a strong current",
};

const foods = (): Readonly<Record<Words["food"], string>> => ({
  ...offered,
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
});

/** On whom a deed falls; of deeds of one sex the other may be named. */
function whom(target: Words["target"], doer: Words["sex"] | undefined): string {
  if (doer && target === "own-sex") return `other ${doer}s`;
  if (doer && target === "other-sex") return doer === "male" ? "females" : "males";
  const told: Readonly<Record<Words["target"], string>> = {
    "own-sex": "its own sex",
    "other-sex": "the other sex",
    "own-kind": doer ? "their own kind" : "its own kind",
    "look-alike": doer ? "others that look like them" : "others that look like it",
    "long-finned": "fish with long fins",
    smaller: "smaller animals",
    any: "whoever is near",
  };
  return told[target];
}

function act({ does, doer, targets, when = "always", from }: ToldAct): string {
  const place = doer === undefined ? 0 : 1;
  const who = doer === undefined ? "it" : `${doer}s`;
  const grown = from === "adult" ? "once grown, " : "";
  const others = allOf(targets.map((target) => whom(target, doer)));
  const occasion = does === "robs-food" ? "" : occasions[when][place];
  return `${capital(`${grown}${who}`)} ${deeds[does][place]} ${others}${occasion}.`;
}

const eachHolder = (holder: Words["territoryHolder"]) => (holder === "pair" ? "each pair" : holders[holder]);

const hideWords: Readonly<Record<Words["hide"], readonly [one: string, many: string]>> = {
  caves: ["a cave", "caves"],
  shells: ["an empty snail shell", "empty snail shells"],
  wood: ["a root", "roots"],
  leaves: ["broad leaves", "broad leaves"],
  rocks: ["a pile of stones", "piles of stones"],
};

/** `the tiger barb`, `Agassiz's dwarf cichlid`, `Nanochromis transvestitus`. */
const the = ({ name, scientific }: ToldName) => (scientific ? name : theOne(name));

/** `six bronze corydoras`, `a pair of honey gouramis`, `one male and two female guppies`. */
function group({ name, several: many, count: number, males, females }: ToldGroup): string {
  if (number === 1) return males === 1 ? `one male ${name}` : `one ${name}`;
  if (males === 1 && females === 1) return `a pair of ${many}`;
  if (males > 0 && females > 0) return `${count(males)} male and ${count(females)} female ${many}`;
  return `${count(number)} ${many}`;
}

/** Names that take an article in English, such as those of basins and islands. */
const articled =
  /\b(basins?|drainages?|Is\.|Islands|Peninsula|Republic|States|Territory|Nile|Philippines|region|coast|slope|plain|delta|Indo-West Pacific)\b|\b(River|rivers|lakes)( |$)/;

/** A region as it stands in a sentence: `the upper Amazon basin`, `Lake Malawi`, `Peru`. */
function region(name: string): string {
  const [head = name] = name.split(/,| in | from /);
  const bare = /^(the |rivers |coastal |springs |Lake )/.test(name);
  return !bare && (articled.test(head) || /(rivers|basins|drainages)$/.test(name)) ? `the ${name}` : name;
}

/** Regions of one name in several countries together: `the upper Amazon basin in Peru, Colombia and Brazil`. */
function regionsTold(regions: readonly string[]): string {
  const countries = new Map<string, string[]>();
  for (const name of regions) {
    const [place = name, country] = name.split(" in ");
    countries.set(place, [...(countries.get(place) ?? []), ...(country ? [country] : [])]);
  }
  const all = [...countries].map(([place, within]) =>
    within.length > 0 ? `${region(place)} in ${allOf(within)}` : region(place),
  );
  const told =
    all.length > mostRegions
      ? [...all.slice(0, mostRegions - 1), `${all.length - mostRegions + 1} more`]
      : all;
  return told.some((text) => text.includes(",")) && told.length > 1
    ? `${told.slice(0, -1).join("; ")}; and ${told.at(-1)}`
    : allOf(told);
}

/** So many regions are named; of the others only how many there are. */
const mostRegions = 9;

const page: PageWords = {
  headings: {
    glance: "At a glance",
    origin: "Where it comes from",
    size: "Size and age",
    water: "Water",
    tank: "The tank",
    behaviour: "How it behaves",
    company: "Company",
    feeding: "Feeding",
    breeding: "Breeding and young",
    forms: "Forms bred from it",
    watch: "What to watch for",
    certainty: "How sure this is",
    cautions: "Take care",
    sources: "Sources",
  },
  alsoCalled: (names) => `Also called ${allOf(names)}.`,
  formerly: (synonyms) => `Older books and shops may say ${anyOf(synonyms)}.`,
  formOf: (scientific) => `A form bred from ${scientific}.`,
  subject: (who) => ({ who: the(who), many: false }),
  group,
  region,
  jurisdiction: (jurisdiction) => jurisdiction,
  effect: (effect) => effect,
  scientific: scientificOf,
  glance: {
    summary: ({ kind, living: how, zones, length, temperature }) => {
      const animal = how ? living[how](kind) : `a ${kind}`;
      const parts = [
        [animal, zones.length > 0 && whereOf(zones)].filter(Boolean).join(" "),
        length && `${length} long when grown`,
        temperature && `for water of ${temperature}`,
      ];
      return `${capital(parts.filter(Boolean).join(", "))}.`;
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
    tank: (size, many) => `${size} or larger for ${count(many)}`,
    number: (least, how, amiss) => {
      if (how === "pair") return "a pair";
      if (how === "alone") return "one";
      if (how === "harem") return `one male and ${least > 2 ? "several females" : "one female or more"}`;
      return `${count(least)} or more${amiss && `, but not ${amiss}`}`;
    },
    know: "Know before you buy",
    incomplete: (traits) => `Too little is known to judge its company: ${allOf(traits)}.`,
    grows: (length) => `It grows to ${length}.`,
    hunts: (length) => `It eats fish, and may try any of up to ${length}.`,
    lives: (age) => `It lives for ${age} or so.`,
    hazards: {
      venom: "It is venomous.",
      spines: "Its spines wound hands and catch in nets.",
      bite: "Its bite can wound a person.",
      shock: "It gives electric shocks that a person feels.",
    },
    laws: (jurisdictions) => `Some laws restrict it: ${allOf(jurisdictions)}.`,
    threatened: (status) => `In the wild it is ${statuses[status]}: ask for bred ones.`,
  },
  origin: {
    from: (regions, who) => `${capital(the(who))} comes from ${regionsTold(regions)}.`,
    waters: (waters) => {
      const kinds = { fresh: "fresh", brackish: "brackish", marine: "sea" };
      return `It lives in ${allOf(waters.map((water) => kinds[water]))} water.`;
    },
    supply: {
      farmed: "Nearly all that are sold were bred, on farms or by keepers.",
      mixed: "Both bred and wild-caught ones are sold.",
      wild: "Nearly all that are sold were caught in the wild.",
    },
    conservation: (status, year) => {
      const dated = year ? ` (${year})` : "";
      if (status === "NE") return `The Red List has not assessed it${dated}.`;
      if (status === "DD") return `For the Red List too little is known of it to judge${dated}.`;
      const as = status === "LC" ? "under" : "as";
      return `The Red List has it ${as} ${statuses[status]}${dated}.`;
    },
  },
  size: {
    length: ({ sex, usual, greatest, of }) => {
      const who = sex === undefined ? "Grown, it" : `${capital(sex)}s`;
      const [measures, usually] =
        sex === undefined ? ["measures", "usually measures"] : ["measure", "usually measure"];
      const what = { whole: "", shell: " across the shell", disc: " across the disc" }[of];
      if (!usual) return `${who} ${measures} ${greatest} at most${what}.`;
      return `${who} ${usually} ${usual}${what}${greatest ? `, and ${greatest} at most` : ""}.`;
    },
    grownAt: (age) => `It is grown at about ${age}.`,
    lifespan: (usual, greatest) => {
      if (!usual) return `The oldest known reached ${greatest}.`;
      return `Well kept it lives for about ${usual}${greatest ? `, at most ${greatest}` : ""}.`;
    },
  },
  water: {
    table: "The water to keep it in",
    columns: ["figure", "keep at", "best at", "suffers or dies", "others say"],
    rows: {
      temperature: "Temperature",
      pH: "pH",
      generalHardness: "General hardness",
      carbonateHardness: "Carbonate hardness",
      salinity: "Salinity",
    },
    flow: (calmest, strongest) =>
      calmest === strongest
        ? `It wants ${flows[calmest]}.`
        : `It is at home in ${flows[calmest]} and anything up to ${flows[strongest]}.`,
    oxygen: {
      low: "A warm night without a pump does not trouble it.",
      ordinary: "It breathes calmly wherever the surface moves a little.",
      high: "It needs much oxygen and breathes hard as soon as the water stops moving.",
    },
    air: (kind, from) => {
      if (kind === "none") return "";
      const since = from === "fry" || from === "juvenile" ? " while still young" : "";
      return kind === "obligate"
        ? `It breathes air${since && `, even${since},`} and drowns if it cannot reach the surface.`
        : "When the water holds little oxygen it takes air at the surface.";
    },
    coolSeason: (temperature, months) =>
      `Each year it needs a cool season at ${temperature}${months && ` for ${months}`}.`,
    saidTable: "What sources say",
    saidColumns: ["figure", "says", "meaning", "source", "remark"],
    setAside: (why) => `Set aside: ${why}`,
    ofClass: "a class of its handbook",
  },
  tank: {
    least: ({ group: who, animals: many, length, floor, sides, further }) => {
      const room = [
        length && `a tank at least ${length} long`,
        floor && (length ? `with a floor of ${floor}` : `a floor of at least ${floor}`),
        floor && sides && `(such as ${sides})`,
      ];
      const more = further && `; each further one asks for ${further} more`;
      return `${capital(who)} ${many === 1 || who.startsWith("a pair") ? "needs" : "need"} ${room.filter(Boolean).join(" ")}${more}.`;
    },
    height: (height) => `The tank is at least ${height} high.`,
    zones: (zones) => `It lives ${whereOf(zones)}.`,
    cover: (cover, openWater) => {
      if (cover && openWater)
        return `Seen from above, give at least ${cover} of the tank to plants, roots or stones as cover, and leave ${openWater} free to swim in.`;
      return cover
        ? `Seen from above, give at least ${cover} of the tank to plants, roots or stones as cover.`
        : `Leave at least ${openWater} of the tank open.`;
    },
    grownIn: "It does well only among plants that have grown in.",
    ground: (all) =>
      all.length > 0
        ? `It needs ${anyOf(all.map((ground) => grounds[ground]))} on the ground.`
        : "Any ground will do.",
    hides: ({ anyOf: kinds, each, holder, sharedBy = 1 }) => {
      const many = anyOf(kinds.map((kind) => hideWords[kind][1]));
      const one = anyOf(kinds.map((kind) => hideWords[kind][0]));
      if (sharedBy > 1)
        return `It hides, sleeps or spawns in ${many}: have one for every ${count(sharedBy)}.`;
      return `${capital(eachHolder(holder))} needs ${each > 1 ? `${count(each)} ${many}` : one} to hide, sleep or spawn in.`;
    },
    noHides: "It needs no hollow to hide in.",
    jumps: {
      seldom: "",
      startled: "Frightened, it jumps: cover the tank.",
      readily: "It leaves the water without any cause: cover the tank without a gap.",
    },
    effects: ({ digs, uproots, eatsPlants }) => {
      const does = [digs && "digs", uproots && "pulls plants out", eatsPlants && "eats plants"];
      const told = does.filter((deed) => deed !== false);
      return told.length > 0 ? `It ${allOf(told)}.` : "Plants are safe with it.";
    },
    territory: (holder, sides, zone) =>
      `${capital(eachHolder(holder))} defends about ${sides} ${places[zone]}.`,
  },
  behaviour: {
    living: (who, how) =>
      ({
        alone: `${capital(the(who))} lives alone: one to a tank.`,
        pair: `${capital(the(who))} lives in pairs.`,
        harem: `${capital(the(who))} lives in harems, one male with its females.`,
        group: `${capital(the(who))} seeks the company of its kind.`,
        shoal: `${capital(the(who))} swims in shoals.`,
        either: `${capital(the(who))} is at ease alone and with its kind.`,
      })[how],
    least: (least, avoid) => `Keep ${count(least)} or more${avoid ? `; with ${avoid} things go wrong` : ""}.`,
    largest: (most) => `More than ${count(most)} together are too many.`,
    females: (each) =>
      `Give each male ${each === 1 ? "at least one female" : `at least ${count(each)} females`}.`,
    shy: "It is shy, and hides or stays pale in a bare tank or beside restless company.",
    settledBy: "Calm fish in the open water bring it out of hiding.",
    settles: "Its calm settles shy fish.",
    varies: "No two are alike: one may do what the next never does.",
    act,
    harmless: "It leaves all others alone.",
  },
  company: {
    chosen: ({ who, tank, among }) =>
      `Worked out for ${who} in a tank of ${tank}, furnished and kept as both ask, from ${among} species. Each was judged with it alone: judge the whole plan before you buy.`,
    none: ({ who, tank, among }) =>
      `Of ${among} species none was found that suits ${who} in a tank of ${tank}.`,
    good: "Good companions",
    watched: "Only while room and cover keep bites off, and with a tank to move one to",
    listed: "laws of some places name it, see its page",
    why: (reason) => {
      switch (reason.why) {
        case "settles-them":
          return "calm company that brings it out of hiding";
        case "settled-by-them":
          return "shy company, settled by its calm";
        case "harmless":
          return "harmless to all";
        case "elsewhere":
          return `${whereOf(reason.zones)}, out of its way`;
        case "same-home":
          return `from the same home, ${region(reason.region)}`;
        case "same-water":
          return `for the same water, ${reason.temperature}`;
        case "leaves-alone":
          return "neither troubles the other";
        case "holds-its-own":
          return "each holds its own";
      }
    },
    more: (further) => `and ${further} more`,
    settlers: "Who brings it out of hiding",
    settled: "Shy ones that settle beside it",
    eats: ({ kinds, eaten, tried, eelLike }) => {
      const what = capital(allOf(kinds.map((kind) => several[kind])));
      if (!eaten) return `${what} are eaten whatever their length.`;
      const longer = tried ? `those of up to ${tried}` : "longer ones";
      const further = tried === undefined ? "" : `, and ${longer} may be tried`;
      const alsoEaten = eelLike ? `; eel-like ones are eaten up to ${eelLike}` : "";
      return `${what} of up to ${eaten} are eaten${further}${alsoEaten}.`;
    },
    eatsYoung: (all) => `It takes ${allOf(all.map((one) => prey[one]))}.`,
    eatsNothing: "It eats no tank mate.",
    prey: "What it would eat",
    hunters: "What would eat it",
    hungry: "Who would leave it hungry",
    lookAlikes: "Rivals, for they look alike",
  },
  feeding: {
    type: {
      herbivore: "It lives on plants and algae.",
      omnivore: "It eats animals and plants.",
      carnivore: "It lives on animals.",
      detritivore: "It lives on fine dead matter and what grows on it.",
    },
    given: (all) =>
      `Give it ${allOf(all.flatMap((food) => ({ ...foods(), ...grown })[food].split(" and ")))}.`,
    wild: (all) => `In the wild it finds ${allOf(all.map((food) => foods()[food]))}.`,
    when: (zones, lights) =>
      `It feeds ${[zones.length > 0 && whereOf(zones), allOf(lights.map((light) => hours[light]))].filter(Boolean).join(", ")}.`,
    pace: {
      slow: "It takes its food slowly, so that quicker ones are there first: see that it gets its share.",
      ordinary: "",
      fast: "It is at the food first and takes most of it.",
    },
  },
  breeding: {
    mode: {
      "scatters-eggs": "It lays or scatters its eggs and leaves them.",
      "guards-eggs": "It lays its eggs on a surface or in a hollow and guards them.",
      "bubble-nest": "It builds a nest of bubbles and guards the eggs in it.",
      mouthbrooder: "Eggs or young are carried in the mouth.",
      livebearer:
        "It bears live young, which small fish can swallow, and more of them than anybody takes: keep one sex only, or know who takes them.",
      "large-young": "It bears few young, too large for small fish to swallow.",
      "broods-young": "The eggs are carried on the body, and the young hatch complete.",
      "sea-larvae": "Its larvae grow up only in brackish or sea water: in fresh water there are none.",
    },
    from: (age) => `It breeds from about ${age} on.`,
    eatsOwn: (eggs, young) =>
      `It eats ${eggs && young ? "eggs and young" : eggs ? "eggs" : "young"}, its own too: without dense cover or a tank to themselves few young grow up.`,
    crosses: "It crosses with these: keep only one of them, or pass on no young",
  },
  forms: {
    intro: (forms) =>
      forms === 1 ? "One form has been bred." : `${capital(count(forms))} forms have been bred.`,
    fins: (areLong) => (areLong ? "long fins" : "short fins"),
    alike: "colour alone",
  },
  watch: {
    told: (sign, troubles) =>
      `${capital(sign)}: ${troubles.map(({ why, act: deed }) => `${why} (${deed})`).join("; or ")}.`,
    troubles: {
      "nips-fins": { why: "it bites fins", act: "keep no fish with long fins beside it" },
      "nips-in-few": { why: "it bites fins", act: "keep more of its kind, and no fish with long fins" },
      rivals: { why: "a rival of its own kind", act: "part the two at once, and keep one to a tank" },
      bites: { why: "one bites the others", act: "take out the bully, break lines of sight, return it last" },
      chases: { why: "rank or a brood", act: "break lines of sight with roots, stones or plants" },
      shy: { why: "too bare a tank or too restless company", act: "add cover, and calm the company" },
      "settled-by": { why: "nothing tells it that all is well", act: "add calm fish in the open water" },
      "alone-in-need": { why: "too few of its kind", act: "keep more of them" },
      "slow-eater": { why: "others eat first", act: "feed it apart, or where and when only it feeds" },
      "fine-food": { why: "what it lives on is missing", act: "offer it every day" },
      "eats-others": { why: "it has eaten them", act: "move out what is still small enough" },
      jumps: {
        why: "it has leaped or climbed out",
        act: "look on the floor, and close every gap in the lid",
      },
      oxygen: { why: "too little oxygen", act: "move the surface, cool the water, change some of it" },
      air: {
        why: "it takes air, as it must, but not often and in haste",
        act: "keep the surface free, and test the water",
      },
      "egg-eater": { why: "eggs and young go missing, for it eats them", act: "raise the young apart" },
    },
    vet: "An animal that stays thin, gasps or has wounds that do not heal although the water is right needs a vet.",
  },
  certainty: {
    support: ({ known, published, practice, recalled, reckoned }) => {
      const of = (many: number, one: string, more: string) =>
        many > 0 && `${many} ${many === 1 ? one : more}`;
      const parts = [
        of(published, "was read in print", "were read in print"),
        of(practice, "rests in part at least on common practice", "rest in part at least on common practice"),
        of(recalled, "was recalled and not checked", "were recalled and not checked"),
        of(reckoned, "was reckoned from what is nearest known", "were reckoned from what is nearest known"),
      ];
      return `Of the ${known} facts behind this page, ${allOf(parts.filter((part) => part !== false))}.`;
    },
    practice: (traits) => `Common practice, which no source states, has a part in ${allOf(traits)}.`,
    reckoned: (traits) => `Reckoned, at least in part: ${allOf(traits)}.`,
    disputed: (traits) => `Sources differ on ${allOf(traits)}.`,
    unknown: (traits) => `Not known: ${allOf(traits)}.`,
  },
  cautions: {
    law: (jurisdiction, effect, instrument, date, recalled) =>
      `${jurisdiction}: ${effect} (${instrument}, ${date}${recalled ? "; recalled, not read" : ""})`,
    lawDecides: "What the law says",
    textDecides: "The text in force decides.",
    release: "Never release it, nor plants or water from its tank: rehome it, or ask a vet.",
    vet: "An animal that ails is for a vet: medicine by guess kills as often as it cures.",
    sensitive: (to, kind) =>
      ({
        copper: "Copper, as in some medicines and algae killers, harms it.",
        salt: "Salt as a remedy harms it.",
        "ammonia-nitrite":
          "It is among the first to die in an unripe filter: add it only once the filter is ripe.",
        handling: "Nets and air harm it: move it in a box of water.",
        "soft-water": `Its ${kind === "snail" || kind === "mussel" ? "shell" : "moult"} fails in soft, acid water.`,
      })[to],
  },
  sources: {
    recalled: "recalled, not checked",
    beside: "not adopted",
    under: (synonym) => `as ${synonym}`,
    of: (relative) => `of ${relative}, standing in`,
    and: (names, others) => (others ? `${names[0]} and others` : allOf(names)),
  },
  notes: "Sources add",
  readsNotes: true,
};

/** What pages of species say in English, and reports and pictures with them. */
export const englishPages: PageMessages = /* @__PURE__ */ withPage(english, page);
