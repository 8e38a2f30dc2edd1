import type { WaterAxis } from "../../advice";
import type {
  AdviceMessages,
  AdviceWords,
  ToldAim,
  ToldAnimals,
  ToldNitrogen,
  ToldSuspect,
} from "./advice-messages";
import { german } from "./german";
import { verb } from "./german-grammar";
import { feedingHours, foods, places } from "./german-words";
import { sentenceCase as capital, stopped } from "./sentences";
import { withAdvice } from "./with-advice";

// Names stand as subjects or objects, never after a preposition that asks for another case. Nobody is addressed.

const foodOf = (food: keyof typeof foods) => (food === "fallen-insects" ? "Insekten" : foods[food]);

/** What follows the ammonia nitrogen that is given. */
const taken = ({ filter, state }: ToldNitrogen): string =>
  ({
    unnamed: "im Plan steht kein Filter.",
    unripe: "der Filter baut, so wie er im Plan steht, nichts ab.",
    enough: `der Filter baut ${filter} ab, das genügt.`,
    short: `der Filter baut ${filter} ab, das ist zu wenig.`,
    doubtful: `der Filter baut ${filter} ab, das kann zu wenig sein.`,
    untold: `der Filter baut ${filter} ab.`,
  })[state];

/** Of several species perhaps not all. */
const of = ({ who, many }: ToldAnimals, mixed: boolean): Pick<ToldAnimals, "who" | "many"> =>
  mixed ? { who: "einige davon", many: true } : { who, many };

/** Topics in brackets; nothing where there are none. */
const bracketed = (topics: readonly string[]) => (topics.length > 0 ? ` (${topics.join("; ")})` : "");

/** What figures of water are called, and after "kein" and "welche". */
const axes: Readonly<
  Record<WaterAxis, { readonly name: string; readonly no: string; readonly which: string }>
> = {
  temperature: { name: "Temperatur", no: "Keine Temperatur", which: "welche Temperatur" },
  pH: { name: "pH", no: "Kein pH-Wert", which: "welchen pH-Wert" },
  generalHardness: { name: "Gesamthärte", no: "Keine Gesamthärte", which: "welche Gesamthärte" },
  salinity: { name: "Salzgehalt", no: "Kein Salzgehalt", which: "welchen Salzgehalt" },
};

/** Who ends what a figure may move within, in brackets. */
function bounded({ least, most }: ToldAim): string {
  if (least?.whom === most?.whom) return least ? ` (begrenzt durch ${least.whom})` : "";
  const below = least && `nach unten durch ${least.whom}`;
  return ` (begrenzt ${[below, most && `nach oben durch ${most.whom}`].filter(Boolean).join(", ")})`;
}

/** What individuals would have to be like, as a clause whose verb comes last. */
const tempered = ({ animals: { who, many }, temper }: NonNullable<ToldSuspect["individuals"]>): string =>
  ({
    shyer: `${who} scheuer ${verb(many, "ist", "sind")} als die meisten`,
    bolder: `${who} mutiger ${verb(many, "ist", "sind")} als die meisten`,
    bully: `${who} andere ${verb(many, "drangsaliert", "drangsalieren")}`,
  })[temper];

const words = (): AdviceWords => ({
  units: { g: "g", mg: "mg" },
  feeding: {
    titles: {
      offerings: "Was es gibt",
      amounts: "Wie viel am Tag, als Trockenfutter: von knapp genug bis reichlich",
      water: "Was es im Wasser bewirkt",
    },
    lead: (offerings) =>
      offerings === 1 ? "Einmal am Tag füttern." : "Jedes davon einmal am Tag geben, in dieser Reihenfolge.",
    rest: {
      day: "An einem Tag der Woche nichts geben (gängige Praxis).",
      none: "Keinen Tag auslassen: es sind Jungtiere dabei, oder Nachwuchs ist erwünscht.",
    },
    offering: ({ food, place, light, apart, for: eaters, from }) => {
      const given = `${foodOf(food)} ${places[place]}, ${feedingHours[light]}`;
      const how = apart ? ", abseits der Schnelleren" : "";
      const held = from
        ? ` ${capital(from.who)} ${verb(from.many, "würde", "würden")} es wegfressen: vorher anderswo füttern oder zurückhalten.`
        : "";
      return `${given}${how}: für ${eaters.whom}.${held}`;
    },
    unreached: ({ who, whom, many }) =>
      `Es ist kein Futter bekannt, das ${whom} sicher erreicht: es ist nicht bekannt, was, wo oder wann ${who} ${verb(many, "frisst", "fressen")} oder was am Futter schneller ist.`,
    amount: (animals, amount) => `${animals}: ${amount}.`,
    noAmount: (animals, young) =>
      `${animals}: keine Angabe bekannt${young ? "; Jungtiere brauchen, gemessen am Gewicht, mehrmals so viel wie ausgewachsene" : ""}.`,
    cold: "Unter 10 °C fressen Fische kaum oder gar nicht.",
    together: "Wo Tiere mehreres bekommen, gilt die Menge für alles zusammen.",
    heavier: "Frost- und Lebendfutter wiegt das Vier- bis Fünffache.",
    nitrogen: (told) =>
      `Das Futter bringt${told.isWhole ? "" : ", soweit seine Menge bekannt ist,"} ${told.given} Ammoniumstickstoff am Tag; ${taken(told)}`,
    closing:
      "Einzelne Tiere sind verschieden: beobachten, ob jedes frisst. Was von Trocken- oder Frostfutter nach wenigen Minuten übrig ist, war zu viel: herausnehmen.",
  },
  entry: {
    lead: "Die Tage zählen ab dem Einrichten des Beckens; jeder ist der früheste, der in Frage kommt.",
    title: (day) => (day === undefined ? "Schon im Becken" : `Ab Tag ${day}`),
    animals: (listed) => `${listed}.`,
    because: {
      "filter-ripens": ({ day }) =>
        `Mit Ammonium versorgt, bis Tiere da sind, ist der Filter bis Tag ${day} sicher eingefahren.`,
      quarantine: ({ day }) => `Die Quarantäne endet an Tag ${day}.`,
      "filter-follows": ({ day }) =>
        `Bis Tag ${day} baut der Filter ab, was die vorigen Tiere abgeben, wenn er groß genug ist.`,
      "plants-grow-in": ({ day }) => `Am ersten Tag gesetzte Pflanzen sind bis Tag ${day} eingewachsen.`,
      "stated-day": ({ day }) => `Der Plan sagt: frühestens Tag ${day}.`,
      "others-grow": ({ others, length, day }) =>
        `Zuerst ${verb(others.many, "muss", "müssen")} ${others.who} ${length} messen${day === undefined ? "; wann das ist, weiß niemand" : `, voraussichtlich bis Tag ${day}`}: die Länge zählt, nicht der Tag.`,
      "others-first": ({ others, topics }) =>
        `${capital(others.who)} ${verb(others.many, "muss", "müssen")} vorher da sein${bracketed(topics)}.`,
      "defends-place": ({ animals, mixed }) => {
        const { who, many } = of(animals, mixed);
        return `${capital(who)} ${verb(many, "verteidigt", "verteidigen")} ein Revier, das später Kommende erst erobern müssten.`;
      },
      "may-eat": ({ animals, mixed, others }) => {
        const { who, many } = of(animals, mixed);
        return `${capital(who)} ${verb(many, "kann", "können")} ${others.whom} fressen; bis dahin ${verb(others.many, "kennt", "kennen")} ${others.many ? "diese" : "das Tier"} das Becken.`;
      },
      together: () => "Sie kommen an einem Tag, da keine davon vor den anderen kommen darf.",
    },
    outcome: (outcome) =>
      ({
        suitable: "Mit allen, die bis dahin da sind, ist der Plan geeignet.",
        conditional:
          "Mit allen, die bis dahin da sind, ist der Plan bedingt geeignet: was sich ändern muss, steht in seinem Bericht.",
        undetermined:
          "Mit allen, die bis dahin da sind, ist der Plan unentschieden: etwas Entscheidendes ist nicht bekannt.",
        unsuitable: "Mit allen, die bis dahin da sind, ist der Plan ungeeignet.",
      })[outcome],
    nitrogen: (told) =>
      `Soweit bekannt, geben die Tiere, die bis dahin da sind, ausgewachsen ${told.given} Ammoniumstickstoff am Tag ab; ${taken(told)}`,
    none: {
      unsuitable: () => "Keine Reihenfolge: der ganze Plan ist ungeeignet.",
      "others-there": ({ who, many }) =>
        `Keine Reihenfolge: ${who} ${verb(many, "ist", "sind")} noch zu klein für Tiere, die schon im Becken leben.`,
      "both-grow-first": ({ who }) =>
        `Keine Reihenfolge: jedes müsste wachsen, bevor die anderen kommen (${who}).`,
      "worse-before": ({ who }) =>
        `Keine Reihenfolge: was auch als Nächstes kommt (${who}), es spricht etwas dagegen, das nicht gegen den ganzen Plan spricht.`,
      "not-found": ({ who }) =>
        `Keine Reihenfolge gefunden (${who}); bei so vielen Arten werden nicht alle ausprobiert.`,
    },
    against: (topics) => `Woran es liegt: ${topics.join(", ")}.`,
    topics: {
      temperature: "Temperatur",
      ph: "pH-Wert",
      "general-hardness": "Härte",
      salinity: "Salzgehalt",
      season: "kühle Jahreszeit",
      flow: "Strömung",
      predation: "wer wen frisst",
      "acts-own-kind": "Kämpfe unter Artgenossen",
      "acts-look-alike": "Kämpfe unter ähnlich Aussehenden",
      "acts-others": "Übergriffe auf andere",
      "fin-nipping": "Zupfen an Flossen",
      "mucus-grazing": "Abraspeln der Schleimhaut",
      "territory-contest": "Streit um Reviere",
      "size-and-pace": "große und unruhige Gesellschaft",
      "feeding-competition": "Schnellere am Futter",
      shyness: "unruhige Gesellschaft für Scheue",
      interbreeding: "Kreuzung",
      furnishing: "Einrichtung",
      planting: "zerstörte Pflanzen",
      "water-temperature": "Temperatur",
      "water-ph": "pH-Wert",
      "water-hardness": "Härte",
      "water-salinity": "Salzgehalt",
      "cool-season": "kühle Jahreszeit",
      "carbon-dioxide": "Kohlendioxid",
      oxygen: "Sauerstoff",
      "filter-nitrogen": "Filter",
      "longest-run": "Beckenlänge",
      footprint: "Grundfläche",
      height: "Beckenhöhe",
      zones: "Gedränge auf einer Ebene",
      territories: "Platz für Reviere",
      "group-size": "Gruppengröße",
      "sex-ratio": "Zahl der Männchen und Weibchen",
      "both-sexes": "Zahl der Männchen und Weibchen",
      cover: "Deckung",
      "open-water": "Schwimmraum",
      ground: "Bodengrund",
      "hiding-places": "Verstecke",
      plants: "eingewachsene Pflanzen",
      "plants-at-risk": "Schaden an Pflanzen",
      "settling-company": "ruhige Gesellschaft",
      feeding: "Futter",
      lid: "Abdeckung",
      "flow-places": "Stellen mit passender Strömung",
      sensitive: "Empfindlichkeiten",
      "caution-floor": "Last auf dem Boden",
      "caution-electricity": "Strom",
      "caution-devices": "Geräte",
      "caution-hazards": "Gefahr für Menschen",
      "caution-zoonoses": "Keime, die auf Menschen übergehen",
      "caution-law": "Recht",
      "caution-release": "Aussetzen",
      "conditions-exclude": "Bedingungen, die sich ausschließen",
    },
  },
  suspects: {
    lead: (signs) =>
      `Was dahinter stecken kann (${signs.join("; ")}), danach geordnet, wo hinzusehen ist; das Wahrscheinlichste zuerst.`,
    none: "Keine Regel erklärt es aus diesem Plan. Einen Tierarzt fragen: es kann Krankheit sein, von der keine Regel weiß.",
    signs: {
      ...german.signs,
      listless: "matte Tiere",
      "dug-up-plants": "ausgegrabene Pflanzen",
      "eaten-plants": "angefressene Pflanzen",
    },
    looks: {
      "measure-temperature": "Die Temperatur messen",
      "measure-ph": "Den pH-Wert messen",
      "measure-hardness": "Die Härte messen",
      "measure-salinity": "Den Salzgehalt messen",
      "measure-ammonia-and-nitrite":
        "Ammonium und Nitrit messen; ist davon etwas zu finden, sofort einen Teil des Wassers wechseln",
      "surface-at-dawn": "Vor dem Einschalten des Lichts: wer hängt an der Oberfläche, und ist sie bewegt?",
      "who-chases-whom": "Tagsüber eine halbe Stunde aus der Ferne: wer jagt wen?",
      "who-bites-whom": "Tagsüber eine halbe Stunde aus der Ferne: wer beißt wen?",
      "by-night": "Zwei Stunden nach Dunkelwerden mit schwachem Licht nachsehen",
      "who-eats": "Wer kommt ans Futter, und wer nicht?",
      "count-and-measure": "Die Tiere zählen und auf ihre Länge achten, Mäuler neben Beute",
      "around-the-tank": "Auf dem Boden um das Becken, an Lücken der Abdeckung und im Filter nachsehen",
      spawning: "Nach Paaren und Eiern sehen, und wer sie bewacht",
      "places-to-hide": "Findet jedes Tier ein Versteck, und wer wird daraus vertrieben?",
      "room-to-swim": "Wie viel Raum bleibt zum Schwimmen?",
      current: "Wen treibt die Strömung umher?",
      ground: "Wie scharf ist der Bodengrund, und wie tief?",
      plants: "An Wurzeln und Blatträndern der Pflanzen nachsehen, und wer sich dort zu schaffen macht",
      company: "Die Tiere jeder Art zählen, und wer mit wem hervorkommt",
      "males-and-females": "Männchen und Weibchen zählen",
      "the-animals": "Die Tiere beobachten, bei Tag und bei Nacht",
    },
    suspect: ({ reason, signs, act, clause, individuals }) => {
      const cause = individuals ? `falls ${tempered(individuals)}: ${reason}` : reason;
      const what = {
        meet: clause ? `${capital(clause)}.` : "Dafür sorgen.",
        check: `Der Plan sorgt dafür; nachsehen, ob es im Becken so ist${clause && `: ${clause}`}.`,
        part: "Sofort und auf Dauer trennen.",
        rehouse: "Es braucht ein Becken oder Wasser, das passt.",
        "change-water": "Täglich einen Teil des Wassers wechseln, bis nichts davon mehr zu finden ist.",
        watch: "Das wird hingenommen oder gibt sich: beobachten, ob es schlimmer wird.",
      }[act];
      return `${stopped(capital(cause), `${bracketed(signs)}.`)} ${what}`;
    },
    ammonia: ({ who, many }) =>
      `${who} ${verb(many, "leidet", "leiden")} eher als andere unter Ammoniak und Nitrit.`,
    illness:
      "Es kann trotzdem Krankheit sein, von der keine Regel weiß: mit Tieren, die krank aussehen oder sich nicht erholen, zum Tierarzt.",
  },
  setPoint: {
    lead: (animals) => `Wasser für ${animals}, nach dem, worin sie gehalten werden:`,
    figure: (told) => {
      const { on, figure, within } = told;
      const room = within && `, innerhalb von ${within}`;
      return on === "salinity" && figure === ""
        ? `Süßwasser${within && `, Salzgehalt ${within}`}.`
        : `${axes[on].name} ${figure}${room}${bounded(told)}.`;
    },
    none: "Niemand sagt, in welchem Wasser auch nur eines der Tiere gehalten wird: vor dem Kauf herausfinden.",
    swing: (span) =>
      `Daneben ist Platz für die angegebene Schwankung; bei diesen Werten reicht die Temperatur von ${span}.`,
    open: (on, { who, many }, isAlone) => {
      const told = `Niemand sagt, ${axes[on].which} ${who} ${verb(many, "braucht", "brauchen")}`;
      return isAlone
        ? `${told}: es gibt keinen Wert zum Anstreben.`
        : `${told}: die anderen entscheiden allein.`;
    },
    beyondKept: (on, { who, many }, kept, isSwing, isItself) => {
      const beyond = `über das hinaus, worin ${who} gehalten ${verb(many, "wird", "werden")}, ${kept}`;
      const edge = "am Rand dessen, was auf Dauer zu ertragen ist";
      return isSwing || isItself
        ? `${axes[on].name}: der Wert geht ${isSwing ? "in seiner Schwankung " : ""}${beyond}; er liegt ${edge}.`
        : `${axes[on].name}: in dieser Spanne geht der Wert ${beyond}; dort liegt er ${edge}.`;
    },
    forAWhile: (when, { who, many }) => {
      const season = when === "hottest" ? "Am heißesten Tag" : "In der kühlsten Jahreszeit";
      return `${season} geht die Temperatur über das hinaus, worin ${who} gehalten ${verb(many, "wird", "werden")}: das ist vorübergehend zu ertragen, nicht auf Dauer.`;
    },
    doubtful: (on, { higher, lower }, reason) => {
      const why = {
        "class-end": "bei einer Art ist nur die Klasse eines Handbuchs bekannt",
        "both-give-way": "für beide läge er am Rand dessen, was zu ertragen ist",
      }[reason];
      return `${axes[on].name}: ob ${higher.who} und ${lower.who} einen Wert gemeinsam haben, weiß niemand; ${why}.`;
    },
    hotEnd: ({ temperature, pH, ammonia, oxygen }) =>
      `Am äußersten Ende davon, ${temperature} und pH ${pH}, enthält es ${ammonia} freies Ammoniak und, mit Luft gesättigt, ${oxygen} Sauerstoff.`,
    conflict: (on, { higher, lower, isOne }, isCertain) => {
      const doubt = isCertain
        ? ""
        : " Das ist wahrscheinlich, nicht sicher: bei einer Art ist nur bekannt, was das Beste ist, nicht, worin sie gehalten wird.";
      if (on === "ammonia") {
        const warm = isOne
          ? `warm und alkalisch genug für ${higher.whom}`
          : `warm genug für ${higher.whom} und alkalisch genug für ${lower.whom}`;
        return `Kein Wasser taugt für alle: was ${warm} ist, enthielte mehr freies Ammoniak als erträglich oder zu wenig Sauerstoff.${doubt}`;
      }
      const proof = isOne
        ? `was für ${higher.whom} gilt, lässt keinen Platz für die Schwankung des Wassers`
        : `für ${higher.whom} müsste der Wert höher sein, als er für ${lower.whom} auf Dauer sein darf`;
      return `${axes[on].no} taugt für alle: ${proof}.${doubt}`;
    },
    largest: (stay, leave) => `Ohne ${leave.whom} bleiben die meisten zusammen: ${stay.whom}.`,
    apart: "Kein Tier kann das verlangte Wasser haben.",
    closing:
      "Zuerst das Leitungswasser und das Wasser im Becken messen, und ein Becken mit Tieren nur in kleinen Schritten über Tage umstellen (gängige Praxis). Auch worin Tiere aufgewachsen sind, zählt: beim Kauf fragen. Wo Quellen auseinandergehen, sind es die übernommenen Werte; was davon abhängt, sagt der Bericht zu einem Plan.",
  },
});

/** What reports and advice say in German. */
export const germanAdvice: AdviceMessages = /* @__PURE__ */ withAdvice(german, /* @__PURE__ */ words());
