import type { Words } from "../../compatibility";
import type { Kind } from "../../species";
import { german } from "./german";
import { allOf, anyOf } from "./german-grammar";
import { effectIn, jurisdictionIn } from "./german-laws";
import { regionIn } from "./german-regions";
import {
  deeds,
  doneWhen,
  foods,
  groundsHad,
  grown,
  hides,
  holders,
  places,
  prey,
  sexWords,
  targets,
} from "./german-words";
import type { PageMessages, PageWords, ToldAct, ToldGroup } from "./page-messages";
import { sentenceCase as capital, scientificOf } from "./sentences";
import { withPage } from "./with-page";

// Names stand as subjects or objects, never after a preposition that asks for another case. Nobody is addressed.

const numbers = [
  "kein",
  "ein",
  "zwei",
  "drei",
  "vier",
  "fünf",
  "sechs",
  "sieben",
  "acht",
  "neun",
  "zehn",
  "elf",
  "zwölf",
];

/** A small number as a word. */
const count = (many: number) => numbers[many] ?? String(many);

/** A number that begins a sentence or stands by itself: `eins` and no more than that is never said. */
const atLeast = (many: number) => `mindestens ${many === 1 ? "ein Tier" : `${count(many)} Tiere`}`;

const animals: Readonly<Record<Kind, readonly [article: string, one: string, many: string]>> = {
  fish: ["Ein", "Fisch", "Fische"],
  shrimp: ["Eine", "Garnele", "Garnelen"],
  crayfish: ["Ein", "Krebs", "Krebse"],
  crab: ["Eine", "Krabbe", "Krabben"],
  snail: ["Eine", "Schnecke", "Schnecken"],
  mussel: ["Eine", "Muschel", "Muscheln"],
  frog: ["Ein", "Frosch", "Frösche"],
};

const living: Readonly<Record<Words["living"], string>> = {
  alone: "allein lebend",
  pair: "paarweise lebend",
  harem: "im Harem lebend",
  group: "gesellig",
  shoal: "im Schwarm lebend",
  either: "allein oder gesellig",
};

const whereOf = (zones: readonly Words["zone"][]) =>
  zones.length >= 3 ? "in allen Wasserschichten" : allOf(zones.map((zone) => places[zone]));

const hours: Readonly<Record<Words["light"], string>> = {
  day: "am Tag",
  dusk: "in der Dämmerung",
  night: "nachts",
};

const flows: Readonly<Record<Words["flow"], string>> = {
  still: "stehendes Wasser",
  gentle: "schwache Strömung",
  moderate: "mäßige Strömung",
  strong: "starke Strömung",
};

/** What animals find, where that is not called like what keepers give. */
const found = (): Readonly<Record<Words["food"], string>> => ({
  ...foods,
  "fallen-insects": "ins Wasser gefallene Insekten",
  insects: "Insekten und ihre Larven",
  crustaceans: "kleine Krebstiere",
  molluscs: "Schnecken und Muscheln",
  fish: "Fische",
  algae: "Algen",
  plants: "Pflanzen und Früchte",
  wood: "Holz",
  detritus: "feine abgestorbene Stoffe",
});

/** `sechs Panzerwelse`, `ein Paar Honigguramis`, `Guppys (ein Männchen und zwei Weibchen)`. */
function group({ name, several, count: number, males, females }: ToldGroup): string {
  if (number === 1) return `1 ${name}`;
  if (males === 1 && females === 1) return `ein Paar ${several}`;
  const sexed = `${count(males)} Männchen und ${count(females)} Weibchen`;
  return males > 0 && females > 0 ? `${several} (${sexed})` : `${count(number)} ${several}`;
}

function act({ does, doer, targets: at, when, from }: ToldAct): string {
  const [, verb, after] = deeds[does];
  const other = doer === "male" ? "female" : "male";
  const whom = at.map((target) => {
    if (doer && target === "own-sex") return `andere ${sexWords[doer][1]}`;
    return doer && target === "other-sex" ? sexWords[other][1] : targets[target];
  });
  const who = doer ? sexWords[doer][1] : "sie";
  const start = from === "adult" ? `ausgewachsen ${verb} ${who}` : `${who} ${verb}`;
  const told = doneWhen(after, does === "robs-food" ? undefined : when);
  return `${capital(start)} ${allOf(whom)}${told}.`;
}

const eachHolder = (holder: Words["territoryHolder"]) => (holder === "pair" ? "jedes Paar" : holders[holder]);

const aHide: Readonly<Record<Words["hide"], string>> = {
  caves: "eine Höhle",
  shells: "ein leeres Schneckenhaus",
  wood: "eine Wurzel",
  leaves: "Laub",
  rocks: "einen Steinhaufen",
};

/** So many regions are named; of the others only how many there are. */
const mostRegions = 9;

function regionsTold(all: readonly string[]): string {
  const told =
    all.length > mostRegions
      ? [...all.slice(0, mostRegions - 1), `${all.length - mostRegions + 1} weitere`]
      : all;
  return told.some((text) => text.includes(",")) ? told.join("; ") : allOf(told);
}

const page: PageWords = {
  headings: {
    glance: "Auf einen Blick",
    origin: "Herkunft",
    size: "Größe und Alter",
    water: "Wasser",
    tank: "Becken",
    behaviour: "Verhalten",
    company: "Gesellschaft",
    feeding: "Ernährung",
    breeding: "Fortpflanzung und Junge",
    forms: "Zuchtformen",
    watch: "Worauf zu achten ist",
    certainty: "Wie sicher das ist",
    cautions: "Vorsicht",
    sources: "Quellen",
  },
  alsoCalled: (names) => `Auch: ${allOf(names)}.`,
  formerly: (synonyms) =>
    `In älteren Büchern und im Handel: ${allOf(synonyms).replaceAll("(misapplied)", "(zu Unrecht)")}.`,
  formOf: (scientific) => `Eine Zuchtform von ${scientific}.`,
  subject: ({ several }) => ({ who: several, many: true }),
  group,
  region: regionIn,
  jurisdiction: jurisdictionIn,
  effect: effectIn,
  scientific: scientificOf,
  glance: {
    summary: ({ kind, living: how, zones, length, temperature }) => {
      const [article, one] = animals[kind];
      const parts = [
        `${article} ${one}${zones.length > 0 ? ` ${whereOf(zones)}` : ""}`,
        how && living[how],
        length && `ausgewachsen ${length} lang`,
        temperature && `für Wasser mit ${temperature}`,
      ];
      return `${parts.filter(Boolean).join(", ")}.`;
    },
    terms: {
      length: "Länge",
      temperature: "Temperatur",
      pH: "pH-Wert",
      hardness: "Härte",
      salinity: "Salz",
      tank: "Becken",
      number: "Zahl",
      food: "Futter",
      life: "Alter",
    },
    tank: (size, many) => `mindestens ${size} für ${many === 1 ? "ein Tier" : `${count(many)} Tiere`}`,
    number: (least, how, amiss) => {
      if (how === "pair") return "ein Paar";
      if (how === "alone") return "ein Tier";
      if (how === "harem")
        return least > 2
          ? "ein Männchen mit mehreren Weibchen"
          : "ein Männchen mit mindestens einem Weibchen";
      return `${atLeast(least)}${amiss && `, aber nicht ${amiss}`}`;
    },
    know: "Vor dem Kauf zu wissen",
    incomplete: (traits) => `Für ein Urteil ist zu wenig bekannt, es fehlt: ${allOf(traits)}.`,
    grows: (length) => `Sie werden bis zu ${length} lang.`,
    hunts: (length) => `Sie fressen andere Fische und versuchen es bei allen bis ${length}.`,
    lives: (age) => `Sie werden etwa ${age} alt.`,
    hazards: {
      venom: "Sie sind giftig.",
      spines: "Ihre Stacheln verletzen und verfangen sich in Netzen.",
      bite: "Ihr Biss kann Menschen verletzen.",
      shock: "Sie teilen Stromschläge aus, die ein Mensch spürt.",
    },
    laws: (jurisdictions) =>
      `Manche Vorschriften schränken Haltung oder Handel ein: ${allOf(jurisdictions)}.`,
    threatened: (status) => `In der Natur ${german.words.conservation[status]}: Nachzuchten wählen.`,
  },
  origin: {
    from: (regions) => `Heimat: ${regionsTold(regions.map(regionIn))}.`,
    waters: (waters) => `Sie leben in ${allOf(waters.map((water) => german.words.waters[water]))}.`,
    supply: {
      farmed: "Fast alle angebotenen Tiere sind Nachzuchten.",
      mixed: "Angeboten werden Nachzuchten und Wildfänge.",
      wild: "Fast alle angebotenen Tiere sind Wildfänge.",
    },
    conservation: (status, year) =>
      `Rote Liste: ${german.words.conservation[status]}${year ? ` (${year})` : ""}.`,
  },
  size: {
    length: ({ sex, usual, greatest, of }) => {
      const who = sex ? sexWords[sex][1] : "Ausgewachsene Tiere";
      const what = { whole: "", shell: " (Gehäuse)", disc: " (Scheibe)" }[of];
      if (!usual) return `${who} messen höchstens ${greatest}${what}.`;
      return `${who} messen meist ${usual}${what}${greatest ? `, höchstens ${greatest}` : ""}.`;
    },
    grownAt: (age) => `Ausgewachsen sind sie mit etwa ${age}.`.replace(/(Monate|Jahre)\.$/, "$1n."),
    lifespan: (usual, greatest) => {
      if (!usual) return `Das älteste bekannte Tier wurde ${greatest} alt.`;
      return `Bei guter Pflege werden sie etwa ${usual} alt${greatest ? `, höchstens ${greatest}` : ""}.`;
    },
  },
  water: {
    table: "Das Wasser für die Haltung",
    columns: ["Wert", "Haltung", "am besten", "leiden oder sterben", "auch angegeben"],
    rows: {
      temperature: "Temperatur",
      pH: "pH-Wert",
      generalHardness: "Gesamthärte",
      carbonateHardness: "Karbonathärte",
      salinity: "Salzgehalt",
    },
    flow: (calmest, strongest) =>
      calmest === strongest
        ? `Sie brauchen ${flows[calmest]}.`
        : `Passend ist alles von ${calmest === "still" ? "stehendem Wasser" : flows[calmest].replace("e Strömung", "er")} bis ${flows[strongest].replace("e S", "er S")}.`,
    oxygen: {
      low: "Eine warme Nacht ohne Pumpe schadet ihnen nicht.",
      ordinary: "Sie atmen ruhig, solange sich die Oberfläche etwas bewegt.",
      high: "Sie brauchen viel Sauerstoff und atmen schwer, sobald das Wasser stillsteht.",
    },
    air: (kind) => {
      if (kind === "none") return "";
      return kind === "obligate"
        ? "Sie atmen Luft und ertrinken ohne Zugang zur Oberfläche."
        : "Bei Sauerstoffmangel holen sie Luft an der Oberfläche.";
    },
    coolSeason: (temperature, months) =>
      `Jedes Jahr brauchen sie eine kühle Zeit mit ${temperature}${months && `, ${months} lang`}.`,
    saidTable: "Was Quellen sagen",
    saidColumns: ["Wert", "Angabe", "Bedeutung", "Quelle", "Bemerkung"],
    setAside: (why) => `Verworfen: ${why}`,
    ofClass: "Klasse eines Handbuchs",
  },
  tank: {
    least: ({ group: who, animals: many, length, floor, sides, further }) => {
      const room = [
        length && `ein Becken mit mindestens ${length} Länge`,
        floor && `${length ? "und " : "mindestens "}${floor} Grundfläche`,
        floor && sides && `(etwa ${sides})`,
      ];
      const more = further && `, jedes weitere Tier ${further} mehr`;
      return `${capital(who)} ${many === 1 || who.startsWith("ein Paar") ? "braucht" : "brauchen"} ${room.filter(Boolean).join(" ")}${more}.`;
    },
    height: (height) => `Das Becken ist mindestens ${height} hoch.`,
    zones: (zones) => `Sie halten sich ${whereOf(zones)} auf.`,
    cover: (cover, openWater) => {
      if (cover && openWater)
        return `Von oben gesehen dienen mindestens ${cover} des Beckens als Deckung, und ${openWater} bleiben zum Schwimmen frei.`;
      return cover
        ? `Von oben gesehen dienen mindestens ${cover} des Beckens als Deckung.`
        : `Mindestens ${openWater} des Beckens bleiben frei.`;
    },
    grownIn: "Sie gedeihen nur zwischen eingewachsenen Pflanzen.",
    ground: (all) =>
      all.length > 0
        ? `Sie brauchen als Boden ${anyOf(all.map((ground) => groundsHad[ground]))}.`
        : "Der Bodengrund ist gleichgültig.",
    hides: ({ anyOf: kinds, each, holder, sharedBy = 1 }) => {
      const many = anyOf(kinds.map((kind) => hides[kind]));
      const one = anyOf(kinds.map((kind) => aHide[kind]));
      if (sharedBy > 1)
        return `Zum Verstecken, Schlafen oder Laichen dienen ${allOf(kinds.map((kind) => hides[kind]))}, je ${count(sharedBy)} Tiere ein Platz.`;
      return `${capital(eachHolder(holder))} braucht ${each > 1 ? `${count(each)} Plätze (${many})` : one} zum Verstecken, Schlafen oder Laichen.`;
    },
    noHides: "Eine Höhle brauchen sie nicht.",
    jumps: {
      seldom: "",
      startled: "Erschreckt springen sie: das Becken abdecken.",
      readily: "Sie verlassen das Wasser ohne Anlass: das Becken lückenlos abdecken.",
    },
    effects: ({ digs, uproots, eatsPlants }) => {
      const does = [digs && "graben", uproots && "reißen Pflanzen aus", eatsPlants && "fressen Pflanzen"];
      const told = does.filter((deed) => deed !== false);
      return told.length > 0 ? `Sie ${allOf(told)}.` : "Pflanzen sind vor ihnen sicher.";
    },
    territory: (holder, sides, zone) =>
      `${capital(eachHolder(holder))} verteidigt etwa ${sides} ${places[zone]}.`,
  },
  behaviour: {
    living: ({ several }, how) =>
      `${capital(several)} ${
        {
          alone: "leben allein: ein Tier je Becken",
          pair: "leben paarweise",
          harem: "leben im Harem",
          group: "suchen die Gesellschaft ihrer Art",
          shoal: "schwimmen im Schwarm",
          either: "fühlen sich allein und unter ihresgleichen wohl",
        }[how]
      }.`,
    least: (least, avoid) =>
      `${capital(atLeast(least))} halten${avoid ? `; bei ${avoid} geht es schief` : ""}.`,
    largest: (most) => `Mehr als ${count(most)} sind zu viele.`,
    females: (each) =>
      `Auf jedes Männchen ${each === 1 ? "kommt mindestens ein" : `kommen mindestens ${count(each)}`} Weibchen.`,
    shy: "Sie sind scheu und verstecken sich in kahlen Becken und neben unruhiger Gesellschaft.",
    settledBy: "Ruhige Fische im freien Wasser nehmen ihnen die Scheu.",
    settles: "Ihre Ruhe nimmt scheuen Fischen die Scheu.",
    varies: "Kein Tier gleicht dem anderen: eines tut, was das nächste nie tut.",
    act,
    harmless: "Sie lassen alle anderen in Ruhe.",
  },
  company: {
    chosen: ({ who, tank, among }) =>
      `Ermittelt für ${who} in einem Becken von ${tank}, eingerichtet und gepflegt, wie es alle darin brauchen, unter ${among} Arten. Jede ist nur neben ihnen beurteilt; vor dem Kauf den ganzen Besatz prüfen.`,
    none: ({ who, tank, among }) =>
      `Unter ${among} Arten fand sich keine, die zu ihnen passt (${who}, ${tank}).`,
    good: "Gute Gesellschaft",
    watched: "Nur solange Platz und Deckung Bisse verhindern, und mit einem Becken zum Ausweichen",
    listed: "Gesetze mancher Orte nennen sie, siehe ihre Seite",
    why: (reason) => {
      switch (reason.why) {
        case "settles-them":
          return "ruhige Gesellschaft, die die Scheu nimmt";
        case "settled-by-them":
          return "scheu, in dieser Gesellschaft aber ruhig";
        case "harmless":
          return "harmlos für alle";
        case "elsewhere":
          return `${whereOf(reason.zones)}, also aus dem Weg`;
        case "same-home":
          return `aus derselben Heimat (${regionIn(reason.region)})`;
        case "same-water":
          return `für dasselbe Wasser, ${reason.temperature}`;
        case "leaves-alone":
          return "keiner stört den anderen";
        case "holds-its-own":
          return "beide behaupten sich";
      }
    },
    more: (further) => `und ${further} weitere`,
    settlers: "Nehmen ihnen die Scheu",
    settled: "Werden neben ihnen ruhig",
    eats: ({ kinds, eaten, tried, eelLike }) => {
      const what = allOf(kinds.map((kind) => animals[kind][2]));
      if (!eaten) return `${what} werden gefressen, gleich wie lang.`;
      const longer = tried ? `bis ${tried}` : "längere";
      const further = tried === undefined ? "" : `, ${longer} womöglich auch`;
      const alsoEaten = eelLike ? `; aalförmige werden bis ${eelLike} gefressen` : "";
      return `${what} bis ${eaten} Länge werden gefressen${further}${alsoEaten}.`;
    },
    eatsYoung: (all) => `Gefressen werden ${allOf(all.map((one) => prey[one]))}.`,
    eatsNothing: "Sie fressen keine Mitbewohner.",
    prey: "Diese würden sie fressen",
    hunters: "Von diesen würden sie gefressen",
    hungry: "Neben diesen blieben sie hungrig",
    lookAlikes: "Werden für Rivalen gehalten, weil sie sich ähneln",
  },
  feeding: {
    type: {
      herbivore: "Sie leben von Pflanzen und Algen.",
      omnivore: "Sie fressen Tiere und Pflanzen.",
      carnivore: "Sie leben von Tieren.",
      detritivore: "Sie leben von feinen abgestorbenen Stoffen und dem Bewuchs darauf.",
    },
    given: (all) =>
      `Zu füttern: ${allOf(all.flatMap((food) => ({ ...found(), ...grown })[food].split(" und ")))}.`,
    wild: (all) => `In der Natur finden sie ${allOf(all.map((food) => found()[food]))}.`,
    when: (zones, lights) =>
      `Sie fressen ${[whereOf(zones), allOf(lights.map((light) => hours[light]))].filter(Boolean).join(", ")}.`,
    pace: {
      slow: "Sie nehmen ihr Futter langsam, und schnellere sind vor ihnen da: darauf achten, dass sie ihren Teil bekommen.",
      ordinary: "",
      fast: "Sie sind als Erste am Futter und nehmen das meiste.",
    },
  },
  breeding: {
    mode: {
      "scatters-eggs": "Sie legen oder verstreuen ihre Eier und lassen sie liegen.",
      "guards-eggs": "Sie legen ihre Eier auf eine Fläche oder in eine Höhle und bewachen sie.",
      "bubble-nest": "Die Eier werden in einem Schaumnest bewacht.",
      mouthbrooder: "Eier oder Junge werden im Maul getragen.",
      livebearer:
        "Sie bringen lebende Junge zur Welt, die kleine Fische fressen können, und mehr davon, als jemand nimmt: nur ein Geschlecht halten oder Abnehmer haben.",
      "large-young": "Sie bringen wenige Junge zur Welt, zu groß für das Maul kleiner Fische.",
      "broods-young": "Die Eier werden am Körper getragen, und die Jungen schlüpfen fertig entwickelt.",
      "sea-larvae": "Die Larven wachsen nur in Brack- oder Meerwasser heran, im Süßwasser also keine.",
    },
    from: (age) => `Fortpflanzungsfähig sind sie mit etwa ${age}.`.replace(/(Monate|Jahre)\.$/, "$1n."),
    eatsOwn: (eggs, young) =>
      `Sie fressen ${eggs && young ? "Eier und Junge" : eggs ? "Eier" : "Junge"}, auch die eigenen: ohne dichte Deckung oder ein eigenes Becken kommen wenige Junge auf.`,
    crosses: "Sie kreuzen sich mit diesen; nur eine davon halten oder keine Jungen weitergeben",
  },
  forms: {
    intro: (forms) =>
      forms === 1 ? "Eine Zuchtform ist bekannt." : `${capital(count(forms))} Zuchtformen sind bekannt.`,
    fins: (areLong) => (areLong ? "lange Flossen" : "kurze Flossen"),
    alike: "nur in der Farbe",
  },
  watch: {
    told: (sign, troubles) =>
      `${capital(sign)}: ${troubles.map(({ why, act: deed }) => `${why} (${deed})`).join("; oder ")}.`,
    troubles: {
      "nips-fins": { why: "sie beißen in Flossen", act: "keine langflossigen Fische dazu halten" },
      "nips-in-few": {
        why: "sie beißen in Flossen",
        act: "mehr von ihnen und keine langflossigen Fische halten",
      },
      rivals: { why: "ein Rivale der eigenen Art", act: "beide sofort trennen, ein Tier je Becken" },
      bites: {
        why: "einer beißt die anderen",
        act: "den Angreifer herausnehmen, Sichtschutz schaffen, ihn als Letzten zurücksetzen",
      },
      chases: {
        why: "Rangfolge oder Brut",
        act: "die Sicht mit Wurzeln, Steinen oder Pflanzen unterbrechen",
      },
      shy: {
        why: "das Becken ist zu kahl oder die Gesellschaft zu unruhig",
        act: "Deckung schaffen, Unruhe beenden",
      },
      "settled-by": {
        why: "nichts zeigt ihnen, dass alles ruhig ist",
        act: "ruhige Fische ins freie Wasser setzen",
      },
      "alone-in-need": { why: "zu wenige ihrer Art", act: "mehr von ihnen halten" },
      "slow-eater": {
        why: "andere fressen zuerst",
        act: "getrennt füttern, oder dort und dann, wo nur sie fressen",
      },
      "fine-food": { why: "was sie brauchen, fehlt", act: "es jeden Tag bieten" },
      "eats-others": { why: "sie haben sie gefressen", act: "kleine Tiere anderswo unterbringen" },
      jumps: {
        why: "sie sind herausgesprungen oder herausgeklettert",
        act: "auf dem Fußboden suchen; das Becken lückenlos abdecken",
      },
      oxygen: {
        why: "zu wenig Sauerstoff",
        act: "die Oberfläche bewegen, Wasser kühlen und teilweise wechseln",
      },
      air: {
        why: "Luft holen müssen sie, aber nicht hastig und oft",
        act: "die Oberfläche frei halten und das Wasser prüfen",
      },
      "egg-eater": { why: "sie haben Eier oder Junge gefressen", act: "Junge getrennt aufziehen" },
    },
    vet: "Ein Tier, das trotz guten Wassers mager bleibt, nach Luft schnappt oder Wunden hat, die nicht heilen, gehört in tierärztliche Behandlung.",
  },
  certainty: {
    support: ({ known, published, practice, recalled, reckoned }) =>
      `Von ${known} Angaben auf dieser Seite sind ${allOf(
        [
          published > 0 && `${published} in Quellen nachgelesen`,
          practice > 0 && `${practice} zumindest zum Teil gängige Praxis`,
          recalled > 0 && `${recalled} aus dem Gedächtnis und ungeprüft`,
          reckoned > 0 && `${reckoned} aus dem Nächstbekannten erschlossen`,
        ].filter((part) => part !== false),
      )}.`,
    practice: (traits) => `Gängige Praxis ohne Quelle, zumindest zum Teil: ${allOf(traits)}.`,
    reckoned: (traits) => `Erschlossen, zumindest zum Teil: ${allOf(traits)}.`,
    disputed: (traits) => `Hier widersprechen sich die Quellen: ${allOf(traits)}.`,
    unknown: (traits) => `Nicht bekannt: ${allOf(traits)}.`,
  },
  cautions: {
    law: (jurisdiction, effect, instrument, date, recalled) =>
      `${jurisdiction}: ${effect} (${instrument}, ${date === "undated" ? "ohne Datum" : date}${recalled ? "; aus dem Gedächtnis, nicht gelesen" : ""})`,
    lawDecides: "Was das Recht sagt",
    textDecides: "Maßgeblich ist der geltende Wortlaut.",
    release:
      "Nie aussetzen, auch keine Pflanzen und kein Beckenwasser: weitervermitteln oder tierärztlichen Rat holen.",
    vet: "Kranke Tiere gehören in tierärztliche Behandlung; Arznei auf Verdacht tötet so oft, wie sie heilt.",
    sensitive: (to, kind) =>
      ({
        copper: "Kupfer, etwa in Arzneien und Algenmitteln, schadet ihnen.",
        salt: "Salz als Heilmittel schadet ihnen.",
        "ammonia-nitrite":
          "In einem nicht eingefahrenen Filter sterben sie zuerst: erst einsetzen, wenn er eingefahren ist.",
        handling: "Netz und Luft schaden ihnen: in einem Behälter mit Wasser umsetzen.",
        "soft-water": `In weichem, saurem Wasser ${kind === "snail" || kind === "mussel" ? "leidet ihr Gehäuse" : "misslingt die Häutung"}.`,
      })[to],
  },
  sources: {
    recalled: "aus dem Gedächtnis, ungeprüft",
    beside: "nicht übernommen",
    under: (synonym) => `als ${synonym}`,
    of: (relative) => `von ${relative}, stellvertretend`,
    and: (names, others) => (others ? `${names[0]} und andere` : allOf(names)),
  },
  notes: "Bemerkungen",
  readsNotes: false,
};

/** What pages of species say in German, and reports and pictures with them. */
export const germanPages: PageMessages = /* @__PURE__ */ withPage(german, page);
