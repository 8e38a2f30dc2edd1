import type { Words } from "../../compatibility";
import { frozen } from "../../frozen";
import { conditions, seenFromAbove } from "./german-conditions";
import { findings, hazards, lawsSomewhere, room } from "./german-findings";
import { allOf } from "./german-grammar";
import { severalOf, singleOf } from "./german-names";
import { profile } from "./german-profile";
import { asked, basis, ranges, sexWords, stages, things, traits, words } from "./german-words";
import type { Messages, ToldWater } from "./messages";
import { partyTold } from "./party-told";
import { sentenceCase as capital, rightThings, saidOnce, stopped } from "./sentences";

// Names stand as subjects or objects, never after a preposition that asks for another case. Nobody is addressed.

/** `3 Männchen`; `Männchen` of a single animal. */
const numbered = (animals: number, count: number | undefined, sex: Words["sex"]) =>
  animals === count && count === 1 ? sexWords[sex][0] : `${animals} ${sexWords[sex][1]}`;

const restsOn: Messages["basis"] = {
  ...basis,
  "common-practice": "gängige Praxis und nicht veröffentlicht",
};

const waters = ({ temperature, pH, hardness, salinity }: Omit<ToldWater, "kinds" | "current">) =>
  [
    temperature,
    pH && `pH ${pH}`,
    hardness && `${hardness} Gesamthärte${salinity && " vor dem Salz"}`,
    salinity && `${salinity} Salzgehalt`,
  ].filter(Boolean);

/** The report in German. */
export const german: Messages = /* @__PURE__ */ frozen(/* @__PURE__ */ messages());

function messages(): Messages {
  return {
    language: "de",
    several: severalOf,
    theOthers: "alle anderen",
    this: singleOf,
    headline: (told) => {
      const { outcome, clash, otherWater, individuals } = told;
      const { oneSpecies, oneGroup, animals, warned, amiss } = told;
      const together = warned ? "können zusammen leben" : "passen gut zusammen";
      if (clash) return `Ungeeignet: entweder ${clash[0]} oder ${clash[1]} halten, nicht beide.`;
      if (otherWater) return `Nicht in diesem Wasser: ${otherWater}.`;
      if (individuals)
        return `Niemand kann es sagen: es kommt auf die einzelnen Tiere an (${individuals}). Nur versuchen, wenn ein anderer Platz bereitsteht.`;
      if (told.tooSmall) return "Ungeeignet: das Becken ist viel zu klein.";
      return {
        suitable: oneGroup
          ? `Geeignet: ${warned ? "ein brauchbarer" : "ein guter"} Plan für ${animals}.`
          : `Geeignet: ${animals} ${oneSpecies ? "kommen miteinander aus" : together}.`,
        conditional: "Bedingt geeignet: es geht, sobald das Folgende stimmt.",
        unsuitable:
          oneSpecies || amiss
            ? `Ungeeignet: ${oneSpecies ? "" : `${amiss} `}so nicht halten.`
            : "Ungeeignet: nicht zusammen halten.",
        undetermined: "Unentschieden: etwas Entscheidendes ist nicht bekannt.",
      }[outcome];
    },
    bounds: (atBest, atWorst, outcome, why) => {
      const told = {
        suitable: "spricht nichts dagegen",
        conditional: "muss sich etwas ändern",
        unsuitable: "ist es ungeeignet",
      };
      const best = atBest !== outcome && `im besten Fall ${told[atBest as keyof typeof told]}`;
      const worst = atWorst !== outcome && `im schlechtesten Fall ${told[atWorst as keyof typeof told]}`;
      const doubts = {
        individual: "einzelne Tiere sind sehr verschieden",
        disputed: "die Quellen widersprechen sich",
        missing: "nicht alles ist bekannt",
        estimated: "wie schwer sie werden, ist geschätzt",
      };
      const reason = worst && why.length > 0 && `: ${allOf(why.map((doubt) => doubts[doubt]))}`;
      return `${capital([best, worst].filter(Boolean).join(", "))}${reason || ""}.`;
    },
    lawFirst: (whom) =>
      `Am Standort des Beckens betrifft das Recht ${whom}: vor Kauf oder Weitergabe lesen, was unten dazu steht.`,
    measureFirst: (first) =>
      `Zuerst messen oder festlegen: ${allOf([...new Set(first.map((fact) => things[fact][0]))])}.`,
    titles: {
      parties: "Tiere",
      blocking: "Warum nicht",
      restricting: "Was sich ändern muss",
      besides: "Was sich außerdem ändern müsste",
      unsaid: "Noch nicht im Plan: dafür sorgen",
      deciding: "Was niemand sagen kann",
      advisory: "Wissenswert",
      favourable: "Dafür spricht",
      watchFor: "Achten auf",
      meanwhile: "Bis dahin achten auf",
      everyTank: "In jedem Becken",
      remedy: "Was helfen würde",
      remedies: "Was helfen würde: eines davon",
      ifItStarts: "Bei Streit",
      cautions: "Vorsicht",
    },
    party: partyTold({
      numbered,
      unsexed: (animals) => `${animals} nicht bestimmt`,
      and: " und ",
      sexes: words.sex,
      stages,
      long: (length, asBought) => `${length} lang${asBought ? " beim Kauf" : ""}`,
      tempers: (one) => ({
        shyer: "scheu",
        bolder: "forsch",
        bully: one ? "ein Raufbold" : "Raufbolde darunter",
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
      const whom = kinds === 1 ? "diese Art" : kinds === 2 ? "beide" : "alle";
      return water.length === 0
        ? `eine Strömung passt für ${whom}.`
        : `Wasser mit ${water.join(", ")} passt für ${whom}.`;
    },
    waterToHave: (told) => `Wasser: ${waters(told).join(", ")}; das vorhandene zuerst messen.`,
    hazards,
    lawsSomewhere,
    remedy: {
      rehome: ({ one, several, moved, all, apart, lawful, who, stay = [] }) => {
        const kinds = {
          males: ["Männchen", "Männchen"],
          females: ["Weibchen", "Weibchen"],
          juveniles: ["Jungtier", "Jungtiere"],
        } as const;
        const [single, many] = who ? kinds[who] : ["Tier", "Tiere"];
        const those = moved === 1 ? `ein ${single} (${one})` : `${moved} ${many} (${several})`;
        const kept = stay.map(({ who: sort, count }) => `${count} ${kinds[sort][count === 1 ? 0 : 1]}`);
        const rest = kept.length > 0 ? allOf(kept) : "den Rest";
        const there = apart && moved > 1 ? "je ein eigenes" : "ein anderes";
        return `${those} in ${there} Becken umsetzen oder abgeben${lawful ? ", soweit das Recht es erlaubt" : ""}${all ? "" : `, ${rest} behalten`}`;
      },
      form: ({ several, form }) => `diese Zuchtform wählen (${several}): ${form}`,
      add: ({ name, several: many, count }) =>
        `${count} ${count === 1 ? name : many} als ruhige Gesellschaft dazusetzen`,
      water: (told) => `Wasser mit ${waters(told).join(", ")} bereitstellen`,
      tank: (sides, height) => `ein Becken von ${sides}${height ? ` und ${height} Höhe` : ""} wählen`,
      all: (clauses, outcome) =>
        `${clauses.join("; ")}.${outcome === "conditional" ? " Einige Bedingungen bleiben." : ""}`,
      none: (obstacle) => `Mit drei Schritten ist nicht zu helfen. Im Weg steht: ${obstacle}`,
    },
    ifItStarts:
      "Sichtachsen unterbrechen; den Angreifer herausnehmen, nicht das Opfer, ihn als Letzten in ein umgestaltetes Becken zurücksetzen und für alle Fälle einen anderen Platz haben.",
    otherRule: (id, { from, to }) =>
      [id, [from, to].filter(Boolean).join(" und ")].filter(Boolean).join(": "),
    signs: {
      "torn-fins": "zerrissene Flossen",
      "damaged-skin": "wunde Flanken",
      hiding: "ständiges Verstecken",
      "missing-animals": "fehlende Tiere",
      thin: "abgemagerte Tiere",
      chasing: "Jagen ohne Ende",
      gasping: "Luftschnappen an der Oberfläche",
      "missing-young": "fehlende Eier oder Junge",
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
    supported: (reason, of) => stopped(reason, ` (${{ ...basis, derived: "erschlossen" }[of]}).`),
    unlessMarked: (of, marks) =>
      `Wo nichts anderes steht, ist dies ${restsOn[of]}${marks.has("derived") ? "; erschlossen heißt: aus dem Nächstbekannten hergeleitet" : ""}.`,
    traits,
    open: {
      missing: (missing, of) => `${of}, ${allOf(missing)}`,
      disputed: (trait, of, values, own) => {
        const said = values.map((value) => value.replaceAll("; ", ", "));
        const others = said.some((value) => /, | aber /.test(value)) ? ", oder " : " oder ";
        const yours = own && ` (geplant: ${own})`;
        return `${of}, ${[trait, said.join(others)].filter(Boolean).join(" ")}${yours}`;
      },
      notGiven: (unsaid, of) =>
        `${allOf([...new Set(unsaid.map((fact) => asked[fact]))])}${of && ` (${of})`}`,
      outsideDomain: (of) => of || "das Becken",
      individual: (of) => of,
      all: (reason, questions, weight, further) => {
        const more = further > 0 ? `; und ${further} weitere` : "";
        const named = reason === "individual" ? allOf(questions) : questions.join("; ");
        const bad = weight === "blocking";
        const said = {
          missing: `nicht bekannt${bad ? ", und es könnte den Plan ausschließen" : ""}: ${named}`,
          disputed: `die Quellen widersprechen sich${bad ? ", und es könnte den Plan ausschließen" : ""}: ${named}`,
          "not-given": `im Plan fehlt: ${named}`,
          "outside-domain": `außerhalb des Bereichs, in dem die Gleichung gilt: ${named}`,
          individual: `von Tier zu Tier sehr verschieden${bad ? ", und ein Raufbold könnte den Plan ausschließen" : ""}: ${named}`,
        }[reason];
        return `${said}${more}.`;
      },
    },
    alreadyRight: (right, wrong, whole) =>
      `richtig geplant: ${allOf(rightThings(things, right, wrong, whole))}.`,
    closing:
      "Ratschläge für typische Tiere; einzelne sind verschieden: beobachten und ein zweites Becken bereithalten.",
    withoutCautions:
      "Ob Tiere Menschen verletzen können und was das Gesetz zu ihnen sagt, steht nur im Bericht zu einem Plan: vor dem Kauf nachlesen.",
    keptDown: (wounds) => `Platz und Deckung wie geplant sollten das in Grenzen halten: ${wounds}`,
    beforeUnit: "\u202f",
    ranges,
    units: {
      "%": "%",
      cm: "cm",
      cm2: "cm²",
      m2: "m²",
      L: "l",
      kg: "kg",
      in: "Zoll",
      in2: "Quadratzoll",
      ft2: "Quadratfuß",
      lb: "lb",
      "gal-us": "US-Gallonen",
      "gal-imp": "imp. Gallonen",
      degC: "°C",
      degF: "°F",
      dH: "°dH",
      "mg/L-CaCO3": "ppm",
      "g/kg": "g/kg",
      "mg/L": "mg/l",
      h: "Stunden",
      d: "Tage",
      mo: "Monate",
      a: "Jahre",
    },
    unitsOfOne: { h: "Stunde", d: "Tag", mo: "Monat", a: "Jahr" },
    words,
    facts: asked,
    profile: profile(),
    pictures: {
      shared: (figure, known, of) =>
        known < of
          ? `Gemeinsam haben die ${known} von ${of} mit Angaben: ${figure}.`
          : `Gemeinsam haben alle: ${figure}.`,
      apart: (one, other) => `Nichts haben alle gemeinsam: ${one} und ${other} liegen auseinander.`,
      unknown: "nicht bekannt",
      eitherSex: (figure) => `${figure} (ganze Art)`,
      setAside: "verworfen",
      marks: {
        kept: "Haltung",
        standIn: "Optimum; für die Haltung fehlt die Angabe",
        optimum: "Optimum",
        limit: "Grenze: jenseits davon leidet oder stirbt das Tier",
        open: "ohne angegebenes Ende",
        shared: "allen mit Angaben gemeinsam",
        source: "Angabe einer Quelle; wofür sie gilt, steht daneben",
        outline: "übliches erwachsenes Tier, Länge und Höhe im Maßstab",
        bar: "übliche Länge Erwachsener; Höhe nicht bekannt",
        greatest: "größte bekannte Länge",
        greatestOfEither: "größte bekannte Länge, gleich welchen Geschlechts",
        onlyGreatest: "größte Länge; die übliche ist nicht bekannt",
        reckoned: "Gesamtlänge ab der gepunkteten Linie, aus einem anderen Maß errechnet",
      },
    },
  };
}
