import type { Measures, WordKind, Words } from "../../compatibility";
import type { PlannedWaterRule } from "../../compatibility/inner";
import { factLabels } from "../../plan/inner";
import type { Figure } from "../figure";
import type { ActRule } from "../matters/acts";
import type { SharedWaterRule } from "../matters/water-rules";
import { allOf, anyOf, their, them, they, verb } from "./english-grammar";
import { deeds, feedingHours, grounds, occasions, parts, places, plantHarm, ranges } from "./english-words";
import type { Messages, Told, ToldRoom } from "./messages";
import { beyond, isMeasurable, isUpperEnd, isVeryHeavy, isWhole, spaced, square, upwards } from "./sentences";

type WordOf<Kind extends WordKind> = { readonly value: Words[Kind] } | undefined;

/** How a figure of each kind of water is said. */
const at = {
  temperature: (figure: string) => figure,
  pH: (figure: string) => `a pH of ${figure}`,
  hardness: (figure: string) => `a hardness of ${figure}`,
  salinity: (figure: string) => `a salinity of ${figure}`,
};

function sharedWater(water: keyof typeof at) {
  return ({ weight, from, fromMany, to, oneKind, measures, figure }: Told<Measures[SharedWaterRule]>) => {
    const shared = at[water](figure(measures.shared));
    if (weight === "favourable") return `${shared} ${oneKind ? `suits ${to}` : `suits ${from} and ${to}`}.`;
    const each =
      `${from} ${verb(fromMany, "is", "are")} kept at ${at[water](figure(measures.from))}, ${to} at ${figure(measures.to)}`.replaceAll(
        " at at ",
        " at ",
      );
    if (weight === "restricting") {
      return measures.shared ? `${each}.` : `${each}: one end has to give way a little.`;
    }
    if (weight === "blocking" && measures.shared)
      return `${each}: they share only ${shared}, which one bears but does not thrive in.`;
    return weight === "blocking"
      ? `${each}: no ${water} suits both.`
      : `${each}: whether both can be kept at one ${water} nobody has said.`;
  };
}

function plannedWater(water: keyof typeof at) {
  return ({ weight, from, fromMany, measures, figure }: Told<Measures[PlannedWaterRule]>) => {
    const { kept, optimum, planned, hottest, coolest, limit } = measures;
    const known = planned ?? hottest ?? coolest;
    const season = (hottest && " on the hottest day") ?? (coolest && " in the coolest season") ?? "";
    const plan = known ? `; yours is ${figure(known, kept)}${season}` : "";
    if (optimum)
      return `${from} ${verb(fromMany, "does", "do")} best at ${at[water](figure(optimum))}${plan}.`;
    const text = `${from} ${isUpperEnd(kept) ? verb(fromMany, "bears", "bear") : verb(fromMany, "needs", "need")} ${at[water](figure(kept, known))}${plan}`;
    if (weight === "advisory" && season) return `${text}, which will do for a while, not for good.`;
    if (weight === "advisory") return `${text}, at the edge of what ${they(fromMany)} can take for long.`;
    return limit
      ? `${text}; ${beyond(limit, figure, ranges)} ${they(fromMany)} ${verb(fromMany, "suffers or dies", "suffer or die")}.`
      : `${text}.`;
  };
}

const yours = (is: string, figure: string) => figure && `; yours ${is} ${figure}`;

/** Animals of one sex among those named; of one animal its name. */
const sexed = (sex: Words["sex"] | undefined, who: string, many: boolean) =>
  sex && many ? `${sex} ${who}` : who;

type Harming = Pick<Told<unknown>, "fromMany" | "ownToo" | "oneKind" | "to">;

/** Others, and whom they stand beside of the kind of those that harm them, if these are harmed too. */
const ownToo = ({ fromMany, ownToo: isOwnToo }: Pick<Harming, "fromMany" | "ownToo">, others: string) =>
  isOwnToo ? `${their(fromMany)} own kind${others.includes(" and ") ? "," : " and"} ${others}` : others;

/** Whom some harm: their own kind, others, or both. */
const harmed = (told: Harming) => (told.oneKind ? `${their(told.fromMany)} own kind` : ownToo(told, told.to));

function act(whom: (told: Told<Measures[ActRule]>) => string) {
  return (told: Told<Measures[ActRule]>) => {
    const { act: deed, doer, once, when } = told.measures;
    const { from, fromMany: many, again } = told;
    const [harms, harm] = deed ? deeds[deed.value] : ["harms", "harm"];
    const who = sexed(doer?.value, from, many);
    const harmed = ownToo(told, whom(told));
    const isAnyway = deed?.value === "robs-food" || (told.weight === "blocking" && when?.value === "crowded");
    const occasion = when && !isAnyway ? verb(many, ...occasions[when.value]) : "";
    const isLasting = told.weight === "blocking" && deed?.value === "chases";
    const lasting = isLasting ? `, which cannot get away from ${them(many)}` : "";
    return `${once ? "once grown, " : ""}${again ? `${they(many)} also` : who} ${verb(many, harms, harm)} ${harmed}${occasion}${lasting}.`;
  };
}

/** `male oscars each defend`, `the oscar defends`, `a breeding pair of oscars defends`. */
function holder(of: WordOf<"territoryHolder">, who: string, many: boolean): string {
  if (!many) return `${who} defends`;
  if (of?.value === "pair") return `each breeding pair of ${who} defends`;
  return `${of && of.value !== "each" ? `${of.value} ` : ""}${who} each defend`;
}

const whereabouts = (zone: WordOf<"zone">) => (zone ? parts[zone.value] : "in the same part of the tank");

/** What the spines of a family are like. */
const spinesOf: Readonly<Record<string, string>> = {
  Botiidae: "one folds out under each eye",
  Cobitidae: "one folds out under each eye",
  Loricariidae: "on cheeks and fins",
  Callichthyidae: "a prick smarts, and the family has venom glands",
};

/** Catfishes whose sting hurts for hours; what else has venom is for trained hands. */
const stinging: ReadonlySet<string> = new Set(["Clariidae", "Mochokidae", "Pimelodidae"]);

export const hazards: Messages["hazards"] = (hazard, of) => {
  const named = allOf(of.map(({ who }) => who));
  if (hazard === "bite") return `Bites: ${named}. Keep hands out of reach; a deep wound is for a doctor.`;
  if (hazard === "shock")
    return `Electric shocks that a person feels: ${named}. Keep hands out of the water.`;
  if (hazard === "spines") {
    const told = of.map(({ who, family }) => {
      const like = Object.hasOwn(spinesOf, family) && spinesOf[family];
      return like ? `${who} (${like})` : who;
    });
    return `Spines: ${allOf(told)}. Use a tub, not hand or net; a wound that hurts badly, swells or does not heal is for a doctor.`;
  }
  const trained = of.every(({ family }) => stinging.has(family)) ? "" : "only for trained hands, ";
  return `Venom: ${named}; ${trained}never to be touched with bare hands. After a sting seek medical care at once, and call emergency help if breathing, chest or heart are affected.`;
};

/** How long those are that are measurably long. */
const shownLength = (length: Figure | undefined, figure: (length: Figure | undefined) => string) =>
  isMeasurable(length) ? ` of ${figure(length)}` : "";

function predation(told: Told<Measures["predation"]>): string {
  const { from, fromMany, to, toMany, oneKind, weight, measures, figure } = told;
  const { of, prey, hunter, greatestPrey, safeFrom, hunts, defence } = measures;
  const eats = verb(fromMany, "eats", "eat");
  if (of?.value === "egg" && weight === "restricting") return `${from} ${eats} the eggs of ${to}.`;
  if (of?.value === "egg")
    return `${from} ${verb(fromMany, "feeds", "feed")} by night and may eat the eggs that ${to} ${verb(toMany, "guards", "guard")}.`;
  if (of)
    return oneKind || from === to
      ? `${from} ${eats} ${their(fromMany)}${oneKind ? " own" : ""} young.`
      : `${from} ${eats} the young of ${to}.`;
  const takes = greatestPrey
    ? `${verb(fromMany, "takes", "take")} prey of up to about ${figure(greatestPrey)}`
    : hunter && `${verb(fromMany, "grows", "grow")} to ${figure(hunter)}`;
  if (safeFrom) {
    const tooLarge = `; those of ${figure(upwards(safeFrom))} are too large`;
    if (oneKind) return `${from} ${eats} ${their(fromMany)} own kind while it is small${tooLarge}.`;
    const isNamed = !toMany || /(^| )the /.test(to);
    const whileSmall = `${to} while ${they(toMany)} ${verb(toMany, "is", "are")} small`;
    const small = prey ? `${to} of ${figure(prey)}` : isNamed ? whileSmall : `small ${to}`;
    return `${told.fromNow && "once grown, "}${from} ${eats} ${small}${tooLarge}.`;
  }
  const size = prey && `${to} ${verb(toMany, "measures", "measure")} ${figure(prey)}`;
  const why = [takes && `${they(fromMany)} ${takes}`, size].filter(Boolean).join(", and ");
  if (oneKind && weight === "advisory")
    return `${from} may try to eat ${their(fromMany)} own kind, and some do.`;
  const night = hunts && !defence ? " by night" : "";
  const spines = defence ? `; the spines of ${to} can choke ${them(fromMany)}` : "";
  const later =
    told.fromNow &&
    `; bought at ${told.fromNow}, ${they(fromMany)} ${verb(fromMany, "seems", "seem")} harmless; grown, ${they(fromMany)} ${verb(fromMany, "is", "are")} not`;
  if (weight !== "advisory") return `${from} ${eats} ${to}${night}${why && `: ${why}`}${spines}${later}.`;
  const stated = greatestPrey
    ? `prey of about ${figure(greatestPrey)} is the largest that is told of`
    : hunter && `${they(fromMany)} ${verb(fromMany, "grows", "grow")} to ${figure(hunter)}`;
  const known = [stated, size].filter(Boolean).join(", and ");
  return `${from} may try to eat ${to}${night}, and some do${known && `: ${known}`}${spines}.`;
}

function footprint({ from, fromMany, weight, measures, figure }: Told<Measures["footprint"]>): string {
  const { length, width, needed, planned } = measures;
  if (length)
    return `${from} ${verb(fromMany, "grows", "grow")} to ${figure(length)} and cannot turn in a tank ${figure(width)} wide.`;
  const text = `${from} ${verb(fromMany, "needs", "need")} a floor of ${figure(needed, planned)}${yours("has", figure(planned, needed))}.`;
  if (weight === "advisory") return `${text} ${hardlyLess}`;
  return weight === "blocking" ? `This tank is far too small: ${text}` : text;
}

/** Of room that falls short by less than the figures can tell. */
const hardlyLess = "That is hardly less, and more would be better.";

/** `goldfish need a tank of about 150 × 60 cm; yours is 30 × 20 cm`. */
export function room({ weight, who, many, growing, grownTo, ...told }: ToldRoom): string {
  const { neededSides, exampleSides, neededLength, neededFloor, ownSides, ownLength, ownFloor } = told;
  const needed = neededSides
    ? `a tank of about ${neededSides}`
    : neededFloor
      ? `a floor as large as ${exampleSides}`
      : `a tank at least ${neededLength} long`;
  const own =
    ownSides && neededFloor ? `; yours is ${ownSides}` : yours("is", neededFloor ? ownFloor : ownLength);
  const needs = `${verb(many, "needs", "need")} ${needed}${own}.`;
  const size = growing ? ["grown", grownTo].filter(Boolean).join(" to ") : grownTo && `${grownTo} long`;
  const grown = [size, they(many)].filter(Boolean).join(", ");
  if (weight === "blocking") return `This tank is far too small for ${who}: ${grown} ${needs}`;
  if (!who) return `have ${needed}${own}`;
  return growing ? `${who} will outgrow this tank: ${grown} ${needs}` : `${who} ${needs}`;
}

function oxygen({ from, fromMany, measures, figure }: Told<Measures["oxygen"]>): string {
  const { air, surface, need, hours, temperature, saturation, limit } = measures;
  if (surface) return `so little open surface lets hardly any oxygen in for ${from}.`;
  if (air)
    return `${from} ${verb(fromMany, "drowns", "drown")} unless ${they(fromMany)} can take air at the surface.`;
  if (hours) {
    return `at ${figure(temperature)} water holds ${figure(saturation)} of oxygen; if it stands still, this stock has used it down to ${figure(limit)}, the least for ${from}, within ${figure(hours)}.`;
  }
  if (need?.value === "high")
    return `${from} ${verb(fromMany, "needs", "need")} much oxygen and ${verb(fromMany, "suffers", "suffer")} as soon as the water stands still.`;
  return `on a hot night ${from} may run short of oxygen in still water.`;
}

const sensitivities: Readonly<Record<Words["sensitivity"], (who: string, many: boolean) => string>> = {
  copper: (who) => `no copper, as in remedies and algae killers, for ${who}.`,
  salt: (who) => `no salt as a remedy for ${who}.`,
  "ammonia-nitrite": (who) => `do not add ${who} before the filter is ripe.`,
  handling: (who) => `move ${who} in a box of water, not in a net.`,
  "soft-water": (who) => `no soft, acid water for ${who}: shells and moults fail in it.`,
};

const groundOf = (words: { readonly value: readonly Words["ground"][] } | undefined) =>
  anyOf((words?.value ?? []).map((word) => grounds[word]));

const labelOf = (fact: string | undefined) =>
  fact !== undefined && Object.hasOwn(factLabels, fact)
    ? factLabels[fact as keyof typeof factLabels]
    : "one fact";

export const lawsSomewhere = (who: string, entries: number) =>
  `Law: ${entries} ${entries === 1 ? "entry, from the law of one place, names" : "entries, from laws of several places, name"} ${who}. Say where your tank stands to read what applies; the text in force decides.`;

/** What is said of the findings of each rule. */
export const findings = (): Messages["rules"] => ({
  temperature: sharedWater("temperature"),
  ph: sharedWater("pH"),
  "general-hardness": sharedWater("hardness"),
  salinity: sharedWater("salinity"),
  season: ({ from, fromMany, to, toMany, measures, figure }) =>
    `${from} ${verb(fromMany, "needs", "need")} ${figure(measures.season)} in the coolest season to thrive, too cold for ${to}${measures.to ? `, which ${verb(toMany, "is", "are")} kept at ${figure(measures.to)}` : ""}.`,
  flow: ({ weight, from, to, oneKind }) => {
    if (weight !== "favourable") return `${from} and ${to} need different currents, each a place of its own.`;
    return oneKind ? `one current suits ${to}.` : `one current suits ${from} and ${to}.`;
  },
  predation: (told) => predation(told),
  "acts-own-kind": (told) => {
    const { inDoubt, from, fromMany, measures } = told;
    const own = `${their(fromMany)} own kind`;
    if (!inDoubt) return act(() => own)(told);
    return `${sexed(measures.doer?.value, from, fromMany)} may not bear ${own}, whatever room ${they(fromMany)} ${verb(fromMany, "has", "have")}.`;
  },
  "acts-look-alike": (told) => {
    const { to, toMany, fromMany, measures } = told;
    const own = `${their(fromMany)} own kind`;
    const like =
      measures.likeness?.value === "build"
        ? `which ${verb(toMany, "is", "are")} built like ${own}`
        : `whose markings or fins are like those of ${own}`;
    return act(() => `${to}, ${like}`)(told);
  },
  "acts-others": act(({ to }) => to),
  "fin-nipping": (told) => {
    const { weight, from, fromMany, measures } = told;
    const to = harmed(told);
    if (measures.hunts)
      return `${from} may bite pieces out of the fins of ${to} that sleep, for ${they(fromMany)} ${verb(fromMany, "is", "are")} about by night.`;
    if (measures.feeds)
      return `${from} may bite pieces out of the fins of ${to}, for ${they(fromMany)} ${verb(fromMany, "feeds", "feed")} ${whereabouts(measures.feeds)} too.`;
    const text = `${from} ${verb(fromMany, "bites", "bite")} pieces out of the fins of ${to}`;
    if (weight === "blocking") return `${text}: choose company that does not nip.`;
    return weight === "advisory" ? `${text} now and then.` : `${text}.`;
  },
  "mucus-grazing": (told) => {
    const { weight, from, fromMany, measures } = told;
    const to = harmed(told);
    if (measures.fed)
      return `${from} may rasp the slime coat off the flanks of ${to} even where ${they(fromMany)} ${verb(fromMany, "is", "are")} well fed.`;
    const text = `${from} ${verb(fromMany, "rasps", "rasp")} the slime coat off the flanks of ${to}`;
    return weight === "advisory" ? `${text} where there is too little to graze.` : `${text}.`;
  },
  "territory-contest": ({ from, to, measures }) =>
    `${from} and ${to} both defend a place ${whereabouts(measures.zone)}.`,
  "size-and-pace": ({ from, fromMany, to, measures, figure }) =>
    `${from}, ${figure(measures.longer)} long, ${verb(fromMany, "leaves", "leave")} ${to}${shownLength(measures.shorter, figure)} no rest.`,
  "feeding-competition": ({ from, fromMany, to, toMany }) =>
    `${from} ${verb(fromMany, "has", "have")} eaten before ${to} ${verb(toMany, "gets", "get")} to the food.`,
  shyness: ({ from, to }) => `the bustle of ${to} keeps ${from} in hiding.`,
  interbreeding: ({ weight, from, fromMany, to }) => {
    const text = `${from} ${verb(fromMany, "crosses", "cross")} with ${to}`;
    return weight === "advisory"
      ? `${text}: pass on no young, or keep only one of them.`
      : `${text}, and their young are hybrids: keep only one of them.`;
  },
  planting: ({ weight, from, fromMany, to, measures }) =>
    `${from} ${verb(fromMany, ...plantHarm[measures.harm?.value ?? "eats"])}, and ${to} cannot do without them${weight === "advisory" ? ": plant tough ferns and moss" : ""}.`,
  furnishing: ({ from, fromMany, to, measures, figure }) => {
    const { cover, openWater } = measures;
    if (cover)
      return `${from} and ${to} together ask for cover over ${figure(cover)} of the tank seen from above and for ${figure(openWater)} free to swim in: no tank has both.`;
    return `${from} ${verb(fromMany, "needs", "need")} ${groundOf(measures.from)} on the ground, ${to} ${groundOf(measures.to)}.`;
  },
  "conditions-exclude": ({ from, to, measures: { one, other } }) => {
    const who = allOf([...new Set([from, to].filter(Boolean))]);
    const asked = [...new Set([labelOf(one?.value), labelOf(other?.value)])];
    return `no tank meets all that is asked${who && ` by ${who}`}: ${allOf(asked)}.`;
  },
  "water-temperature": plannedWater("temperature"),
  "water-ph": plannedWater("pH"),
  "water-hardness": plannedWater("hardness"),
  "water-salinity": plannedWater("salinity"),
  oxygen: (told) => oxygen(told),
  "filter-nitrogen": () => "the filter has to take up the ammonia of the stock, grown and fed plenty.",
  height: ({ weight, from, fromMany, measures, figure }) => {
    const tank = `a tank ${figure(measures.needed, measures.planned)} high${yours("is", figure(measures.planned, measures.needed))}`;
    return weight === "advisory"
      ? `${from} ${verb(fromMany, "does", "do")} better in ${tank}.`
      : `${from} ${verb(fromMany, "needs", "need")} ${tank}.`;
  },
  zones: ({ weight, from, fromMany, measures, figure }) => {
    if (weight === "restricting")
      return `${from} ${verb(fromMany, "shares", "share")} the room ${whereabouts(measures.zone)}, where what each needs adds up.`;
    const text = `${from} ${verb(fromMany, "lives", "live")} ${whereabouts(measures.zone)}, and all that live there need a floor of ${figure(measures.needed, measures.planned)}${yours("has", figure(measures.planned, measures.needed))}.`;
    if (weight === "advisory") return `${text} ${hardlyLess}`;
    return weight === "blocking" ? `This tank is far too small: ${text}` : text;
  },
  territories: ({ from, fromMany, measures, figure }) =>
    `${holder(measures.holder, from, fromMany)} a place of about ${figure(square(measures.area))} ${whereabouts(measures.zone)}, out of sight of rivals.`,
  "open-water": ({ from, fromMany, measures, figure }) =>
    `${from} ${verb(fromMany, "needs", "need")} ${figure(measures.needed)} of the tank, seen from above, free to swim in.`,
  ground: ({ from, fromMany, measures }) =>
    `${from} ${verb(fromMany, "needs", "need")} ${groundOf(measures.needed)} on the ground.`,
  "hiding-places": ({ from, fromMany, measures, figure }) =>
    `${from} ${verb(fromMany, "hides", "hide")} in ${anyOf((measures.kinds?.value ?? []).map(spaced))}: have at least ${figure(measures.needed)} of them${measures.own ? " for all that use them" : ""}.`,
  sensitive: ({ from, fromMany, again, measures }) =>
    sensitivities[measures.to?.value ?? "handling"](again ? them(fromMany) : from, fromMany),
  "plants-at-risk": ({ from, fromMany, measures }) =>
    `${from} ${verb(fromMany, ...plantHarm[measures.harm?.value ?? "eats"])}.`,
  feeding: ({ from, fromMany, measures }) => {
    const at = measures.places?.value.map((place) => places[place]) ?? [];
    const hours = measures.hours?.value.map((hour) => feedingHours[hour]) ?? [];
    return `${from} ${verb(fromMany, "feeds", "feed")} ${allOf(at)}, ${allOf(hours)}: what others are given may not reach ${them(fromMany)}.`;
  },
  "longest-run": ({ from, fromMany, weight, measures, figure }) => {
    const text = `${from} ${verb(fromMany, "needs", "need")} a tank ${figure(measures.needed, measures.planned)} long${yours("is", figure(measures.planned, measures.needed))}.`;
    if (weight === "advisory") return `${text} ${hardlyLess}`;
    return weight === "blocking" ? `This tank is far too short: ${text}` : text;
  },
  footprint: (told) => footprint(told),
  "carbon-dioxide": ({ measures: { pH, hardness, dissolved, limit }, figure }) =>
    `At a pH of ${figure(pH)} and a carbonate hardness of ${figure(hardness)} this water would hold some ${figure(dissolved)} of carbon dioxide; from ${figure(limit)} on fish may gasp: move the surface, and measure both again, for other acids, as of peat, mislead.`,
  "cool-season": ({ from, fromMany, measures, figure }) =>
    `${from} ${verb(fromMany, "needs", "need")} ${figure(measures.season)} in the coolest season to thrive.`,
  "group-size": ({ from, fromMany, weight, measures: { needed, planned, fewer }, figure }) => {
    const { max } = needed as Figure;
    if (weight === "advisory")
      return `${from} live ${max === 1 ? "alone" : `at most ${max} together`}; you plan ${figure(planned)}.`;
    if (fewer)
      return `${from} do badly in a group of ${figure(planned)}: keep ${figure(needed)}, or ${figure(fewer) === "1" ? "one alone" : `no more than ${figure(fewer)}`}.`;
    return `${from} ${verb(fromMany, "needs", "need")} company of ${their(fromMany)} own: keep ${figure(needed)}; you plan ${figure(planned)}.`;
  },
  "sex-ratio": ({ weight, from, measures, figure }) => {
    const needed = figure(measures.needed);
    const text = `keep at least ${needed} ${needed === "1" ? "female" : "females"} to each male of ${from}`;
    return weight === "advisory"
      ? `${text}, once you can tell them apart.`
      : `${text}, or the males wear them out.`;
  },
  "both-sexes": ({ from, measures: { lacking } }) =>
    `young of ${from} are wanted, but no ${lacking?.value ?? "mate"} is planned.`,
  cover: ({ from, fromMany, measures, figure }) =>
    `${from} ${verb(fromMany, "needs", "need")} cover over ${figure(measures.needed)} of the tank, seen from above.`,
  plants: ({ from, fromMany }) =>
    `${from} ${verb(fromMany, "does", "do")} well only among plants that have grown in.`,
  "settling-company": ({ from, fromMany, weight, measures, figure }) => {
    const isShy = `${from} ${verb(fromMany, "is shy and comes", "are shy and come")} out beside calm fish`;
    if (isWhole(measures.cover)) return `${isShy}.`;
    const cover = `cover over ${figure(measures.cover)} of the tank, seen from above, settles`;
    return weight === "advisory"
      ? `${cover} ${from}, more slowly than calm fish in the open water.`
      : `${isShy}; ${cover} ${them(fromMany)} too, more slowly.`;
  },
  lid: ({ from, fromMany, weight }) =>
    weight === "restricting"
      ? `${from} ${verb(fromMany, "leaves", "leave")} an open tank: cover it without a gap.`
      : `${from} may leap when frightened: a lid is safer.`,
  "flow-places": ({ from, fromMany, measures: { calmest, strongest } }) =>
    `${from} ${verb(fromMany, "needs", "need")} a place with ${[...new Set([calmest?.value, strongest?.value])].filter(Boolean).join(" to ")} current.`,
  "caution-floor": ({ measures: { total }, figure }) =>
    total
      ? `Weight: about ${figure(total)} with glass, gravel and stand. ${isVeryHeavy(total) ? "Ask a structural engineer before you set it up, on any floor." : "Set it across the joists by a bearing wall; on an old or wooden floor, or in doubt, ask a structural engineer."}`
      : `Weight: every ${figure({ value: 100, unit: "L" })} make about ${figure({ value: 125, unit: "kg" })} with glass and stand; on an old or wooden floor ask a structural engineer.`,
  "caution-electricity": () =>
    "Electricity: a residual-current device, cables looped below the socket, plugs out before a hand goes in; wiring is for a licensed electrician.",
  "caution-hazards": ({ from, fromMany, measures }) =>
    hazards(measures.hazard?.value ?? "bite", [
      { who: from, many: fromMany, family: measures.family?.value ?? "" },
    ]),
  "caution-zoonoses": () =>
    "Germs: wash your hands, keep cuts out of the water, tell a doctor about the tank if a sore does not heal; with weak immunity leave it to others.",
  "caution-devices": ({ from, fromMany, measures }) =>
    measures.device?.value === "heater"
      ? `${from} ${verb(fromMany, "burns itself", "burn themselves")} on a bare heater: use a guard, or heat outside the tank.`
      : `${from} ${verb(fromMany, "gets", "get")} into the intake of a pump: cover it with foam.`,
  "caution-law": ({ from, measures: { jurisdiction, effect, instrument, date, basis, laws } }) =>
    laws
      ? lawsSomewhere(from, (laws as Figure).value ?? 1)
      : `Law on ${from}, ${jurisdiction?.value}: ${effect?.value} (${instrument?.value}; ${date?.value}${basis?.value === "memory" ? "; recalled, not read" : ""}.) The text in force decides.`,
  "caution-release": () => "Never release animals, plants or water outdoors: rehome them, or ask a vet.",
});
