import type { OfficialRequirement } from "../../standards";
import { german } from "./german";
import { allOf } from "./german-grammar";
import { articleIn, instrumentIn, placeIn, standardIn } from "./german-standards";
import type {
  DependsOn,
  RequirementMessages,
  RequirementWords,
  ToldAsked,
  ToldHas,
  ToldOpen,
  ToldRequirement,
} from "./requirement-messages";
import { withRequirements } from "./with-requirements";

const answers: Readonly<Record<OfficialRequirement["answer"], string>> = {
  "not-met": "Nicht erfüllt",
  depends: "Kommt darauf an",
  undetermined: "Nicht zu sagen",
  met: "Erfüllt",
};

const forces: Readonly<Record<OfficialRequirement["force"], string>> = {
  binding: "bindend",
  municipal: "städtische Satzung, bindend in dieser Stadt",
  advice: "Empfehlung, nicht bindend",
  "guidance for authorities": "Leitlinie für Behörden, nicht bindend",
};

const bound = (binds: boolean) => (binds ? "bindend" : "nicht bindend");

const measures: Readonly<Record<Exclude<ToldHas["of"], "animals">, string>> = {
  "gross volume": "Bruttovolumen",
  "water volume": "Wasservolumen",
  "water volume to gross volume": "Volumen des Wassers oder des Beckens",
  length: "Länge",
  width: "Breite",
  depth: "Tiefe des Wassers oder des Beckens",
  "water depth": "Wassertiefe",
  "front edge": "Frontlänge",
  floor: "Grundfläche",
  "general hardness": "Gesamthärte",
  "shape of the base": "Grundfläche",
};

const taken = {
  planned: "wie der Plan sie angibt",
  grown: "wo der Plan keine angibt, die ausgewachsener Tiere",
  any: "wo der Plan keine angibt, die ausgewachsener Tiere, bei Jungtieren jede bis dahin",
};

/** The length of the fish, which stand in the genitive, from which a figure was computed. */
const measured = ({ length }: NonNullable<ToldAsked["by"]>, these: string) =>
  ({
    "present standard length": `der jetzigen Länge ${these} ohne Schwanzflosse`,
    "present total length": `der jetzigen Länge ${these} mit Schwanzflosse`,
    "adult total length": `der Endgröße ${these} mit Schwanzflosse`,
  })[length];

/** The same, and what is taken for it where the plan may give it. */
function computed(by: NonNullable<ToldAsked["by"]>, these: string): string {
  const as = by.length === "adult total length" ? "" : ` (${taken[by.taken]})`;
  return `, errechnet aus ${measured(by, these)}${as}`;
}

function asked({ figure, extent, beyond, isCount, by }: ToldAsked, these: string): string {
  if (figure === "")
    return `Wie viel das ist, lässt sich${by ? ` aus ${measured(by, these)}` : ""} nicht errechnen.`;
  if (isCount) return `Verlangt: ${extent === "open" ? figure : `mindestens ${figure}`} Tiere.`;
  const least = {
    one: `${beyond ? "mehr als" : "mindestens"} ${figure}`,
    span: by ? figure : `mindestens ${figure}`,
    open: `${figure}, und mehr für das, was nicht bekannt ist`,
  }[extent];
  return `Verlangt: ${least}${by ? computed(by, these) : ""}.`;
}

function has({ of, figure, isOne, sizes }: ToldHas): string {
  if (of === "animals") return `Im Plan: ${figure} ${isOne ? "Tier" : "Tiere"}.`;
  if (of === "shape of the base") return `Im Plan: ${figure}.`;
  const sized = sizes && { outer: ", nach Außenmaßen", inner: ", nach Innenmaßen" }[sizes];
  return `Im Plan: ${figure} (${measures[of]}${sized ?? ""}).`;
}

const counted = (of: Extract<DependsOn, { on: "sizes" }>["of"]): string => {
  if (of.includes("volume")) return "ob das Volumen des Wassers oder das des Beckens zählt";
  return of.includes("depth")
    ? "ob die Tiefe des Wassers oder die des Beckens zählt"
    : "ob das Glas mitzählt";
};

const depending = (one: DependsOn, these: string): string =>
  one.on === "sizes"
    ? counted(one.of)
    : {
        "present standard length": `wie lang ${these} ohne Schwanzflosse sind`,
        "present total length": `wie lang ${these} sind`,
        "adult total length": `wie lang ${these} werden`,
      }[one.length];

function open(told: ToldOpen): string {
  if (told.reason === "missing") return `Nicht bekannt: ${told.trait} (${told.of.who}).`;
  if (told.reason === "no-figure") return "Der Wortlaut nennt keine Zahl, nach der es zu sagen wäre.";
  if (told.reason === "not-read") return "Die Zahlen des Wortlauts wurden nicht gelesen.";
  if (told.lacks === "height") return "Im Plan fehlt die Höhe des Beckens.";
  return told.lacks === "hardness" ? "Im Plan fehlt die Gesamthärte." : "Ein Plan sagt es nicht.";
}

const noted = (note: NonNullable<ToldRequirement["note"]>) =>
  typeof note === "number" ? `Siehe Anmerkung ${note}.` : `Anmerkung: ${standardIn(note)}`;

/** What reports on official requirements say in German. */
const words = (): RequirementWords => ({
  lead: "Was hier bekannte Gesetze und amtliche Leitlinien verlangen, Satz für Satz und mit anderen Worten als ihren, neben dem, was der Plan hat. Es gilt, was am Standort des Beckens in Kraft ist. „Erfüllt“ heißt nur, dass das, was der Plan hat, an das heranreicht, was dieser eine Satz verlangt: es kann mehr verlangt sein.",
  none: "Was ein Gesetz oder eine amtliche Leitlinie verlangt, ist hier nicht bekannt. Das ist keine Erlaubnis: es entscheidet das Recht am Standort des Beckens, und das kann viel verlangen.",
  instrument: ({ jurisdiction, instrument, date, forces: told }) => {
    const force =
      told.length > 1
        ? "teils bindend, teils nicht, wie jeweils angegeben"
        : told.map((one) => forces[one]).join();
    return `${placeIn(jurisdiction)}: ${instrumentIn(instrument)} (${date ?? "Datum nicht bekannt"}; ${force})`;
  },
  requirement: ({ answer, animals, asks, dependsOn, basis, binds, note, article, ...told }) => {
    const on = dependsOn.map((one) => depending(one, animals ? "diese Fische" : "die Fische"));
    const place = [
      articleIn(article),
      binds === undefined ? [] : bound(binds),
      basis ? { read: "nachgelesen", memory: "aus dem Gedächtnis, nicht gelesen" }[basis] : [],
    ].flat();
    return [
      `${answers[answer]}${animals ? ` (${animals.who})` : ""}: ${standardIn(asks)}`,
      told.asked ? asked(told.asked, animals ? "dieser Fische" : "der Fische") : [],
      told.has ? has(told.has) : [],
      on.length > 0
        ? `Es kommt darauf an, ${allOf(on)}: am einen Ende ist es erfüllt, am anderen nicht.`
        : [],
      told.open ? open(told.open) : [],
      `Fundstelle: ${place.join("; ")}.`,
      note === undefined ? [] : noted(note),
    ]
      .flat()
      .join(" ");
  },
  note: (number, note) => `Anmerkung ${number}: ${standardIn(note)}`,
  caution: standardIn,
  shapes: {
    rectangle: "eine rechteckige Grundfläche",
    polygon: "eine eckige Grundfläche",
    circle: "eine runde Grundfläche",
    sector: "eine Grundfläche als Kreisausschnitt",
    bowed: "eine Grundfläche mit gewölbter Front",
  },
  forces,
  closing:
    "Maßgeblich ist der geltende Wortlaut: die zuständige Behörde fragen, in der Regel das Veterinäramt.",
});

/** What reports say in German, and what is said of official requirements. */
export const germanRequirements: RequirementMessages = /* @__PURE__ */ withRequirements(
  german,
  /* @__PURE__ */ words(),
);
