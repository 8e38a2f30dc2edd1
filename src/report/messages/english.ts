import type { Words } from "../../compatibility";
import { frozen } from "../../frozen";
import { factLabels } from "../../plan/inner";
import { traitLabels } from "../../species/inner";
import { conditions, seenFromAbove } from "./english-conditions";
import { findings, hazards, lawsSomewhere, room } from "./english-findings";
import { allOf, plural, the } from "./english-grammar";
import { profile } from "./english-profile";
import { basis, ranges, spelled, things } from "./english-words";
import type { Messages, ToldWater } from "./messages";
import { partyTold } from "./party-told";
import { sentenceCase as capital, rightThings, saidOnce, stopped } from "./sentences";

/** `3 males`, `1 female`; `male` of a single animal, `all female` of several. */
function numbered(animals: number, count: number | undefined, sex: Words["sex"]): string {
  if (animals === count) return count === 1 ? sex : `all ${sex}`;
  return `${animals} ${sex}${animals === 1 ? "" : "s"}`;
}

const restsOn: Messages["basis"] = { ...basis, "common-practice": "common practice, not published" };

const waters = ({ temperature, pH, hardness, salinity }: Omit<ToldWater, "kinds" | "current">) =>
  [
    temperature,
    pH && `pH ${pH}`,
    hardness && `hardness ${hardness}${salinity && " before salt"}`,
    salinity && `salinity ${salinity}`,
  ].filter(Boolean);

/** The report in English. */
export const english: Messages = /* @__PURE__ */ frozen(/* @__PURE__ */ messages());

function messages(): Messages {
  return {
    language: "en-GB",
    several: plural,
    theOthers: "all the others",
    this: the,
    headline: (told) => {
      const { outcome, clash, otherWater, individuals } = told;
      const { oneSpecies, oneGroup, animals, warned, amiss } = told;
      const together = warned ? "can live together" : "go well together";
      if (clash) return `Unsuitable: keep either ${clash[0]} or ${clash[1]}, not both.`;
      if (otherWater) return `Not in this water: ${otherWater.replaceAll("the water", "it")}.`;
      if (individuals)
        return `Nobody can tell: it depends on the individuals (${individuals}). Try it only with another place ready.`;
      if (told.tooSmall) return "Unsuitable: the tank is far too small.";
      return {
        suitable: oneGroup
          ? `Suitable: ${warned ? "a plan that will do" : "a good plan"} for ${animals}.`
          : `Suitable: ${animals} ${oneSpecies ? "get on among themselves" : together}.`,
        conditional: "Conditional: it works once the things below are right.",
        unsuitable:
          oneSpecies || amiss
            ? `Unsuitable: do not keep ${oneSpecies ? "them" : amiss} like this.`
            : "Unsuitable: do not keep these together.",
        undetermined: "Undetermined: something that decides it is not known.",
      }[outcome];
    },
    bounds: (atBest, atWorst, outcome, why) => {
      const told = {
        suitable: "nothing speaks against it",
        conditional: "something would have to change",
        unsuitable: "it is unsuitable",
      };
      const best = atBest !== outcome && `at best ${told[atBest as keyof typeof told]}`;
      const worst = atWorst !== outcome && `at worst ${told[atWorst as keyof typeof told]}`;
      const doubts = {
        individual: "individuals differ much",
        disputed: "sources differ",
        missing: "not all of it is known",
        estimated: "how heavy they grow is an estimate",
      };
      const reason = worst && why.length > 0 && `: ${allOf(why.map((doubt) => doubts[doubt]))}`;
      return `${capital([best, worst].filter(Boolean).join(", "))}${reason || ""}.`;
    },
    lawFirst: (whom) =>
      `The law where the tank stands names ${whom}: read below what it says before you buy or pass on any.`,
    measureFirst: (first) =>
      `Measure or settle first: ${allOf([...new Set(first.map((fact) => things[fact][0]))])}.`,
    titles: {
      parties: "Animals",
      blocking: "Why not",
      restricting: "What must change",
      besides: "What would have to change besides",
      unsaid: "Not in your plan yet: see that it is so",
      deciding: "What nobody can tell",
      advisory: "Worth knowing",
      favourable: "In favour",
      watchFor: "Watch for",
      meanwhile: "Meanwhile watch for",
      everyTank: "In every tank",
      remedy: "What would help",
      remedies: "What would help: one of these is enough",
      ifItStarts: "If bullying starts",
      cautions: "Take care",
    },
    party: partyTold({
      numbered,
      unsexed: (animals) => `${animals} not sexed`,
      and: " and ",
      sexes: { male: "male", female: "female" },
      stages: { egg: "egg", fry: "fry", juvenile: "young", adult: "adult" },
      long: (length, asBought) => `${length} long${asBought ? " as bought" : ""}`,
      tempers: (one) => ({
        shyer: one ? "a shy one" : "shy ones",
        bolder: one ? "a bold one" : "bold ones",
        bully: one ? "a bully" : "bullies among them",
      }),
    }),
    rules: findings(),
    sayWhatToDo: {
      "water-temperature": true,
      "water-ph": true,
      "water-hardness": true,
      "water-salinity": true,
      height: true,
      "open-water": true,
      ground: true,
      "hiding-places": true,
      "group-size": true,
      "sex-ratio": "always",
      cover: true,
      plants: true,
      lid: true,
      "flow-places": true,
    },
    room: (told) => room(told),
    sharedWater: ({ kinds, ...told }) => {
      const water = waters(told);
      const whom = kinds === 1 ? "them" : kinds === 2 ? "both" : "all";
      return water.length === 0
        ? `one current suits ${whom}.`
        : `water of ${water.join(", ")} suits ${whom}.`;
    },
    waterToHave: (told) => `Water: ${waters(told).join(", ")}; measure yours first.`,
    hazards,
    lawsSomewhere,
    remedy: {
      rehome: ({ one, several, moved, all, apart, lawful, who, stay = [] }) => {
        const kinds = { males: "male", females: "female", juveniles: "young" };
        const number = moved === 1 ? (all ? "the" : "one") : `${all ? "the " : ""}${moved}`;
        const kept = stay.map((those) => `${those.count} ${kinds[those.who]}`);
        const rest = kept.length > 0 ? `, and keep ${allOf(kept)}` : "";
        return `find ${apart && moved > 1 ? "a tank each" : "another tank"} for ${number} ${who ? `${kinds[who]} ` : ""}${moved === 1 ? one : several}${rest}${lawful ? ", as far as the law allows" : ""}`;
      },
      form: ({ several, form }) => `choose ${several} of this form: ${form}`,
      add: ({ name, several: many, count }) => `add ${count} ${count === 1 ? name : many}, which are calm`,
      water: (told) => `have water of ${waters(told).join(", ")}`,
      tank: (sides, height) => `have a tank of ${sides}${height ? `, ${height} high` : ""}`,
      all: (clauses, outcome) =>
        `${clauses.join("; ")}.${outcome === "conditional" ? " Some conditions remain." : ""}`,
      none: (obstacle) => `Nothing within three steps helps. In the way stands: ${obstacle}`,
    },
    ifItStarts:
      "break lines of sight; take out the bully, not its victim; return it last, into a rearranged tank, and have somewhere to rehome it.",
    otherRule: (id, { from, to }) =>
      [id, [from, to].filter(Boolean).join(" and ")].filter(Boolean).join(": "),
    signs: {
      "torn-fins": "torn fins",
      "damaged-skin": "scraped flanks",
      hiding: "hiding all day",
      "missing-animals": "missing animals",
      thin: "thin animals",
      chasing: "chasing that does not end",
      gasping: "gasping at the surface",
      "missing-young": "missing eggs or young",
    },
    lookFor: (signs, whom) => `${allOf(signs)}${whom && ` (${whom})`}`,
    conditions: conditions(),
    demand: (clauses, reasons) => {
      const clause = saidOnce(clauses.join("; "), seenFromAbove);
      const [first, ...further] = reasons;
      const isPlain = further.length === 0 && !/[:;.] |;/.test(clause + first?.slice(0, -1));
      if (first && isPlain) return `${clause}: ${first}`;
      return [`${clause}.`, ...reasons.map(capital)].join(" ");
    },
    gathered: (sentences) =>
      sentences.map((text, index) => (index < sentences.length - 1 ? stopped(text, ";") : text)).join(" "),
    basis,
    supported: (reason, of) => stopped(reason, ` (${{ ...basis, derived: "reckoned" }[of]}).`),
    unlessMarked: (of, marks) =>
      `Unless marked, this is ${restsOn[of]}${marks.has("derived") ? "; reckoned means worked out from what is nearest known" : ""}.`,
    traits: traitLabels,
    open: {
      missing: (missing, of) => `${of}, ${allOf(missing)}`,
      disputed: (trait, of, values, planned) => {
        const said = values.map((value) => value.replaceAll("; ", ", "));
        const others = said.some((value) => /, | but /.test(value)) ? ", or " : " or ";
        const yours = planned && ` (yours ${planned})`;
        return `${of}, ${[trait.replace("general ", ""), said.join(others)].filter(Boolean).join(" ")}${yours}`;
      },
      notGiven: (asked, of) =>
        `${allOf([...new Set(asked.map((fact) => factLabels[fact]))])}${of && ` (${of})`}`,
      outsideDomain: (of) => of || "the tank",
      individual: (of) => of,
      all: (reason, questions, weight, further) => {
        const more = further > 0 ? `; and ${further} more` : "";
        const listed = reason === "individual" ? allOf(questions) : questions.join("; ");
        const bad = weight === "blocking";
        const said = {
          missing: `not known${bad ? ", and it could rule it out" : ""}: ${listed}`,
          disputed: `sources differ${bad ? ", and it could rule it out" : ""}: ${listed}`,
          "not-given": `your plan does not say: ${listed}`,
          "outside-domain": `outside the range in which the equation holds: ${listed}`,
          individual: `individuals differ much${bad ? ", and a rough one could rule it out" : ""}: ${listed}`,
        }[reason];
        return `${said}${more}.`;
      },
    },
    alreadyRight: (right, wrong, whole) =>
      `right as planned: ${allOf(rightThings(things, right, wrong, whole))}.`,
    closing: "Advice about typical animals; individuals vary: watch them, and have a second tank ready.",
    withoutCautions:
      "Whether animals can hurt people, and what the law says of them, only the report on a plan tells: see to it before you buy.",
    keptDown: (wounds) => `room and cover as planned should keep this down: ${wounds}`,
    beforeUnit: " ",
    ranges,
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
      "mg/L-CaCO3": "ppm",
      "g/kg": "g/kg",
      "mg/L": "mg/L",
      h: "hours",
      d: "days",
      mo: "months",
      a: "years",
    },
    unitsOfOne: { h: "hour", d: "day", mo: "month", a: "year" },
    words: spelled(),
    facts: factLabels,
    profile: profile(),
    pictures: {
      shared: (figure, known, of) =>
        known < of ? `Common to the ${known} of ${of} with figures: ${figure}.` : `Common to all: ${figure}.`,
      apart: (one, other) => `Nothing is common to all: ${one} and ${other} lie apart.`,
      unknown: "not known",
      eitherSex: (figure) => `${figure} (either sex)`,
      setAside: "set aside",
      marks: {
        kept: "kept at",
        standIn: "best at; nobody has said what it is kept at",
        optimum: "best at",
        limit: "limit: beyond it the animal suffers or dies",
        open: "no end stated",
        shared: "common to all with figures",
        source: "what one source says; its meaning stands beside it",
        outline: "usual adult, length and depth to scale",
        bar: "usual adult length; depth not known",
        greatest: "greatest length known",
        greatestOfEither: "greatest length known, of either sex",
        onlyGreatest: "greatest length; the usual one is not known",
        reckoned: "total length from the dotted line on, reckoned from another measure",
      },
    },
  };
}
