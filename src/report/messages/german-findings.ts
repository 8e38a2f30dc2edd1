import type { Measures, WordKind, Words } from "../../compatibility";
import type { PlannedWaterRule } from "../../compatibility/inner";
import type { FactName } from "../../plan";
import type { Figure } from "../figure";
import type { ActRule } from "../matters/acts";
import type { SharedWaterRule } from "../matters/water-rules";
import { allOf, anyOf, asks, measures, needs, they, verb } from "./german-grammar";
import { effectIn, jurisdictionIn } from "./german-laws";
import {
  asked,
  deeds,
  doneWhen,
  feedingHours,
  flowing,
  groundsHad,
  hides,
  parts,
  places,
  plantHarm,
  ranges,
  sexWords,
} from "./german-words";
import type { Messages, Told, ToldRoom } from "./messages";
import { beyond, isMeasurable, isVeryHeavy, isWhole, square, upwards } from "./sentences";

// Names stand as subjects or objects, never after a preposition that asks for another case. Nobody is addressed.

type WordOf<Kind extends WordKind> = { readonly value: Words[Kind] } | undefined;

/** How a figure of each kind of water is said. */
const at = {
  temperature: (figure: string) => figure,
  pH: (figure: string) => `pH ${figure}`,
  hardness: (figure: string) => `${figure} Gesamthärte`,
  salinity: (figure: string) => `${figure} Salzgehalt`,
};

const noneSuits = {
  temperature: "keine Temperatur passt",
  pH: "kein pH-Wert passt",
  hardness: "keine Härte passt",
  salinity: "kein Salzgehalt passt",
};

function sharedWater(water: keyof typeof at) {
  return (told: Told<Measures[SharedWaterRule]>) => {
    const {
      weight,
      from,
      fromMany,
      fromObject,
      to,
      toMany,
      toObject,
      oneKind,
      measures: known,
      figure,
    } = told;
    const shared = at[water](figure(known.shared));
    if (weight === "favourable")
      return `für ${oneKind ? toObject : `${fromObject} und ${toObject}`} passt: ${shared}.`;
    const [ask, other] = [asks(known.from, fromMany), asks(known.to, toMany)];
    const each = `${from} ${ask} ${at[water](figure(known.from))}, ${to} ${other === ask ? "" : `${other} `}${at[water](figure(known.to))}`;
    if (weight === "restricting") {
      return known.shared ? `${each}.` : `${each}: eine Seite muss ein wenig nachgeben.`;
    }
    if (weight === "blocking" && known.shared)
      return `${each}: gemeinsam ist nur ${shared}, und das erträgt die eine Art, ohne dabei zu gedeihen.`;
    return weight === "blocking"
      ? `${each}: ${noneSuits[water]} für beide.`
      : `${each}: ob ein gemeinsamer Wert genügt, hat niemand gesagt.`;
  };
}

function plannedWater(water: keyof typeof at) {
  return ({ weight, from, fromMany, measures: known, figure }: Told<Measures[PlannedWaterRule]>) => {
    const { kept, optimum, planned, hottest, coolest, limit } = known;
    const own = planned ?? hottest ?? coolest;
    const season = (hottest && " am heißesten Tag") ?? (coolest && " in der kühlsten Jahreszeit") ?? "";
    const plan = own ? `; geplant: ${figure(own, kept)}${season}` : "";
    if (optimum)
      return `${from} ${verb(fromMany, "gedeiht", "gedeihen")} am besten bei ${at[water](figure(optimum))}${plan}.`;
    const text = `${from} ${asks(kept, fromMany)} ${at[water](figure(kept, own))}${plan}`;
    if (weight === "advisory" && season)
      return `${text}, was vorübergehend zu ertragen ist, nicht auf Dauer.`;
    if (weight === "advisory") return `${text}, am Rand dessen, was auf Dauer zu ertragen ist.`;
    return limit
      ? `${text}; ${beyond(limit, figure, ranges)} ${verb(fromMany, "leidet oder stirbt das Tier", "leiden oder sterben sie")}.`
      : `${text}.`;
  };
}

const planned = (figure: string) => figure && `; geplant: ${figure}`;

/** Animals of one sex among those named; of one animal its name. */
const sexed = (sex: Words["sex"] | undefined, who: string, many: boolean) =>
  sex && many ? `${sexWords[sex][2]} ${who}` : who;

/** Others, and before them their own kind if it is harmed too. */
const ownToo = ({ ownToo: isOwnToo }: Pick<Told<unknown>, "ownToo">, others: string) =>
  isOwnToo ? `Artgenossen${others.includes(" und ") ? "," : " und"} ${others}` : others;

/** Whom some harm: their own kind, others, or both. */
const harmed = (told: Pick<Told<unknown>, "oneKind" | "ownToo" | "toObject">) =>
  told.oneKind ? "Artgenossen" : ownToo(told, told.toObject);

function act(whom: (told: Told<Measures[ActRule]>) => string) {
  return (told: Told<Measures[ActRule]>) => {
    const { act: deed, doer, once, when } = told.measures;
    const { from, fromMany: many, again } = told;
    const [one, several, after] = deed ? deeds[deed.value] : (["schadet", "schaden", ""] as const);
    const harms = verb(many, one, several);
    const harmed = ownToo(told, whom(told));
    const isAnyway = deed?.value === "robs-food" || (told.weight === "blocking" && when?.value === "crowded");
    const isLasting = told.weight === "blocking" && deed?.value === "chases";
    const lasting = isLasting ? ", ohne dass ein Entkommen möglich ist" : "";
    const grown = once ? ", einmal ausgewachsen," : "";
    const start = again
      ? `außerdem ${harms} ${they(many)}${grown}`
      : `${sexed(doer?.value, from, many)}${grown} ${harms}`;
    return `${start} ${harmed}${doneWhen(after, isAnyway ? undefined : when?.value)}${lasting}.`;
  };
}

/** `männliche Oskars verteidigen je`, `der Oskar verteidigt`, `Oskars verteidigen je Brutpaar`. */
function holder(of: WordOf<"territoryHolder">, who: string, many: boolean): string {
  if (!many) return `${who} verteidigt`;
  if (of?.value === "pair") return `${who} verteidigen je Brutpaar`;
  return `${of && of.value !== "each" ? `${sexWords[of.value][2]} ` : ""}${who} verteidigen je`;
}

const whereabouts = (zone: WordOf<"zone">) => (zone ? parts[zone.value] : "im selben Teil des Beckens");

/** What the spines of a family are like. */
const spinesOf: Readonly<Record<string, string>> = {
  Botiidae: "unter jedem Auge klappt einer aus",
  Cobitidae: "unter jedem Auge klappt einer aus",
  Loricariidae: "an Wangen und Flossen",
  Callichthyidae: "ein Stich brennt, und die Familie hat Giftdrüsen",
};

/** Catfishes whose sting hurts for hours; what else has venom is for trained hands. */
const stinging: ReadonlySet<string> = new Set(["Clariidae", "Mochokidae", "Pimelodidae"]);

export const hazards: Messages["hazards"] = (hazard, of) => {
  const named = allOf(of.map(({ who }) => who));
  if (hazard === "bite")
    return `Bisse: ${named}. Hände fernhalten; eine tiefe Wunde gehört in ärztliche Behandlung.`;
  if (hazard === "shock") return `Spürbare Stromschläge: ${named}. Hände aus dem Wasser halten.`;
  if (hazard === "spines") {
    const told = of.map(({ who, family }) => {
      const like = Object.hasOwn(spinesOf, family) && spinesOf[family];
      return like ? `${who} (${like})` : who;
    });
    return `Stacheln: ${allOf(told)}. Mit einem Behälter umsetzen, nicht mit Hand oder Netz; eine Wunde, die stark schmerzt, anschwillt oder nicht heilt, gehört in ärztliche Behandlung.`;
  }
  const trained = of.every(({ family }) => stinging.has(family)) ? "" : "nur für geübte Hände, ";
  return `Gift: ${named}; ${trained}nie mit bloßen Händen anfassen. Nach einem Stich sofort ärztliche Hilfe suchen, bei Beschwerden an Atmung, Brust oder Herz den Notruf wählen.`;
};

/** How long those are that are measurably long. */
const shownLength = (length: Figure | undefined, figure: (length: Figure | undefined) => string) =>
  isMeasurable(length) ? ` (${figure(length)})` : "";

function predation(told: Told<Measures["predation"]>): string {
  const { from, fromMany, to, toObject, toMany, oneKind, weight, figure } = told;
  const { of, prey, hunter, greatestPrey, safeFrom, hunts, defence } = told.measures;
  const eats = verb(fromMany, "frisst", "fressen");
  if (of?.value === "egg" && weight === "restricting")
    return `${from} ${eats} die Eier, die ${to} ${verb(toMany, "legt", "legen")}.`;
  if (of?.value === "egg")
    return `${from} ${verb(fromMany, "sucht", "suchen")} nachts Nahrung und ${verb(fromMany, "kann", "können")} die Eier fressen, die ${to} ${verb(toMany, "bewacht", "bewachen")}.`;
  if (of)
    return oneKind || from === to
      ? `${from} ${eats} ${oneKind ? "den eigenen" : "ihren"} Nachwuchs.`
      : `${from} ${eats}, was ${to} an Nachwuchs ${verb(toMany, "hat", "haben")}.`;
  if (safeFrom) {
    const tooLarge = `; zu groß sind Tiere von ${figure(upwards(safeFrom))}`;
    if (oneKind) return `${from} ${eats} Artgenossen, solange sie klein sind${tooLarge}.`;
    const grown = told.fromNow && " ausgewachsen";
    return `${from} ${eats}${grown} ${toObject} ${prey ? `mit ${figure(prey)} Länge` : "in kleiner Größe"}${tooLarge}.`;
  }
  const grows =
    hunter && `ausgewachsen ${verb(fromMany, "misst der Jäger", "messen die Jäger")} ${figure(hunter)}`;
  const takes = greatestPrey ? `gefressen wird Beute bis etwa ${figure(greatestPrey)}` : grows;
  const size = prey && `${to} ${measures(toMany)} ${figure(prey)}`;
  const why = [takes, size].filter(Boolean).join(", ");
  if (oneKind && weight === "advisory")
    return `${from} ${verb(fromMany, "könnte", "könnten")} Artgenossen fressen; manche tun es.`;
  const night = hunts && !defence ? " nachts" : "";
  const spines = defence ? `; an den Stacheln der Beute kann der Jäger ersticken` : "";
  const later =
    told.fromNow &&
    `; beim Kauf mit ${told.fromNow} ${verb(fromMany, "wirkt das Tier harmlos, ausgewachsen ist es das", "wirken sie harmlos, ausgewachsen sind sie das")} nicht`;
  if (weight !== "advisory")
    return `${from} ${eats}${night} ${toObject}${why && `: ${why}`}${spines}${later}.`;
  const stated = greatestPrey ? `die größte bekannte Beute misst etwa ${figure(greatestPrey)}` : grows;
  const known = [stated, size].filter(Boolean).join(", ");
  return `${from} ${verb(fromMany, "könnte", "könnten")}${night} ${toObject} fressen; manche tun es${known && `: ${known}`}${spines}.`;
}

function footprint({ from, fromMany, weight, measures: known, figure }: Told<Measures["footprint"]>): string {
  const { length, width, needed, planned: own } = known;
  if (length)
    return `${from} ${verb(fromMany, "wird", "werden")} ${figure(length)} lang und ${verb(fromMany, "kann", "können")} in einem ${figure(width)} breiten Becken nicht wenden.`;
  const text = `${from} ${needs(fromMany)} eine Grundfläche von ${figure(needed, own)}${planned(figure(own, needed))}.`;
  if (weight === "advisory") return `${text} ${hardlyLess}`;
  return weight === "blocking" ? `Dieses Becken ist viel zu klein: ${text}` : text;
}

/** Of room that falls short by less than the figures can tell. */
const hardlyLess = "Das ist kaum weniger; mehr wäre besser.";

/** `Goldfische brauchen ein Becken von etwa 150 × 60 cm; geplant: 30 × 20 cm`. */
export function room({ weight, who, many, growing, grownTo, ...told }: ToldRoom): string {
  const { neededSides, exampleSides, neededLength, neededFloor, ownSides, ownLength, ownFloor } = told;
  const needed = neededSides
    ? `ein Becken von etwa ${neededSides}`
    : neededFloor
      ? `eine Grundfläche wie ${exampleSides}`
      : `ein Becken von mindestens ${neededLength} Länge`;
  const own = planned(neededFloor ? ownSides || ownFloor : ownLength);
  if (!who) return `${needed} ${neededFloor && !neededSides ? "bieten" : "wählen"}${own}`;
  const size = grownTo ? ` (${grownTo})` : "";
  const text = growing
    ? `ausgewachsen${size} ${needs(many)} ${who} ${needed}`
    : `${who}${size} ${needs(many)} ${needed}`;
  return `${weight === "blocking" ? "Dieses Becken ist viel zu klein: " : ""}${text}${own}.`;
}

function oxygen({ from, fromMany, fromObject, measures: known, figure }: Told<Measures["oxygen"]>): string {
  const { air, surface, need, hours, temperature, saturation, limit } = known;
  if (surface)
    return `durch so wenig freie Oberfläche kommt kaum Sauerstoff ins Wasser, und ${from} ${needs(fromMany)} ihn.`;
  if (air)
    return `${from} ${verb(fromMany, "ertrinkt", "ertrinken")}, wenn an der Oberfläche keine Luft zu holen ist.`;
  if (hours) {
    return `bei ${figure(temperature)} enthält Wasser ${figure(saturation)} Sauerstoff; steht es still, hat dieser Besatz ihn in ${figure(hours)} bis auf ${figure(limit)} verbraucht, das Mindeste für ${fromObject}.`;
  }
  if (need?.value === "high")
    return `${from} ${needs(fromMany)} viel Sauerstoff und ${verb(fromMany, "leidet", "leiden")}, sobald das Wasser stillsteht.`;
  return `in einer heißen Nacht kann stehendes Wasser zu wenig Sauerstoff für ${fromObject} enthalten.`;
}

const sensitivities: Readonly<Record<Words["sensitivity"], (whom: string) => string>> = {
  copper: (whom) => `kein Kupfer, wie in Heil- und Algenmitteln, für ${whom}.`,
  salt: (whom) => `kein Salz als Heilmittel für ${whom}.`,
  "ammonia-nitrite": (whom) => `${whom} erst einsetzen, wenn der Filter eingefahren ist.`,
  handling: (whom) => `${whom} in einem Behälter mit Wasser umsetzen, nicht im Netz.`,
  "soft-water": (whom) => `kein weiches, saures Wasser für ${whom}: Gehäuse und Häutung nehmen Schaden.`,
};

const groundOf = (words: { readonly value: readonly Words["ground"][] } | undefined) =>
  anyOf((words?.value ?? []).map((word) => groundsHad[word]));

const thingOf = (fact: string | undefined) =>
  fact !== undefined && Object.hasOwn(asked, fact) ? asked[fact as FactName] : "eine Bedingung";

export const lawsSomewhere = (whom: string, entries: number) =>
  `Recht: ${entries} ${entries === 1 ? "Eintrag aus dem Recht eines Ortes betrifft" : "Einträge aus dem Recht mehrerer Orte betreffen"} ${whom}. Den Standort des Beckens angeben, um zu lesen, was davon gilt; maßgeblich ist der geltende Wortlaut.`;

/** What is said of the findings of each rule. */
export const findings = (): Messages["rules"] => ({
  temperature: sharedWater("temperature"),
  ph: sharedWater("pH"),
  "general-hardness": sharedWater("hardness"),
  salinity: sharedWater("salinity"),
  season: ({ from, fromMany, toObject, measures: known, figure }) =>
    `${from} ${needs(fromMany)} in der kühlsten Jahreszeit ${figure(known.season)}, um zu gedeihen: zu kalt für ${toObject}${known.to ? ` (${figure(known.to)})` : ""}.`,
  flow: ({ weight, from, fromObject, to, toObject, oneKind }) => {
    if (weight !== "favourable")
      return `${from} und ${to} brauchen verschiedene Strömungen, jede an ihrem Platz.`;
    return oneKind
      ? `eine Strömung passt für ${toObject}.`
      : `eine Strömung passt für ${fromObject} und ${toObject}.`;
  },
  predation: (told) => predation(told),
  "acts-own-kind": (told) => {
    const { inDoubt, from, fromMany, measures } = told;
    if (!inDoubt) return act(() => "Artgenossen")(told);
    return `${sexed(measures.doer?.value, from, fromMany)} ${verb(fromMany, "verträgt", "vertragen")} vielleicht keine Artgenossen, wie viel Platz auch da ist.`;
  },
  "acts-look-alike": (told) => {
    const likeness =
      told.measures.likeness?.value === "build" ? "ähnlicher Gestalt" : "ähnlicher Zeichnung oder Flossen";
    return act(({ toObject }) => `${toObject} wegen ${likeness}`)(told);
  },
  "acts-others": act(({ toObject }) => toObject),
  "fin-nipping": (told) => {
    const { weight, from, fromMany, measures: known } = told;
    const whom = harmed(told);
    if (known.hunts)
      return `${from} ${verb(fromMany, "könnte", "könnten")} ${whom} nachts im Schlaf an den Flossen verletzen.`;
    if (known.feeds)
      return `${from} ${verb(fromMany, "frisst", "fressen")} auch ${whereabouts(known.feeds)} und ${verb(fromMany, "könnte", "könnten")} ${whom} dabei an den Flossen verletzen.`;
    const bites = verb(fromMany, "verletzt", "verletzen");
    if (weight === "blocking")
      return `${from} ${bites} ${whom} an den Flossen: Gesellschaft wählen, die nicht an Flossen zupft.`;
    return `${from} ${bites} ${whom}${weight === "advisory" ? " hin und wieder" : ""} an den Flossen.`;
  },
  "mucus-grazing": (told) => {
    const { weight, from, fromMany, measures: known } = told;
    const whom = harmed(told);
    if (known.fed)
      return `${from} ${verb(fromMany, "könnte", "könnten")} ${whom} auch gut gefüttert an der Schleimhaut der Flanken verletzen.`;
    const text = `${from} ${verb(fromMany, "verletzt", "verletzen")} ${whom} an der Schleimhaut der Flanken`;
    return weight === "advisory" ? `${text}, wenn zu wenig abzuweiden ist.` : `${text}.`;
  },
  "territory-contest": ({ from, to, measures: { zone } }) =>
    `${from} und ${to} verteidigen beide einen Platz ${whereabouts(zone)}.`,
  "size-and-pace": ({ from, fromMany, toObject, measures: { longer, shorter }, figure }) =>
    `${from} (${figure(longer)}) ${verb(fromMany, "lässt", "lassen")} ${toObject}${shownLength(shorter, figure)} nicht zur Ruhe kommen.`,
  "feeding-competition": ({ from, fromMany, to, toMany }) =>
    `${from} ${verb(fromMany, "hat", "haben")} alles gefressen, bevor ${to} ans Futter ${verb(toMany, "kommt", "kommen")}.`,
  shyness: ({ fromObject, to, toMany }) =>
    `${to} ${verb(toMany, "treibt", "treiben")} ${fromObject} durch Unruhe ins Versteck.`,
  interbreeding: ({ weight, from, to }) =>
    weight === "advisory"
      ? `${from} und ${to} kreuzen sich: keine Jungen weitergeben oder nur eine der beiden Arten halten.`
      : `${from} und ${to} kreuzen sich, und die Jungen sind Hybriden: nur eine der beiden Arten halten.`,
  planting: ({ weight, from, fromMany, to, toMany, measures: { harm } }) =>
    `${from} ${verb(fromMany, ...plantHarm[harm?.value ?? "eats"])}, und ${to} ${needs(toMany)} eingewachsene Pflanzen${weight === "advisory" ? ": robuste Farne und Moos pflanzen" : ""}.`,
  furnishing: ({ from, fromMany, to, measures: known, figure }) => {
    const { cover, openWater } = known;
    if (cover)
      return `${from} und ${to} verlangen zusammen ${figure(cover)} des Beckens als Deckung, von oben gesehen, und ${figure(openWater)} als freien Schwimmraum: beides zugleich hat kein Becken.`;
    return `${from} ${needs(fromMany)} als Boden ${groundOf(known.from)}, ${to} ${groundOf(known.to)}.`;
  },
  "conditions-exclude": ({ from, to, measures: { one, other } }) => {
    const who = allOf([...new Set([from, to].filter(Boolean))]);
    const wanted = [...new Set([thingOf(one?.value), thingOf(other?.value)])];
    return `kein Becken erfüllt zugleich alles, was verlangt wird${who && ` (${who})`}: ${allOf(wanted)}.`;
  },
  "water-temperature": plannedWater("temperature"),
  "water-ph": plannedWater("pH"),
  "water-hardness": plannedWater("hardness"),
  "water-salinity": plannedWater("salinity"),
  oxygen: (told) => oxygen(told),
  "filter-nitrogen": () =>
    "der Filter muss das Ammonium abbauen, das der ausgewachsene, reichlich gefütterte Besatz abgibt.",
  height: ({ weight, from, fromMany, measures: known, figure }) => {
    const own = planned(figure(known.planned, known.needed));
    return weight === "advisory"
      ? `${from} ${verb(fromMany, "gedeiht", "gedeihen")} besser in einem ${figure(known.needed, known.planned)} hohen Becken${own}.`
      : `${from} ${needs(fromMany)} ein ${figure(known.needed, known.planned)} hohes Becken${own}.`;
  },
  zones: ({ weight, from, fromMany, measures: known, figure }) => {
    if (weight === "restricting")
      return `${from} ${verb(fromMany, "lebt", "leben")} ${whereabouts(known.zone)}, und dort summiert sich der Bedarf aller.`;
    const text = `${from} ${verb(fromMany, "lebt", "leben")} ${whereabouts(known.zone)}, und alle, die dort leben, brauchen zusammen eine Grundfläche von ${figure(known.needed, known.planned)}${planned(figure(known.planned, known.needed))}.`;
    if (weight === "advisory") return `${text} ${hardlyLess}`;
    return weight === "blocking" ? `Dieses Becken ist viel zu klein: ${text}` : text;
  },
  territories: ({ from, fromMany, measures: { holder: of, area, zone }, figure }) =>
    `${holder(of, from, fromMany)} einen Platz von etwa ${figure(square(area))} ${whereabouts(zone)}, außer Sicht von Rivalen.`,
  "open-water": ({ from, fromMany, measures: { needed }, figure }) =>
    `${from} ${needs(fromMany)} ${figure(needed)} des Beckens, von oben gesehen, als freien Schwimmraum.`,
  ground: ({ from, fromMany, measures: { needed } }) =>
    `${from} ${needs(fromMany)} als Boden ${groundOf(needed)}.`,
  "hiding-places": ({ from, fromMany, measures: { kinds, needed, own }, figure }) =>
    `${from} ${verb(fromMany, "versteckt", "verstecken")} sich; als Versteck dienen ${anyOf((kinds?.value ?? []).map((kind) => hides[kind]))}: mindestens ${figure(needed)} bieten${own ? ", für alle Arten zusammen" : ""}.`,
  sensitive: ({ fromObject, fromMany, again, measures: { to } }) =>
    sensitivities[to?.value ?? "handling"](again ? they(fromMany) : fromObject),
  "plants-at-risk": ({ from, fromMany, measures: { harm } }) =>
    `${from} ${verb(fromMany, ...plantHarm[harm?.value ?? "eats"])}.`,
  feeding: ({ from, fromMany, measures: known }) => {
    const at = known.places?.value.map((place) => places[place]) ?? [];
    const hours = known.hours?.value.map((hour) => feedingHours[hour]) ?? [];
    return `${from} ${verb(fromMany, "frisst", "fressen")} ${allOf(at)}, ${allOf(hours)}: was andere bekommen, kommt dort vielleicht nicht an.`;
  },
  "longest-run": ({ from, fromMany, weight, measures: known, figure }) => {
    const text = `${from} ${needs(fromMany)} ein ${figure(known.needed, known.planned)} langes Becken${planned(figure(known.planned, known.needed))}.`;
    if (weight === "advisory") return `${text} ${hardlyLess}`;
    return weight === "blocking" ? `Dieses Becken ist viel zu kurz: ${text}` : text;
  },
  footprint: (told) => footprint(told),
  "carbon-dioxide": ({ measures: { pH, hardness, dissolved, limit }, figure }) =>
    `Bei pH ${figure(pH)} und ${figure(hardness)} Karbonathärte enthielte dieses Wasser rund ${figure(dissolved)} Kohlendioxid; ab ${figure(limit)} können Fische nach Luft schnappen: die Oberfläche bewegen und beides neu messen, denn andere Säuren, etwa aus Torf, täuschen.`,
  "cool-season": ({ from, fromMany, measures: known, figure }) =>
    `${from} ${needs(fromMany)} in der kühlsten Jahreszeit ${figure(known.season)}, um zu gedeihen.`,
  "group-size": ({ from, fromMany, weight, measures: known, figure }) => {
    const { max } = known.needed as Figure;
    if (weight === "advisory")
      return `${from} leben ${max === 1 ? "einzeln" : `zu höchstens ${max}`}; geplant: ${figure(known.planned)}.`;
    if (known.fewer)
      return `${from}: ${figure(known.planned)} sind eine ungünstige Zahl; ${figure(known.needed)} halten oder ${figure(known.fewer) === "1" ? "ein einziges Tier" : `höchstens ${figure(known.fewer)}`}.`;
    return `${from} ${needs(fromMany)} Gesellschaft der eigenen Art: ${figure(known.needed)} halten; geplant: ${figure(known.planned)}.`;
  },
  "sex-ratio": ({ weight, from, measures: known, figure }) => {
    const text = `mindestens ${figure(known.needed)} Weibchen je Männchen halten (${from})`;
    return weight === "advisory"
      ? `${text}, sobald die Geschlechter zu erkennen sind.`
      : `${text}, sonst bedrängen die Männchen sie bis zur Erschöpfung.`;
  },
  "both-sexes": ({ from, measures: { lacking } }) =>
    `Junge sind gewünscht (${from}), aber kein ${lacking ? sexWords[lacking.value][0] : "zweites Tier"} geplant.`,
  cover: ({ from, fromMany, measures: { needed }, figure }) =>
    `${from} ${needs(fromMany)} Deckung über ${figure(needed)} des Beckens, von oben gesehen.`,
  plants: ({ from, fromMany }) =>
    `${from} ${verb(fromMany, "gedeiht", "gedeihen")} nur zwischen eingewachsenen Pflanzen.`,
  "settling-company": ({ from, fromMany, weight, measures: { cover }, figure }) => {
    const isShy = `${from} ${verb(fromMany, "ist scheu und kommt", "sind scheu und kommen")} neben ruhigen Fischen hervor`;
    if (isWhole(cover)) return `${isShy}.`;
    return weight === "advisory"
      ? `${from} ${verb(fromMany, "beruhigt", "beruhigen")} sich bei Deckung über ${figure(cover)} des Beckens, von oben gesehen, langsamer als neben ruhigen Fischen im freien Wasser.`
      : `${isShy}; Deckung über ${figure(cover)} des Beckens, von oben gesehen, beruhigt ebenfalls, nur langsamer.`;
  },
  lid: ({ from, fromMany, weight }) =>
    weight === "restricting"
      ? `${from} ${verb(fromMany, "verlässt", "verlassen")} ein offenes Becken: lückenlos abdecken.`
      : `${from} ${verb(fromMany, "kann", "können")} bei Schreck springen: eine Abdeckung ist sicherer.`,
  "flow-places": ({ from, fromMany, measures: { calmest, strongest } }) =>
    `${from} ${needs(fromMany)} einen Platz, an dem ${flowing(calmest?.value ?? strongest?.value, strongest?.value ?? calmest?.value)}.`,
  "caution-floor": ({ measures: { total }, figure }) =>
    total
      ? `Gewicht: etwa ${figure(total)} mit Glas, Kies und Unterschrank. ${isVeryHeavy(total) ? "Vor dem Aufstellen einen Statiker fragen, auf jeder Decke." : "Quer zu den Deckenbalken an eine tragende Wand stellen; bei alten oder hölzernen Decken und im Zweifel einen Statiker fragen."}`
      : `Gewicht: je ${figure({ value: 100, unit: "L" })} etwa ${figure({ value: 125, unit: "kg" })} mit Glas und Unterschrank; bei alten oder hölzernen Decken einen Statiker fragen.`,
  "caution-electricity": () =>
    "Strom: Fehlerstromschutzschalter, Kabel mit Tropfschlaufe unterhalb der Steckdose, Stecker ziehen, bevor eine Hand ins Wasser geht; Installationen gehören in die Hand einer Elektrofachkraft.",
  "caution-hazards": ({ from, fromMany, measures: { hazard, family } }) =>
    hazards(hazard?.value ?? "bite", [{ who: from, many: fromMany, family: family?.value ?? "" }]),
  "caution-zoonoses": () =>
    "Keime: Hände waschen, mit offenen Wunden nicht ins Wasser greifen, bei einer Wunde, die nicht heilt, in der Arztpraxis das Aquarium erwähnen; bei geschwächter Abwehr die Arbeit anderen überlassen.",
  "caution-devices": ({ from, fromMany, measures: { device } }) =>
    device?.value === "heater"
      ? `${from} ${verb(fromMany, "verbrennt", "verbrennen")} sich an einem ungeschützten Heizer: ein Schutzgitter verwenden oder außerhalb des Beckens heizen.`
      : `${from} ${verb(fromMany, "gerät", "geraten")} in den Ansaugkorb von Pumpen: mit Schaumstoff abdecken.`,
  "caution-law": ({ fromObject, measures: { jurisdiction, effect, instrument, date, basis: of, laws } }) =>
    laws
      ? lawsSomewhere(fromObject, (laws as Figure).value ?? 1)
      : `Recht, betrifft ${fromObject}, ${jurisdictionIn(jurisdiction?.value)}: ${effectIn(effect?.value)} (${instrument?.value}; ${date?.value === "undated" ? "ohne Datum" : date?.value}${of?.value === "memory" ? "; aus dem Gedächtnis, nicht gelesen" : ""}.) Maßgeblich ist der geltende Wortlaut.`,
  "caution-release": () =>
    "Tiere, Pflanzen oder Beckenwasser nie in die Natur bringen: Tiere weitervermitteln oder tierärztlichen Rat holen.",
});
