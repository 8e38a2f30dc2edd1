import type { Words } from "../../compatibility";
import { anyOf, verb } from "./german-grammar";
import { feedingHours, flowing, flowOf, foods, groundsHad, places, sexWords } from "./german-words";
import type { Messages, ToldCondition } from "./messages";
import { choicesOfFood, foam, halfUp, spaced } from "./sentences";

// Names stand as subjects or objects, never after a preposition that asks for another case. Nobody is addressed.

/** `höchstens 2 Männchen halten (Schwertträger)`, `kein Männchen halten (Schwertträger)`. */
function noMoreThan({ max, several, figure }: ToldCondition, what: string): string {
  if (max === 0) return `kein ${what} halten (${several})`;
  return `höchstens ${figure(max === undefined ? undefined : { value: max })} ${what}${what === "Tier" && max !== 1 ? "e" : ""} halten (${several})`;
}

/** How food reaches an animal. */
const feedingWays: Readonly<Record<string, string>> = {
  ...places,
  ...feedingHours,
  apart: "abseits der Schnelleren",
};

/** `Frostfutter geben, wo und wann Neonsalmler fressen`, `im Dunkeln füttern (Neonsalmler)`. */
function fedWith({ of, many, words }: ToldCondition): string {
  const { given, reached } = choicesOfFood(words, foods, feedingWays);
  return [
    given.length > 0 && `${anyOf(given)} geben, wo und wann ${of} ${verb(many, "frisst", "fressen")}`,
    reached.length > 0 && `${anyOf(reached)} füttern${given.length > 0 ? "" : ` (${of})`}`,
  ]
    .filter(Boolean)
    .join(", oder ");
}

/** How a share of the tank is seen, which is said once in a sentence. */
export const seenFromAbove = " (von oben gesehen)";

/** What a plan is asked to have, a clause each fact. */
export const conditions = (): Messages["conditions"] => ({
  "tank.longestRun": ({ wanted }) => `ein Becken mit ${wanted} Länge wählen`,
  "tank.footprint": ({ wanted }) => `eine Grundfläche von ${wanted} bieten`,
  "tank.height": ({ wanted }) => `ein Becken mit ${wanted} Höhe wählen`,
  "tank.openWater": ({ wanted }) => `${wanted} des Beckens${seenFromAbove} zum Schwimmen frei lassen`,
  "tank.substrate": ({ words }) =>
    `als Boden ${anyOf(words.map((word) => groundsHad[word as Words["ground"]] ?? String(word)))} wählen`,
  "tank.hides": ({ of, wanted, min }) =>
    `${min === 1 ? "einen Platz" : `${wanted} Plätze`} zum Verstecken, Schlafen oder Laichen bieten (${of})`,
  "tank.openSurface": ({ wanted }) =>
    `${wanted} der Oberfläche von Blättern frei halten, mit Luft zwischen Wasser und Abdeckung`,
  "tank.sightBreaks": ({ wanted, min }) =>
    `die Sicht über den Boden mit Wurzeln, Steinen oder Dickicht an ${wanted} ${min === 1 ? "Stelle" : "Stellen"} unterbrechen`,
  // Eight weeks: the end of ripening in `filterCapacity`.
  "tank.filter.ripeArea": ({ min = 0, figure }) =>
    `einen seit acht Wochen laufenden, eingefahrenen Filter mit etwa ${figure(foam(min))} grobem Schaumstoff betreiben`,
  "tank.lid": () => "das Becken lückenlos abdecken",
  "tank.cover": ({ wanted }) =>
    `${wanted} des Beckens${seenFromAbove} mit Pflanzen, Wurzeln oder Steinen als Deckung einrichten`,
  "tank.plants": ({ words }) =>
    words.includes("none")
      ? "nur Pflanzen halten, um die es nicht schade ist"
      : "die Pflanzen zuerst einwachsen lassen",
  "tank.flow.calmest": ({ words }) => `einen ruhigen Platz bieten, an dem ${flowing("still", words.at(-1))}`,
  "tank.flow.strongest": ({ words }) => `das Wasser irgendwo mindestens ${flowOf(words[0])} strömen lassen`,
  "water.temperature": ({ wanted }) => `das Wasser bei ${wanted} halten`,
  "water.hottest": ({ wanted }) => `das Wasser am heißesten Tag bei ${wanted} halten`,
  "water.coolest": ({ wanted }) => `das Wasser in der kühlsten Jahreszeit bei ${wanted} halten`,
  "water.pH": ({ wanted }) => `das Wasser bei pH ${wanted} halten`,
  "water.generalHardness": ({ wanted }) => `das Wasser bei ${wanted} Gesamthärte halten`,
  "water.salinity": ({ wanted }) =>
    `das Wasser bei ${wanted} Salzgehalt halten (Gramm Meersalz je Kilogramm Wasser)`,
  "group.count": (told) =>
    told.max === undefined
      ? `${told.wanted} ${told.min === 1 ? `Tier halten (${told.several})` : `${told.several} halten`}`
      : noMoreThan(told, "Tier"),
  "group.males": (told) => noMoreThan(told, "Männchen"),
  "group.females": (told) => noMoreThan(told, "Weibchen"),
  "group.pairs": ({ several }) =>
    `nur Tiere eines Geschlechts halten (${several}), damit keine Brut entsteht`,
  "group.femalesPerMale": ({ several, wanted }) => `${wanted} Weibchen je Männchen halten (${several})`,
  "group.length": ({ several, min, max, figure }) =>
    max === undefined
      ? `${several} mit ${figure({ min: halfUp(min ?? 0), unit: "cm" })} Länge kaufen`
      : `${several} wählen, die nicht über ${figure({ value: max, unit: "cm" })} hinauswachsen`,
  "group.longFins": ({ several }) => `eine Zuchtform mit kurzen Flossen wählen (${several})`,
  "group.sex": ({ several, words }) =>
    `nur ${words.map((sex) => (sex === "male" ? sexWords.male[1] : sexWords.female[1])).join(" oder ")} halten (${several})`,
  "group.form": ({ several, words }) =>
    `diese Zuchtform wählen (${several}): ${anyOf(words.map((word) => spaced(String(word))))}`,
  "group.grown": ({ several }) => `nur junge ${several} halten und vor dem Auswachsen abgeben`,
  "group.offerings": (told) => fedWith(told),
  "group.company": ({ several }) =>
    `ruhige Fische im freien Wasser halten, die ${several} weder fressen noch von ihnen gefressen werden`,
});
