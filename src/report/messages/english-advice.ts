import type { WaterAxis } from "../../advice";
import type {
  AdviceMessages,
  AdviceWords,
  ToldAim,
  ToldAnimals,
  ToldNitrogen,
  ToldSuspect,
} from "./advice-messages";
import { english } from "./english";
import { allOf, they, verb } from "./english-grammar";
import { feedingHours, grown, offered, places } from "./english-words";
import { sentenceCase as capital, spaced, stopped } from "./sentences";
import { withAdvice } from "./with-advice";

/** Foods that are called otherwise than by their word. */
const foods: Readonly<Record<string, string>> = /* @__PURE__ */ (() => ({
  ...offered,
  "fallen-insects": "insects",
  algae: "greens and algae",
  ...grown,
}))();

/** What follows the ammonia nitrogen that is given. */
const taken = ({ filter, state }: ToldNitrogen): string =>
  ({
    unnamed: "the plan names no filter.",
    unripe: "the filter takes up none as it stands in the plan.",
    enough: `the filter takes up ${filter}, which is enough.`,
    short: `the filter takes up ${filter}, which is too little.`,
    doubtful: `the filter takes up ${filter}, which may be too little.`,
    untold: `the filter takes up ${filter}.`,
  })[state];

/** Of several species perhaps not all. */
const of = ({ who, many }: ToldAnimals, mixed: boolean): Pick<ToldAnimals, "who" | "many"> =>
  mixed ? { who: "some of these", many: true } : { who, many };

/** Topics in brackets; nothing where there are none. */
const bracketed = (topics: readonly string[]) => (topics.length > 0 ? ` (${topics.join("; ")})` : "");

/** What figures of water are called. */
const axes: Readonly<Record<WaterAxis, string>> = {
  temperature: "temperature",
  pH: "pH",
  generalHardness: "general hardness",
  salinity: "salinity",
};

/** The same at the head of a line. */
const headOf = (on: WaterAxis): string => (on === "pH" ? axes[on] : capital(axes[on]));

/** Who ends what a figure may move within, in brackets. */
function bounded({ least, most }: ToldAim): string {
  if (least?.whom === most?.whom) return least ? ` (bounded by ${least.whom})` : "";
  const below = least && `below by ${least.whom}`;
  return ` (bounded ${[below, most && `above by ${most.whom}`].filter(Boolean).join(", ")})`;
}

/** What individuals would have to be like, as a clause. */
const tempered = ({ animals: { who, many }, temper }: NonNullable<ToldSuspect["individuals"]>): string =>
  ({
    shyer: `${who} ${verb(many, "is", "are")} shyer than most`,
    bolder: `${who} ${verb(many, "is", "are")} bolder than most`,
    bully: `${who} ${verb(many, "is a bully", "are bullies")}`,
  })[temper];

const words = (): AdviceWords => ({
  units: { g: "g", mg: "mg" },
  feeding: {
    titles: {
      offerings: "What to give",
      amounts: "How much a day, as dry food: from just enough to plenty",
      water: "What it does to the water",
    },
    lead: (offerings) =>
      offerings === 1 ? "Feed once a day." : "Give each of these once a day, in this order.",
    rest: {
      day: "On one day a week give nothing (common practice).",
      none: "Leave no day out: there are young, or young are wanted.",
    },
    offering: ({ food, place, light, apart, for: eaters, from }) => {
      const given = `${foods[food] ?? spaced(food)} ${places[place]}, ${feedingHours[light]}`;
      const how = apart ? ", where quicker animals do not get at it" : "";
      const held = from
        ? ` ${capital(from.who)} would take it: feed ${verb(from.many, "it", "them")} first elsewhere, or hold ${verb(from.many, "it", "them")} back.`
        : "";
      return `${capital(given)}${how}: for ${eaters.whom}.${held}`;
    },
    unreached: ({ who, many }) =>
      `No food is known that is sure to reach ${who}: it is not known what, where or when ${they(many)} ${verb(many, "feeds", "feed")}, or what is quicker at food.`,
    amount: (animals, amount) => `${animals}: ${amount}.`,
    noAmount: (animals, young) =>
      `${animals}: no figure is known${young ? "; young need several times as much for their weight as grown animals" : ""}.`,
    cold: "Below 10 °C fish hardly eat, if at all.",
    together: "Where animals are given several foods, it is all of these together.",
    heavier: "Frozen and live food weighs four to five times as much.",
    nitrogen: (told) =>
      `The food${told.isWhole ? "" : ", as far as its amount is known,"} brings ${told.given} of ammonia nitrogen a day; ${taken(told)}`,
    closing:
      "Individuals vary: watch that each animal eats. What is left of dry or frozen food after a few minutes was too much: take it out.",
  },
  entry: {
    lead: "Days count from the day on which the tank is set up; each is the soonest that will do.",
    title: (day) => (day === undefined ? "In the tank already" : `From day ${day}`),
    animals: (listed) => `${listed}.`,
    because: {
      "filter-ripens": ({ day }) =>
        `Fed with ammonia until animals are there, the filter is surely ripe by day ${day}.`,
      quarantine: ({ day }) => `Quarantine ends on day ${day}.`,
      "filter-follows": ({ day }) =>
        `By day ${day} the filter takes up what those before give off, if it is large enough.`,
      "plants-grow-in": ({ day }) => `Plants set on the first day have grown in by day ${day}.`,
      "stated-day": ({ day }) => `The plan says day ${day} at the soonest.`,
      "others-grow": ({ others, length, day }) =>
        `First ${others.who} ${verb(others.many, "has", "have")} to measure ${length}${day === undefined ? "; nobody knows when that is" : `, likely by day ${day}`}: the length counts, not the day.`,
      "others-first": ({ others, topics }) =>
        `${capital(others.who)} ${verb(others.many, "has", "have")} to be there before${bracketed(topics)}.`,
      "defends-place": ({ animals, mixed }) => {
        const { who, many } = of(animals, mixed);
        return `${capital(who)} ${verb(many, "defends", "defend")} a place, which later comers would have to win.`;
      },
      "may-eat": ({ animals, mixed, others }) =>
        `${capital(of(animals, mixed).who)} may eat ${others.whom}, which ${verb(others.many, "knows", "know")} the tank by then.`,
      together: () => "They come on one day, since none of them may come before the others.",
    },
    outcome: (outcome) =>
      ({
        suitable: "With all that are in by then the plan is suitable.",
        conditional:
          "With all that are in by then the plan is conditional: its report tells what must change.",
        undetermined:
          "With all that are in by then the plan is undetermined: something that decides it is not known.",
        unsuitable: "With all that are in by then the plan is unsuitable.",
      })[outcome],
    nitrogen: (told) =>
      `As far as known, those that are in by then give off ${told.given} of ammonia nitrogen a day once grown; ${taken(told)}`,
    none: {
      unsuitable: () => "No order of entry: the plan as a whole is unsuitable.",
      "others-there": ({ who, many }) =>
        `No order of entry: ${who} ${verb(many, "is", "are")} too short as yet for animals that live in the tank already.`,
      "both-grow-first": ({ who }) =>
        `No order of entry: each would have to grow before the others come (${who}).`,
      "worse-before": ({ who, many }) =>
        many
          ? `No order of entry: whichever comes next (${who}), there is something against it that is not against the whole plan.`
          : `No order of entry: there is something against the coming of ${who} that is not against the whole plan.`,
      "not-found": ({ who }) =>
        `No order of entry was found (${who}); of so many species not every order is tried.`,
    },
    against: (topics) => `What is amiss: ${allOf(topics)}.`,
    topics: {
      temperature: "temperature",
      ph: "pH",
      "general-hardness": "hardness",
      salinity: "salinity",
      season: "a cool season",
      flow: "current",
      predation: "who eats whom",
      "acts-own-kind": "fights with their own kind",
      "acts-look-alike": "fights with those that look alike",
      "acts-others": "attacks on others",
      "fin-nipping": "nipped fins",
      "mucus-grazing": "rasped slime coats",
      "territory-contest": "contested places",
      "size-and-pace": "large and restless company",
      "feeding-competition": "quicker animals at food",
      shyness: "restless company for shy animals",
      interbreeding: "crossbreeding",
      furnishing: "furnishing",
      planting: "lost plants",
      "water-temperature": "temperature",
      "water-ph": "pH",
      "water-hardness": "hardness",
      "water-salinity": "salinity",
      "cool-season": "a cool season",
      "carbon-dioxide": "carbon dioxide",
      oxygen: "oxygen",
      "filter-nitrogen": "the filter",
      "longest-run": "the length of the tank",
      footprint: "the floor of the tank",
      height: "the height of the tank",
      zones: "crowding at one level",
      territories: "room for territories",
      "group-size": "the size of groups",
      "sex-ratio": "males and females",
      "both-sexes": "males and females",
      cover: "cover",
      "open-water": "room to swim",
      ground: "the ground",
      "hiding-places": "hiding places",
      plants: "plants that have grown in",
      "plants-at-risk": "plants at risk",
      "settling-company": "calm company",
      feeding: "food",
      lid: "the lid",
      "flow-places": "places with the right current",
      sensitive: "what they cannot bear",
      "caution-floor": "the weight on the floor",
      "caution-electricity": "electricity",
      "caution-devices": "devices",
      "caution-hazards": "danger to people",
      "caution-zoonoses": "germs that people catch",
      "caution-law": "the law",
      "caution-release": "release into the wild",
      "conditions-exclude": "conditions that exclude each other",
    },
  },
  suspects: {
    lead: (signs) => `What may be behind ${allOf(signs)}, by what to look at; the likeliest comes first.`,
    none: "No rule explains it by this plan. Ask a vet: it may be illness, of which no rule knows.",
    signs: {
      ...english.signs,
      listless: "listless animals",
      "dug-up-plants": "dug-up plants",
      "eaten-plants": "eaten plants",
    },
    looks: {
      "measure-temperature": "Measure the temperature",
      "measure-ph": "Measure the pH",
      "measure-hardness": "Measure the hardness",
      "measure-salinity": "Measure the salinity",
      "measure-ammonia-and-nitrite":
        "Measure ammonia and nitrite; where you find any, change part of the water at once",
      "surface-at-dawn": "Look who hangs at the surface before the lights are on, and whether it is moved",
      "who-chases-whom": "Watch from a distance for half an hour by day: who chases whom?",
      "who-bites-whom": "Watch from a distance for half an hour by day: who bites whom?",
      "by-night": "Look with a dim light two hours after dark",
      "who-eats": "Look who gets to the food, and who does not",
      "count-and-measure": "Count the animals and see how long they are, mouths beside prey",
      "around-the-tank": "Look at the floor around the tank, at gaps in the lid, into the filter",
      spawning: "Look for pairs and eggs, and for who guards them",
      "places-to-hide": "See whether each finds a place to hide, and who is driven from it",
      "room-to-swim": "See how much room they have to swim",
      current: "See whom the current drives about",
      ground: "See how sharp the ground is, and how deep",
      plants: "Look at the roots and edges of the plants, and for who is at them",
      company: "Count the animals of each kind, and see who comes out with whom",
      "males-and-females": "Count males and females",
      "the-animals": "Watch the animals, by day and by night",
    },
    suspect: ({ reason, signs, act, clause, individuals }) => {
      const cause = individuals ? `if ${tempered(individuals)}: ${reason}` : reason;
      const what = {
        meet: clause ? `${capital(clause)}.` : "See to that.",
        check: `The plan sees to it; make sure that the tank does${clause && `: ${clause}`}.`,
        part: "Part them for good, at once.",
        rehouse: "It takes a tank or water that suits.",
        "change-water": "Change part of the water each day until you find neither.",
        watch: "Keepers bear with it, or it passes: watch whether it gets worse.",
      }[act];
      return `${stopped(capital(cause), `${bracketed(signs)}.`)} ${what}`;
    },
    ammonia: ({ who, many }) =>
      `${who} ${verb(many, "suffers", "suffer")} from ammonia and nitrite sooner than others.`,
    illness:
      "It may be illness all the same, of which no rule knows: ask a vet about animals that look ill, or that do not recover.",
  },
  setPoint: {
    lead: (animals) => `Water for ${animals}, by what they are kept in:`,
    figure: (told) => {
      const { on, figure, within } = told;
      const room = within && `, staying within ${within}`;
      return on === "salinity" && figure === ""
        ? `Fresh water${within && `, salinity ${within}`}.`
        : `${headOf(on)} ${figure}${room}${bounded(told)}.`;
    },
    none: "Nobody says what water any of them is kept in: find out before you buy.",
    swing: (span) =>
      `Beside that there is room for the water to swing as you say; at these figures it goes from ${span} and back.`,
    open: (on, { who, many }, isAlone) => {
      const told = `Nobody says which ${axes[on]} ${who} ${verb(many, "needs", "need")}`;
      return isAlone ? `${told}: there is no figure to aim at.` : `${told}: the others decide alone.`;
    },
    beyondKept: (on, { who, many }, kept, isSwing, isItself) => {
      const subject = isSwing ? `As it swings, the ${axes[on]}` : `That ${axes[on]}`;
      const beyond = `goes beyond what ${who} ${verb(many, "is", "are")} kept in, ${kept}`;
      return isSwing || isItself
        ? `${subject} ${beyond}: it is at the edge of what they can take for long.`
        : `Within that span the ${axes[on]} ${beyond}: there it is at the edge of what they can take for long.`;
    },
    forAWhile: (when, { who, many }) => {
      const season = when === "hottest" ? "On the hottest day" : "In the coolest season";
      return `${season} the temperature goes beyond what ${who} ${verb(many, "is", "are")} kept in: that will do for a while, not for good.`;
    },
    doubtful: (on, { higher, lower }, reason) => {
      const why = {
        "class-end": "of one of them there is only the class of a handbook",
        "both-give-way": "both would have it at the edge of what they can take",
      }[reason];
      return `Whether ${higher.who} and ${lower.who} share any ${axes[on]}, nobody knows: ${why}.`;
    },
    hotEnd: ({ temperature, pH, ammonia, oxygen }) =>
      `At the far end of that, ${temperature} and pH ${pH}, it holds ${ammonia} of un-ionized ammonia and, saturated with air, ${oxygen} of oxygen.`,
    conflict: (on, { higher, lower, isOne }, isCertain) => {
      const doubt = isCertain
        ? ""
        : " It is likely, not certain: of one of them only what is best is known, not what it is kept in.";
      if (on === "ammonia") {
        const warm = isOne
          ? `warm and alkaline enough for ${higher.whom}`
          : `warm enough for ${higher.whom} and alkaline enough for ${lower.whom}`;
        return `No water serves all: what is ${warm} would hold more un-ionized ammonia than is borne, or too little oxygen.${doubt}`;
      }
      const proof = isOne
        ? `what ${higher.who} ${verb(higher.many, "is", "are")} kept in leaves no room for how far the water moves`
        : `${higher.who} ${verb(higher.many, "needs", "need")} it higher than ${lower.who} can have it for good`;
      return `No ${axes[on]} serves all: ${proof}.${doubt}`;
    },
    largest: (stay, leave) => `Without ${leave.whom}, the most that can stay are ${stay.whom}.`,
    apart: "None of them can have the water asked for.",
    closing:
      "Measure the water of your tap and of your tank first, and change a tank that has animals in small steps, over days (common practice). What animals were raised in counts too: ask who sells them. Where sources differ, these are the figures adopted; the report on a plan says what hangs on it.",
  },
});

/** What reports and advice say in English. */
export const englishAdvice: AdviceMessages = /* @__PURE__ */ withAdvice(english, /* @__PURE__ */ words());
