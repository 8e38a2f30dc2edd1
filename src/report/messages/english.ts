import { traitTable } from "../../species";
import type { Messages, Told } from "./messages";

const sharedWater = (figure: string) => (told: Told) => {
  const each = `${told.from} needs ${told.measure("from")}, ${told.to} ${told.measure("to")}`;
  if (told.weight === "favourable") return `Both are kept at a ${figure} of ${told.measure("shared")}.`;
  if (told.measure("shared")) return `${each}: only a ${figure} of ${told.measure("shared")} suits both.`;
  if (told.weight === "restricting") return `${each}: the ranges do not meet, but the gap is narrow.`;
  return `${each}: no ${figure} suits both.`;
};

const seasons: Readonly<Record<string, string>> = {
  hottest: " on the hottest day",
  coolest: " in the coolest season",
};

const plannedWater = (figure: string) => (told: Told) => {
  const season = seasons[String(told.value("season"))] ?? "";
  const kept = `${told.from} needs a ${figure} of ${told.measure("kept")}; planned is ${told.measure("planned")}${season}.`;
  const limit = told.measure("limit");
  return limit ? `${kept} Past its limit (${limit}) it suffers or dies.` : kept;
};

const deeds: Readonly<Record<string, string>> = {
  chases: "chases",
  bites: "bites",
  kills: "kills",
  "rasps-mucus": "rasps the slime coat of",
  "robs-food": "takes food from",
};

const occasions: Readonly<Record<string, string>> = {
  always: "",
  breeding: " while it breeds",
  "guarding-brood": " while it guards eggs or young",
  feeding: " at food",
  crowded: " when the other cannot get out of sight",
};

const act = (whom: (told: Told) => string) => (told: Told) => {
  const deed = deeds[String(told.value("act"))] ?? "harms";
  const doer = told.value("doer");
  const who = doer ? `a ${doer} ${told.from}` : told.from;
  const once = told.value("once") === "grown" ? "once grown, " : "";
  return `${once}${who} ${deed} ${whom(told)}${occasions[String(told.value("when"))] ?? ""}.`;
};

const holders: Readonly<Record<string, (who: string) => string>> = {
  male: (who) => `each male ${who}`,
  female: (who) => `each female ${who}`,
  pair: (who) => `a breeding pair of ${who}`,
  each: (who) => `each ${who}`,
};

const parts: Readonly<Record<string, string>> = {
  surface: "near the surface",
  midwater: "in open water",
  bottom: "on the ground",
};

const whereabouts = (zone: string | number | undefined) =>
  parts[String(zone)] ?? "in the same part of the tank";

/** `no more than 1 male swordtail is kept`, `no male swordtail is kept`. */
const noMoreThan = (most: number | undefined, what: string) => {
  if (most === 0) return `no ${what} is kept`;
  return `no more than ${most} ${what} ${most === 1 ? "is" : "are"} kept`;
};

/** The report in English. */
export const english: Messages = {
  outcome: {
    suitable: "Suitable: nothing speaks against it.",
    conditional: "Conditional: it works if the conditions below are met.",
    unsuitable: "Unsuitable: do not keep this together.",
    undetermined: "Undetermined: something essential is not known.",
  },
  bounds: (atBest, atWorst) => `With what is not certain, the answer lies between ${atBest} and ${atWorst}.`,
  titles: {
    parties: "Animals",
    blocking: "Why not",
    restricting: "Conditions",
    besides: "Besides",
    advisory: "Worth knowing",
    favourable: "In favour",
    met: "Already met",
    open: "Not certain",
    cautions: "Take care",
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
    "territory-contest": ({ from, to, value }) =>
      `${from} and ${to} both defend a place ${whereabouts(value("zone"))}.`,
    "size-and-pace": ({ from, to, measure }) =>
      `${from}, quick and ${measure("longer")} long, pushes aside ${to} of ${measure("shorter")}.`,
    "feeding-competition": ({ from, to }) => `${from} has eaten before ${to} gets to the food.`,
    shyness: ({ from, to }) => `the bustle of ${to} keeps ${from} in hiding.`,
    interbreeding: ({ from, to }) => `Males of ${from} and females of ${to} have hybrid young.`,
    "water-temperature": plannedWater("temperature"),
    "water-ph": plannedWater("pH"),
    "water-hardness": plannedWater("general hardness"),
    "water-salinity": plannedWater("salinity"),
    oxygen: (told) => oxygen(told),
    "filter-nitrogen": ({ measure }) =>
      `Grown and fed plenty, the animals give off ${measure("nitrogen")} of ammonia nitrogen, which a ripe filter takes up.`,
    height: ({ from, measure }) =>
      `${from} needs a tank ${measure("needed")} high; this one measures ${measure("planned")}.`,
    zones: ({ from, measure, value }) =>
      `${from} shares its place ${whereabouts(value("zone"))}: all that live there need a floor of ${measure("needed")}; this one has ${measure("planned")}.`,
    territories: ({ from, value, measure }) =>
      `${holders[String(value("holder"))]?.(from) ?? from} defends ${measure("area")} ${whereabouts(value("zone"))}; ${value("held")} such places are held here.`,
    "open-water": ({ from, measure }) => `${from} needs ${measure("needed")} of the plan area to swim in.`,
    "plants-at-risk": ({ from, value }) => `${from} ${plantDeeds[String(value("does"))] ?? "harms plants"}.`,
    feeding: ({ from, measure }) =>
      `${from} feeds ${worded(measure("places"), feedingPlaces)}, ${worded(measure("hours"), feedingHours)}: what others are given may not reach it.`,
    "longest-run": ({ from, measure }) =>
      `${from} needs a tank ${measure("needed")} long; this one measures ${measure("planned")}.`,
    footprint: ({ from, measure, weight }) =>
      weight === "blocking"
        ? `${from} grows to ${measure("length")} and cannot turn in a tank ${measure("width")} wide.${outgrowsTank(measure)}`
        : `This group of ${from} needs a floor of ${measure("needed")}; this one has ${measure("planned")}.`,
    "group-size": ({ from, measure }) =>
      `${from} is kept in a group of ${measure("needed")}; planned: ${measure("planned")}.`,
    "sex-ratio": ({ from, measure }) => `${from} needs ${measure("needed")} females to each male.`,
    cover: ({ from, measure }) => `${from} needs cover over ${measure("needed")} of the plan area.`,
    plants: ({ from }) => `${from} does well only among plants that have grown in.`,
    "settling-company": ({ from }) => `${from} is shy and comes out beside calm fish in the open water.`,
    lid: ({ from, weight }) =>
      weight === "restricting"
        ? `${from} leaves the water of an open tank.`
        : `${from} may jump when it is frightened.`,
    "flow-places": ({ from, measure }) =>
      `${from} needs a place with ${currentText(measure("calmest"), measure("strongest"))} current.`,
    "caution-floor": ({ measure }) =>
      `Filled with ${measure("volume")} of water, the tank weighs ${measure("mass")} or more, gravel and stand not counted: ${measure("load")} on its footprint. Whether a floor carries that is for a structural engineer to say.`,
    "caution-electricity": () =>
      "Water and electricity: use a residual-current device, let cables hang in a loop below the socket, pull the plugs before a hand goes in. Follow the local wiring rules; have work done by a licensed electrician.",
    "caution-hazards": ({ from, value }) =>
      hazards[String(value("hazard"))]?.(from) ?? `Can hurt a person: ${from}.`,
    "caution-zoonoses": () =>
      "Fish and their water can carry germs that infect people. Wash hands, keep cuts out of the water, and ask a doctor if a wound does not heal.",
    "caution-law": ({ from, value }) =>
      `${from}, ${value("jurisdiction")}: ${value("effect")} (${value("instrument")}; ${value("date")}${value("basis") ? "; recalled, not read" : ""}.) The text in force decides.`,
    "caution-release": () =>
      "Never release animals, plants or tank water outdoors. Rehome them, or ask a vet about humane killing.",
  },
  otherRule: (id, { from, to }) => [id, [from, to].filter(Boolean).join(" and ")].filter(Boolean).join(": "),
  conditions: {
    "tank.longestRun": ({ wanted }) => `the tank is ${wanted} long`,
    "tank.footprint": ({ wanted }) => `the floor has ${wanted}`,
    "tank.height": ({ wanted }) => `the tank is ${wanted} high`,
    "tank.openWater": ({ wanted }) => `${wanted} of the plan area is free to swim in`,
    "tank.openSurface": ({ wanted }) =>
      `${wanted} of the surface stays free of leaves, with air between water and lid`,
    "tank.sightBreaks": ({ wanted }) =>
      `roots, stones or thickets break the line of sight over the ground in ${wanted} places`,
    // Eight weeks: the end of ripening in `filterCapacity`. The foam: media tables, from memory (see `PlannedTank.filter`).
    "tank.filter.ripeArea": ({ wanted }) =>
      `the filter has run for eight weeks and holds ${wanted} of media (a litre of coarse foam has about 1 m²)`,
    "tank.lid": () => "the tank is covered without a gap",
    "tank.cover": ({ wanted }) => `${wanted} of the plan area is cover`,
    "tank.plants": ({ choices }) =>
      choices.includes("none") ? "there are no plants to lose" : "the plants have grown in",
    "tank.flow.calmest": ({ choices }) => `some place has no more than ${choices.at(-1)} current`,
    "tank.flow.strongest": ({ choices }) => `some place has at least ${choices[0]} current`,
    "water.temperature": ({ wanted }) => `the water is kept at ${wanted}`,
    "water.hottest": ({ wanted }) => `the water on the hottest day is ${wanted}`,
    "water.coolest": ({ wanted }) => `the water in the coolest season is ${wanted}`,
    "water.pH": ({ wanted }) => `the pH is ${wanted}`,
    "water.generalHardness": ({ wanted }) => `the general hardness is ${wanted}`,
    "water.salinity": ({ wanted }) => `the salinity is ${wanted}`,
    "group.count": ({ of, wanted, most }) =>
      most === undefined ? `${wanted} ${of} are kept` : noMoreThan(most, of),
    "group.males": ({ of, most }) => noMoreThan(most, `male ${of}`),
    "group.females": ({ of, most }) => noMoreThan(most, `female ${of}`),
    "group.pairs": ({ of }) => `all ${of} are of one sex, so that none breeds`,
    "group.femalesPerMale": ({ of, wanted }) => `each male ${of} has ${wanted} females`,
    "group.length": ({ of, wanted, most }) =>
      most === undefined
        ? `every ${of} measures ${wanted}`
        : `no ${of} grows beyond ${wanted.replace("at most ", "")}`,
    "group.longFins": ({ of }) => `a short-finned form takes the place of this ${of}`,
    "group.grown": ({ of }) => `only young ${of} are kept, and move out before they are grown`,
    "group.offerings": ({ of, choices }) => fedWith(of, choices),
    "group.company": ({ of }) => `calm fish that neither eat nor are eaten by ${of} swim in the open water`,
  },
  worksIf: (condition) => `Works if ${condition}.`,
  basis: {
    published: "published",
    curated: "weighed from several sources",
    memory: "recalled, source not read",
    "common-practice": "common practice",
  },
  traits: Object.fromEntries(Object.entries(traitTable).map(([path, { label }]) => [path, label])),
  missing: (trait, of) => `${of}: ${trait} is not known`,
  disputed: (trait, of) => `${of}: sources differ on ${trait}`,
  notGiven: (input) => `the plan does not say: ${inputs[input] ?? input}`,
  outsideDomain: (of) => `${of || "the tank"}: outside the range in which the equation holds`,
  couldBe: {
    blocking: "could rule it out",
    restricting: "could set a condition",
    advisory: "worth knowing",
    favourable: "in favour",
  },
  furtherOpen: (count) => `${count} less decisive ${count === 1 ? "question is" : "questions are"} open.`,
  metSummary: (count) => `${count} further ${count === 1 ? "requirement is" : "requirements are"} met.`,
  sexes: (males, females) =>
    [males > 0 && `${males} male`, females > 0 && `${females} female`].filter(Boolean).join(", "),
  list: (names) => [names.slice(0, -1).join(", "), names.at(-1)].filter(Boolean).join(" and "),
  closing: "Advice about typical animals; individuals vary. Watch them, and have a second tank ready.",
};

const inputs: Readonly<Record<string, string>> = {
  "tank.lid": "whether the tank is covered",
  "tank.cover": "the share of cover",
  "tank.plants": "how the tank is planted",
  "tank.openWater": "the share free to swim in",
  "tank.openSurface": "the share of open surface",
  "tank.sightBreaks": "what breaks the line of sight",
  "tank.filter.ripeArea": "the filter and how long it has run",
  "tank.flow.calmest": "the calmest current",
  "tank.flow.strongest": "the strongest current",
  "group.males": "how many are male",
  "group.females": "how many are female",
  "group.pairs": "how many are male and female",
  "group.femalesPerMale": "how many are male and female",
  "group.length": "how long the animals are",
  "group.longFins": "whether the form has long fins",
  "group.company": "whether its company is calm",
  "group.offerings": "what is fed, where and when",
};

const hazards: Readonly<Record<string, (who: string) => string>> = {
  venom: (who) =>
    `Venom: ${who}. After a sting seek medical care at once; only for trained hands, and never handled bare.`,
  spines: (who) =>
    `Spines that wound: ${who}. No bare hand, no fine net. A wound that swells or does not heal is for a doctor.`,
  bite: (who) => `Bites: ${who}. Keep hands out of reach; a deep wound is for a doctor.`,
  shock: (who) => `Electric shocks that a person feels: ${who}. Keep hands out of the water.`,
};

function predation(told: Told): string {
  const { from, weight, measure, value } = told;
  const hunts = value("hunts") === "night" && value("defence") === undefined ? " It hunts by night." : "";
  const spines = value("defence") === "spines" ? ` Its spines can choke ${from}.` : "";
  return meal(told) + grownUp(told) + (weight === "advisory" || !measure("prey") ? "" : hunts + spines);
}

function meal({ from, to, weight, measure, value }: Told): string {
  if (value("of") === "egg") return `${from} feeds by night and eats the eggs that ${to} guards.`;
  if (measure("greatestPrey"))
    return `${from} eats animals up to ${measure("greatestPrey")}; ${to} measures ${measure("prey")}.`;
  if (!measure("share"))
    return weight === "blocking" ? `${from} eats ${to}.` : `${from} eats the young of ${to}.`;
  const likely = weight === "blocking" ? "will very likely be" : "may be";
  const grows = measure("today") ? "grows to" : "measures up to";
  return `${to}, ${measure("prey")} long, ${likely} eaten by ${from}, which ${grows} ${measure("hunter")}.`;
}

const outgrowsTank = (measure: Told["measure"]) =>
  measure("today") && ` Now ${measure("today")} long, it fits only until it measures ${measure("turnsAt")}.`;

/** What changes while one of the two grows. */
function grownUp({ from, to, measure }: Told): string {
  if (measure("safeFrom")) return ` From ${measure("safeFrom")} on ${to} is safe.`;
  if (!measure("today")) return "";
  const turns = measure("turnsAt") && `, at about ${measure("turnsAt")}`;
  return ` Now ${measure("today")} long, ${from} goes with ${to} only until it can swallow it${turns}.`;
}

function oxygen({ from, measure, value }: Told): string {
  if (value("air")) return `${from} drowns unless it can take air at the surface.`;
  const hours = measure("hours");
  if (!hours) return `${from} needs much oxygen and suffers as soon as the water stands still.`;
  return `at ${measure("temperature")} water holds ${measure("saturation")} of oxygen; if it stands still, this stock has used it down to ${measure("limit")}, the least for ${from}, within ${hours}.`;
}

const plantDeeds: Readonly<Record<string, string>> = {
  eats: "eats plants",
  uproots: "pulls plants out",
  digs: "digs, so that plants loosen",
};

/** `surface, bottom`: `at the surface and on the ground`. */
const worded = (list: string, words: Readonly<Record<string, string>>) =>
  list
    .split(", ")
    .map((word) => words[word] ?? word)
    .join(" and ");

const feedingPlaces: Readonly<Record<string, string>> = {
  surface: "at the surface",
  midwater: "in midwater",
  bottom: "on the ground",
};

const feedingHours: Readonly<Record<string, string>> = {
  day: "by day",
  dusk: "at dusk",
  night: "after dark",
};

/** `neon tetra is given frozen food`, `food reaches neon tetra after dark, or where the quicker ones do not get at it`. */
function fedWith(of: string, choices: readonly string[]): string {
  const ways = choices.map((choice) => feedingPlaces[choice] ?? feedingHours[choice] ?? otherWays[choice]);
  const given = choices
    .filter((_, index) => ways[index] === undefined)
    .map((choice) => foods[choice] ?? choice);
  const reached = ways.filter((way) => way !== undefined);
  return [
    given.length > 0 && `${of} is given ${anyOf(given)}`,
    reached.length > 0 && `food reaches ${of} ${anyOf(reached)}`,
  ]
    .filter(Boolean)
    .join(", or ");
}

const otherWays: Readonly<Record<string, string>> = { apart: "where the quicker ones do not get at it" };

const anyOf = (choices: readonly string[]) =>
  [choices.slice(0, -1).join(", "), choices.at(-1)].filter(Boolean).join(" or ");

const foods: Readonly<Record<string, string>> = {
  dry: "dry food",
  frozen: "frozen food",
  live: "live food",
  "fallen-insects": "insects on the surface",
};

function currentText(calmest: string, strongest: string): string {
  return calmest === strongest ? calmest : `${calmest} to ${strongest}`;
}
