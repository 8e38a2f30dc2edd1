import type { Measures, Quantity, WordKind, Words } from "../../compatibility";
import { frozen } from "../../frozen";
import { facts } from "../../plan";
import { classes, type TraitPath, traitPaths } from "../../species";
import { traitWords } from "../../species/inner";
import type { Messages, Told, ToldCondition } from "./messages";

const basis: Messages["basis"] = {
  published: "published",
  curated: "weighed from several sources",
  memory: "recalled, source not read",
  "common-practice": "common practice",
  observed: "observed by a keeper",
  derived: "computed, or taken from what is nearest",
};

const couldBe = {
  blocking: "could rule it out",
  restricting: "could set a condition",
  advisory: "worth knowing",
  favourable: "in favour",
};

type WordOf<Kind extends WordKind> = { readonly value: Words[Kind] } | undefined;

function sharedWater(water: string) {
  return ({
    weight,
    from,
    to,
    measures,
    figure,
  }: Told<Measures["temperature" | "ph" | "general-hardness" | "salinity"]>) => {
    if (weight === "favourable")
      return `${from} and ${to} are both kept at a ${water} of ${figure(measures.shared)}.`;
    const each = `${from} is kept at a ${water} of ${figure(measures.from)}, ${to} at ${figure(measures.to)}`;
    if (weight === "restricting")
      return measures.shared
        ? `${each}: only ${figure(measures.shared)} suits both well.`
        : `${each}: each end has to give way a little.`;
    return weight === "blocking"
      ? `${each}: no ${water} suits both.`
      : `${each}, which is what is best for it: whether both can be kept at one ${water} nobody has said.`;
  };
}

type PlannedWaterRule = "water-temperature" | "water-ph" | "water-hardness" | "water-salinity";

function plannedWater(water: string) {
  return ({ weight, from, measures, figure }: Told<Measures[PlannedWaterRule]>) => {
    const { kept, optimum, planned, hottest, coolest, limit } = measures;
    const known = planned ?? hottest ?? coolest;
    const season = (hottest && " on the hottest day") ?? (coolest && " in the coolest season") ?? "";
    const plan = known ? `; planned is ${figure(known)}${season}` : "";
    if (optimum) return `${from} does best at a ${water} of ${figure(optimum)}${plan}.`;
    const text = `${from} is kept at a ${water} of ${figure(kept)}${plan}.`;
    if (weight === "advisory") return `${text} That is at the edge of what it stands for good.`;
    return limit ? `${text} Past its limit (${figure(limit)}) it suffers or dies.` : text;
  };
}

const thisOne = (verb: string, figure: string) => figure && `; this one ${verb} ${figure}`;

const deeds: Readonly<Record<Words["does"], string>> = {
  chases: "chases",
  bites: "bites",
  kills: "kills",
  "nips-fins": "bites pieces out of the fins of",
  "rasps-mucus": "rasps the slime coat of",
  "robs-food": "takes food from",
};

const occasions: Readonly<Record<Words["when"], string>> = {
  always: "",
  breeding: " while it breeds",
  "guarding-brood": " while it guards eggs or young",
  feeding: " at food",
  crowded: " when the other cannot get out of sight",
};

type ActRule = "acts-own-kind" | "acts-look-alike" | "acts-others";

function act(whom: (told: Told<Measures[ActRule]>) => string) {
  return (told: Told<Measures[ActRule]>) => {
    const { act: deed, doer, once, when } = told.measures;
    const who = doer ? `a ${doer.value} ${told.from}` : told.from;
    const harms = deed ? deeds[deed.value] : "harms";
    return `${once ? "once grown, " : ""}${who} ${harms} ${whom(told)}${when ? occasions[when.value] : ""}.`;
  };
}

const holders: Readonly<Record<Words["territoryHolder"], string>> = {
  male: "each male",
  female: "each female",
  pair: "a pair",
  each: "each animal",
};

function holder(of: WordOf<"territoryHolder">, who: string): string {
  if (!of) return who;
  return {
    male: `each male ${who}`,
    female: `each female ${who}`,
    pair: `a breeding pair of ${who}`,
    each: `each ${who}`,
  }[of.value];
}

const parts: Readonly<Record<Words["zone"], string>> = {
  surface: "near the surface",
  midwater: "in open water",
  bottom: "on the ground",
};

const whereabouts = (zone: WordOf<"zone">) => (zone ? parts[zone.value] : "in the same part of the tank");

/** `no more than 1 male swordtail is kept`, `no male swordtail is kept`. */
function noMoreThan({ max, figure }: ToldCondition, what: string): string {
  if (max === 0) return `no ${what} is kept`;
  const most: Quantity | undefined = max === undefined ? undefined : { value: max };
  return `no more than ${figure(most)} ${what} ${max === 1 ? "is" : "are"} kept`;
}

const hazards: Readonly<Record<Words["hazard"], (who: string) => string>> = {
  venom: (who) =>
    `Venom: ${who}. After a sting seek medical care at once; only for trained hands, and never handled bare.`,
  spines: (who) =>
    `Spines that wound: ${who}. No bare hand, no fine net. A wound that swells or does not heal is for a doctor.`,
  bite: (who) => `Bites: ${who}. Keep hands out of reach; a deep wound is for a doctor.`,
  shock: (who) => `Electric shocks that a person feels: ${who}. Keep hands out of the water.`,
};

function predation(told: Told<Measures["predation"]>): string {
  const { from, to, weight, measures, figure } = told;
  const { of, prey, hunter, greatestPrey, safeFrom, hunts, defence } = measures;
  if (of?.value === "egg") return `${from} feeds by night and eats the eggs that ${to} guards.`;
  if (of) return `${from} eats the young of ${to}.`;
  const size = prey ? `, ${figure(prey)} long,` : "";
  const why = greatestPrey
    ? `takes prey of up to about ${figure(greatestPrey)}`
    : hunter && `grows to ${figure(hunter)}`;
  const who = [from, why].filter(Boolean).join(", which ");
  const night = hunts && !defence ? " It hunts by night." : "";
  const spines = defence && weight === "blocking" ? ` Its spines can choke ${from}.` : "";
  if (weight === "restricting")
    return `${to}${size} is eaten by ${who}. From ${figure(safeFrom)} on it is safe: let it grow first.`;
  if (weight === "blocking") return `${to}${size} is eaten by ${who}.${night}${spines}`;
  return `${who}, may try to eat ${to}${size} and some do.${night}`;
}

function footprint({ from, weight, measures, figure }: Told<Measures["footprint"]>): string {
  const { length, width, needed, planned } = measures;
  if (length) return `${from} grows to ${figure(length)} and cannot turn in a tank ${figure(width)} wide.`;
  const text = `${from} needs a floor of ${figure(needed)}; this one has ${figure(planned)}.`;
  return weight === "blocking" ? `This tank is far too small: ${text}` : text;
}

function oxygen({ from, measures, figure }: Told<Measures["oxygen"]>): string {
  const { air, need, hours, temperature, saturation, limit } = measures;
  if (air) return `${from} drowns unless it can take air at the surface.`;
  if (hours) {
    return `at ${figure(temperature)} water holds ${figure(saturation)} of oxygen; if it stands still, this stock has used it down to ${figure(limit)}, the least for ${from}, within ${figure(hours)}.`;
  }
  if (need?.value === "high")
    return `${from} needs much oxygen and suffers as soon as the water stands still.`;
  return `how long the oxygen lasts for ${from} on a hot night depends on how warm the water is and how much there is, which the plan does not say.`;
}

const plantHarm: Readonly<Record<Words["plantHarm"], string>> = {
  eats: "eats plants",
  uproots: "pulls plants out",
  digs: "digs, so that plants loosen",
};

const feedingPlaces: Readonly<Record<Words["zone"], string>> = {
  surface: "at the surface",
  midwater: "in midwater",
  bottom: "on the ground",
};

const feedingHours: Readonly<Record<Words["light"], string>> = {
  day: "by day",
  dusk: "at dusk",
  night: "after dark",
};

/** How food reaches an animal, if a choice is about that. */
function wayOf(choice: string): string | undefined {
  const ways: Readonly<Record<string, string>> = {
    ...feedingPlaces,
    ...feedingHours,
    apart: "where the quicker ones do not get at it",
  };
  return Object.hasOwn(ways, choice) ? ways[choice] : undefined;
}

/** `neon tetra is given frozen food where and when it feeds`, `food reaches neon tetra after dark, or where the quicker ones do not get at it`. */
function fedWith({ of, words }: ToldCondition): string {
  const choices = words.map(String);
  const given = choices.filter((choice) => wayOf(choice) === undefined);
  const reached = choices.flatMap((choice) => wayOf(choice) ?? []);
  return [
    given.length > 0 &&
      `${of} is given ${anyOf(given.map((food) => foods[food] ?? food))} where and when it feeds`,
    reached.length > 0 && `food reaches ${of} ${anyOf(reached)}`,
  ]
    .filter(Boolean)
    .join(", or ");
}

const sensitivities: Readonly<Record<Words["sensitivity"], (who: string) => string>> = {
  copper: (who) => `copper, in remedies and algae killers, kills ${who}.`,
  salt: (who) => `salt as a remedy harms ${who}.`,
  "ammonia-nitrite": (who) => `${who} is among the first to die in a filter that is not ripe.`,
  handling: (who) => `nets and lifting into air harm ${who}: move it in a box of water.`,
  "soft-water": (who) => `in soft, acid water the shell or the moult of ${who} fails.`,
};

const labelOf = (fact: string | undefined) =>
  fact !== undefined && Object.hasOwn(facts, fact) ? facts[fact as keyof typeof facts].label : "one fact";

const anyOf = (choices: readonly string[]) =>
  new Intl.ListFormat("en", { type: "disjunction" }).format(choices);

const foods: Readonly<Record<string, string>> = {
  dry: "dry food",
  frozen: "frozen food",
  live: "live food",
  "fallen-insects": "insects on the surface",
};

function labelled(): Messages["traits"] {
  const labels = traitPaths.map((path) => [path, traitWords[path].label] as const);
  return Object.fromEntries(labels) as Record<TraitPath, string>;
}

/** In English the words of traits are what they are called, but for their hyphens. */
function spelled(): Messages["words"] {
  const tables: Readonly<Record<string, object>> = {
    ...classes,
    basis,
    plantHarm,
  };
  return Object.fromEntries(
    Object.entries(tables).map(([kind, table]) => [
      kind,
      Object.fromEntries(Object.keys(table).map((word) => [word, spaced(word)])),
    ]),
  ) as Messages["words"];
}

const spaced = (word: string) => word.replaceAll("-", " ");

/** The report in English. */
export const english: Messages = /* @__PURE__ */ frozen(/* @__PURE__ */ messages());

function messages(): Messages {
  return {
    language: "en",
    outcome: {
      suitable: "Suitable: nothing speaks against it.",
      conditional: "Conditional: it works if the conditions below are met.",
      unsuitable: "Unsuitable: do not keep this together.",
      undetermined: "Undetermined: something that decides it is not known.",
    },
    bounds: (atBest, atWorst) =>
      `With what is not certain, the answer lies between ${atBest} and ${atWorst}.`,
    titles: {
      parties: "Animals",
      blocking: "Why not",
      restricting: "Conditions",
      besides: "Besides",
      advisory: "Worth knowing",
      favourable: "In favour",
      watchFor: "Watch for",
      met: "Already met",
      open: "Not certain",
      cautions: "Take care",
    },
    party: ({ name, scientific, count, males = 0, females = 0, sex, stage }) => {
      const sexes = [males > 0 && `${males} male`, females > 0 && `${females} female`].filter(Boolean);
      const detail = [...(sexes.length > 0 ? sexes : [sex]), stage].filter(Boolean).join(", ");
      return [count && `${count} ×`, name, `(${scientific})`, detail && `– ${detail}`]
        .filter(Boolean)
        .join(" ");
    },
    rules: {
      temperature: sharedWater("temperature"),
      ph: sharedWater("pH"),
      "general-hardness": sharedWater("general hardness"),
      salinity: sharedWater("salinity"),
      flow: ({ weight, from, to }) =>
        weight === "favourable"
          ? `One current suits ${from} and ${to}.`
          : `${from} and ${to} need different currents, each a place of its own.`,
      predation: (told) => predation(told),
      "acts-own-kind": act(() => "its own kind"),
      "acts-look-alike": act(({ to }) => `${to}, which looks like its own kind`),
      "acts-others": act(({ to }) => to),
      "fin-nipping": ({ from, to }) => `${from} bites pieces out of the fins of ${to}.`,
      "mucus-grazing": ({ from, to }) => `${from} rasps the slime coat off the flanks of ${to}.`,
      "territory-contest": ({ from, to, measures }) =>
        `${from} and ${to} both defend a place ${whereabouts(measures.zone)}.`,
      "size-and-pace": ({ from, to, measures, figure }) =>
        `${from}, ${figure(measures.longer)} long, leaves ${to} of ${figure(measures.shorter)} no rest.`,
      "feeding-competition": ({ from, to }) => `${from} has eaten before ${to} gets to the food.`,
      shyness: ({ from, to }) => `the bustle of ${to} keeps ${from} in hiding.`,
      interbreeding: ({ from, to }) => `Males of ${from} and females of ${to} have hybrid young.`,
      furnishing: ({ from, to, measures, figure }) => {
        const { cover, openWater, harm } = measures;
        if (harm)
          return `one of ${from} and ${to} ${plantHarm[harm.value]}, and the other cannot do without them.`;
        if (cover)
          return `${from} and ${to} together ask for cover over ${figure(cover)} of the tank seen from above and for ${figure(openWater)} free to swim in: no tank has both.`;
        return `${from} needs ${anyOf((measures.from?.value ?? []).map(spaced))} on the ground, ${to} ${anyOf((measures.to?.value ?? []).map(spaced))}.`;
      },
      "conditions-exclude": ({ measures: { one, other } }) =>
        one?.value === other?.value
          ? `two conditions exclude each other: both are about ${labelOf(one?.value)}.`
          : `two conditions exclude each other: ${labelOf(one?.value)} and ${labelOf(other?.value)}.`,
      "water-temperature": plannedWater("temperature"),
      "water-ph": plannedWater("pH"),
      "water-hardness": plannedWater("general hardness"),
      "water-salinity": plannedWater("salinity"),
      oxygen: (told) => oxygen(told),
      "filter-nitrogen": ({ measures, figure }) =>
        `Grown and fed plenty, the animals give off ${figure(measures.nitrogen)} of ammonia nitrogen, which a ripe filter takes up.`,
      height: ({ from, measures, figure }) =>
        `${from} needs a tank ${figure(measures.needed)} high${thisOne("measures", figure(measures.planned))}.`,
      zones: ({ from, measures, figure }) =>
        `${from} shares its place ${whereabouts(measures.zone)}: all that live there need a floor of ${figure(measures.needed)}; this one has ${figure(measures.planned)}.`,
      territories: ({ from, measures, figure }) =>
        `${holder(measures.holder, from)} defends ${figure(measures.area)} ${whereabouts(measures.zone)}; ${figure(measures.held)} such places are held here.`,
      "open-water": ({ from, measures, figure }) =>
        `${from} needs ${figure(measures.needed)} of the tank, seen from above, to swim in.`,
      ground: ({ from, measures }) =>
        `${from} needs ${anyOf((measures.needed?.value ?? []).map(spaced))} on the ground.`,
      "hiding-places": ({ from, measures, figure }) =>
        `${from} hides in ${anyOf((measures.kinds?.value ?? []).map(spaced))}; ${figure(measures.needed)} such places are needed here.`,
      sensitive: ({ from, measures }) => sensitivities[measures.to?.value ?? "handling"](from),
      "plants-at-risk": ({ from, measures }) => `${from} ${plantHarm[measures.harm?.value ?? "eats"]}.`,
      feeding: ({ from, measures }) => {
        const places = measures.places?.value.map((place) => feedingPlaces[place]) ?? [];
        const hours = measures.hours?.value.map((hour) => feedingHours[hour]) ?? [];
        return `${from} feeds ${places.join(" and ")}, ${hours.join(" and ")}: what others are given may not reach it.`;
      },
      "longest-run": ({ from, weight, measures, figure }) => {
        const text = `${from} needs a tank ${figure(measures.needed)} long; this one measures ${figure(measures.planned)}.`;
        return weight === "blocking" ? `This tank is far too short: ${text}` : text;
      },
      footprint: (told) => footprint(told),
      "group-size": ({ from, weight, measures, figure }) =>
        weight === "advisory"
          ? `${from} lives alone; ${figure(measures.planned)} are planned.`
          : `${from} is kept in a group of ${figure(measures.needed)}; planned: ${figure(measures.planned)}.`,
      "sex-ratio": ({ from, measures, figure }) =>
        `${from} needs ${figure(measures.needed)} females to each male.`,
      cover: ({ from, measures, figure }) =>
        `${from} needs cover over ${figure(measures.needed)} of the tank, seen from above.`,
      plants: ({ from }) => `${from} does well only among plants that have grown in.`,
      "settling-company": ({ from, weight, measures, figure }) =>
        weight === "advisory"
          ? `${from} settles in so much cover, more slowly than beside calm fish in the open water.`
          : `${from} is shy and comes out beside calm fish in the open water; cover over ${figure(measures.cover)} of the tank settles it too, more slowly.`,
      lid: ({ from, weight }) =>
        weight === "restricting"
          ? `${from} leaves the water of an open tank.`
          : `${from} may jump when it is frightened.`,
      "flow-places": ({ from, measures: { calmest, strongest } }) =>
        `${from} needs a place with ${[...new Set([calmest?.value, strongest?.value])].join(" to ")} current.`,
      "caution-floor": ({ measures, figure }) =>
        measures.mass
          ? `Filled with ${figure(measures.volume)} of water, the tank weighs ${figure(measures.mass)} or more, gravel and stand not counted: ${figure(measures.load)} on its footprint. Whether a floor carries that is for a structural engineer to say.`
          : `The plan does not say how high the tank is, and so not what it weighs: ${figure({ value: 100, unit: "L" })} of water weigh ${figure({ value: 100, unit: "kg" })}. Whether a floor carries a large tank is for a structural engineer to say.`,
      "caution-electricity": () =>
        "Water and electricity: use a residual-current device, let cables hang in a loop below the socket, pull the plugs before a hand goes in. Follow the local wiring rules; have work done by a licensed electrician.",
      "caution-hazards": ({ from, measures }) => hazards[measures.hazard?.value ?? "bite"](from),
      "caution-zoonoses": () =>
        "Fish and their water can carry germs that infect people. Wash hands, keep cuts out of the water, and ask a doctor if a wound does not heal.",
      "caution-devices": ({ from, measures }) =>
        measures.device?.value === "heater"
          ? `${from} rests on a heater and burns itself: use one with a guard, or one outside the tank.`
          : `${from} gets into the intake of a pump: cover it with foam.`,
      "caution-law": ({ from, measures: { jurisdiction, effect, instrument, date, basis, laws }, figure }) =>
        laws
          ? `Laws name ${from}: ${figure(laws)} are known here. Say where the tank stands to read those that apply, or read the species' listings; the text in force decides.`
          : `${from}, ${jurisdiction?.value}: ${effect?.value} (${instrument?.value}; ${date?.value}${basis?.value === "memory" ? "; recalled, not read" : ""}.) The text in force decides.`,
      "caution-release": () =>
        "Never release animals, plants or tank water outdoors. Rehome them, or ask a vet about humane killing.",
    },
    together: {
      temperature: (who) => `A temperature suits each two of ${who}, with room to spare.`,
      ph: (who) => `A pH suits each two of ${who}, with room to spare.`,
      "general-hardness": (who) => `A general hardness suits each two of ${who}, with room to spare.`,
      salinity: (who) => `A salinity suits each two of ${who}.`,
      flow: (who) => `A current suits each two of ${who}.`,
    },
    otherRule: (id, { from, to }) =>
      [id, [from, to].filter(Boolean).join(" and ")].filter(Boolean).join(": "),
    signs: {
      "torn fins": (whom) => `torn fins: ${whom}.`,
      hiding: (whom) => `hiding all day: ${whom}.`,
      "missing animals": (whom) => `animals that are missing: ${whom}.`,
      "thin animals": (whom) => `thin animals: ${whom}.`,
      chasing: (whom) => `chasing that does not end: ${whom}.`,
      gasping: (whom) => `gasping at the surface${whom && `: ${whom}`}.`,
      "eggs or young": (whom) => `eggs or young: ${whom}.`,
    },
    conditions: {
      "tank.longestRun": ({ wanted }) => `the tank is ${wanted} long`,
      "tank.footprint": ({ wanted }) => `the floor has ${wanted}`,
      "tank.height": ({ wanted }) => `the tank is ${wanted} high`,
      "tank.openWater": ({ wanted }) => `${wanted} of the tank, seen from above, is free to swim in`,
      "tank.substrate": ({ words }) => `the ground is ${anyOf(words.map((word) => spaced(String(word))))}`,
      "tank.hides": ({ of, wanted }) => `${of} finds ${wanted} places to hide, sleep or spawn in`,
      "tank.openSurface": ({ wanted }) =>
        `${wanted} of the surface stays free of leaves, with air between water and lid`,
      "tank.sightBreaks": ({ wanted, min }) =>
        `roots, stones or thickets break the line of sight over the ground in ${wanted} ${min === 1 ? "place" : "places"}`,
      // Eight weeks: the end of ripening in `filterCapacity`. The foam: media tables, from memory (see `PlannedFilter`).
      "tank.filter.ripeArea": ({ wanted, figure }) =>
        `the filter has run for eight weeks and holds ${wanted} of media (a litre of coarse foam has about ${figure({ value: 1, unit: "m2" })})`,
      "tank.lid": () => "the tank is covered without a gap",
      "tank.cover": ({ wanted }) => `${wanted} of the tank, seen from above, is cover`,
      "tank.plants": ({ words }) =>
        words.includes("none") ? "there are no plants to lose" : "the plants have grown in",
      "tank.flow.calmest": ({ words }) => `some place has no more than ${words.at(-1)} current`,
      "tank.flow.strongest": ({ words }) => `some place has at least ${words[0]} current`,
      "water.temperature": ({ wanted }) => `the water is kept at ${wanted}`,
      "water.hottest": ({ wanted }) => `the water on the hottest day is ${wanted}`,
      "water.coolest": ({ wanted }) => `the water in the coolest season is ${wanted}`,
      "water.pH": ({ wanted }) => `the pH is ${wanted}`,
      "water.generalHardness": ({ wanted }) => `the general hardness is ${wanted}`,
      "water.salinity": ({ wanted }) => `the salinity is ${wanted}`,
      "group.count": (told) =>
        told.max === undefined ? `${told.wanted} ${told.of} are kept` : noMoreThan(told, told.of),
      "group.males": (told) => noMoreThan(told, `male ${told.of}`),
      "group.females": (told) => noMoreThan(told, `female ${told.of}`),
      "group.pairs": ({ of }) => `all ${of} are of one sex, so that none breeds`,
      "group.femalesPerMale": ({ of, wanted }) => `each male ${of} has ${wanted} females`,
      "group.length": ({ of, wanted, max, figure }) =>
        max === undefined
          ? `every ${of} measures ${wanted}`
          : `no ${of} grows beyond ${figure({ value: max, unit: "cm" })}`,
      "group.longFins": ({ of }) => `a short-finned form takes the place of this ${of}`,
      "group.sex": ({ of, words }) => `all ${of} are ${words.join(" or ")}`,
      "group.form": ({ of, words }) =>
        `the form of ${of} is ${anyOf(words.map((word) => spaced(String(word))))}`,
      "group.grown": ({ of }) => `only young ${of} are kept, and move out before they are grown`,
      "group.offerings": (told) => fedWith(told),
      "group.company": ({ of }) => `calm fish that neither eat nor are eaten by ${of} swim in the open water`,
    },
    worksIf: (condition) => `Works if ${condition}.`,
    basis,
    support: (of) => (of === "published" ? "" : ` (${basis[of]})`),
    traits: labelled(),
    open: {
      missing: (trait, of) => `${of}: ${trait} is not known`,
      disputed: (trait, of) => `${of}: sources differ on ${trait}`,
      notGiven: (input, of) =>
        [of, `the plan does not say: ${facts[input].label}`].filter(Boolean).join(": "),
      outsideDomain: (of) => `${of || "the tank"}: outside the range in which the equation holds`,
      individual: (of) => `${of}: individuals differ, and nobody can tell in advance`,
      couldBe: (question, weight) => `${question}; ${couldBe[weight]}.`,
      further: (count) => `${count} less decisive ${count === 1 ? "question is" : "questions are"} open.`,
    },
    metSummary: (count) => `${count} further ${count === 1 ? "requirement is" : "requirements are"} met.`,
    closing: "Advice about typical animals; individuals vary. Watch them, and have a second tank ready.",
    ranges: {
      atLeast: (min, unit) => `at least ${min}${unit}`,
      atMost: (max, unit) => `at most ${max}${unit}`,
      between: (min, max, unit) => `${min} to ${max}${unit}`,
    },
    units: {
      "%": "%",
      cm: "cm",
      cm2: "cm²",
      m2: "m²",
      L: "L",
      kg: "kg",
      in: "in",
      in2: "sq in",
      ft2: "sq ft",
      lb: "lb",
      "gal-us": "US gal",
      "gal-imp": "imp gal",
      degC: "°C",
      degF: "°F",
      dH: "°dH",
      "g/kg": "g/kg",
      "mg/L": "mg/L",
      "mg/d": "mg a day",
      h: "hours",
      d: "days",
      a: "years",
      "kN/m2": "kN/m²",
      "lb/ft2": "lb/sq ft",
    },
    words: spelled(),
    profile: {
      columns: ["trait", "value", "also said", "support"],
      sections: {
        origin: "Origin",
        size: "Size",
        water: "Water",
        space: "Space",
        temperament: "Temperament",
        social: "Social",
        appearance: "Appearance",
        diet: "Diet",
        predation: "Predation",
        reproduction: "Reproduction",
        effects: "Effects",
        care: "Care",
      },
      yes: "yes",
      no: "no",
      none: "none",
      figure: (span, meaning) => (meaning ? `${meaning} ${span}` : span),
      length: (size, { measure, as, sex }) =>
        `${size} ${measure === "unstated" ? "measure unstated" : measure} (${[as, sex].filter(Boolean).join(", ")})`,
      values: {
        "origin.conservation": ({ status, year }) => [status, year && `(${year})`].filter(Boolean).join(" "),
        "size.lengthWeight": ({ a, b }) => `${a} × length ^ ${b}`,
        "water.flow": ({ min, max }) => (min === max ? min : `${min} to ${max}`),
        "water.airBreathing": ({ kind, from }) => [kind, from && `from ${from}`].filter(Boolean).join(" "),
        "size.lifespan": ({ usual, greatest }, size) =>
          [usual && size(usual), greatest && `at most ${size(greatest)}`].filter(Boolean).join(", "),
        "space.baseLength": (needed, size) => `${size(needed.least)} for ${needed.for}`,
        "space.footprint": (needed, size) => `${size(needed.least)} for ${needed.for}`,
        "space.hides": ({ anyOf, each, holder }) =>
          `${anyOf.map(spaced).join(" or ")}, ${each} for ${holders[holder]}`,
        "space.territory": (held, size) =>
          held === "none" ? held : `${size(held.area)}, ${held.zone}, held by ${holders[held.holder]}`,
        "social.group": ({ least, avoid }) =>
          [`at least ${least}`, avoid && `not ${avoid.min} to ${avoid.max}`].filter(Boolean).join(", "),
        "appearance.looks": ({ tag, sex }) => [spaced(tag), sex && `(${sex})`].filter(Boolean).join(" "),
        "temperament.acts": ({ doer, does, target, when, from }) =>
          [
            doer,
            spaced(does),
            spaced(target),
            when && when !== "always" && `(${spaced(when)})`,
            from && `from ${from}`,
          ]
            .filter(Boolean)
            .join(" "),
        "predation.eats": ({ prey, greatest }, size) =>
          [prey, greatest && `up to ${size(greatest)}`].filter(Boolean).join(" "),
      },
    },
  };
}
