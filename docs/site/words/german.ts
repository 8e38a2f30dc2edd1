import type { SiteWords } from "./words";

export const german: SiteWords = {
  site: "Vivary",
  skip: "Zum Text springen",
  menu: "Hauptmenü",
  home: "Startseite",
  species: "Arten",
  guides: "Anleitungen",
  rules: "Regeln",
  reference: "Referenz",
  example: "Becken planen",
  evidence: "Stand der Belege",
  sources: "Quellen",
  terms: "Bedingungen für Code und Zahlen",
  contributing: "Mitmachen",
  package: "Das Paket",
  thisLanguage: "Deutsch",
  inEnglish: "englisch",
  search: {
    label: "Art suchen",
    found: "Gefunden:",
    more: "Die ersten zehn: weitertippen zeigt andere.",
    none: "Keine Art mit diesem Namen.",
  },
  welcome: {
    about: "Wer mit wem im Aquarium leben kann, in welchem Becken und warum.",
    paragraphs: [
      "Wer mit wem im Aquarium leben kann, in welchem Becken und warum: Profile von Fischen, Garnelen und Schnecken aus Süß- und Brackwasser und eine Bibliothek, die Pläne danach beurteilt.",
      "Bei jeder Zahl steht, wer sie genannt hat oder dass sie gängige Praxis ohne Quelle ist. Wo sich Quellen widersprechen, stehen beide da; was niemand weiß, wird gesagt.",
    ],
    keepers: "Für Halter",
    keepersText: "Jede Art hat eine Seite: was sie braucht, was sie anderen tut und wer zu ihr passt.",
    developers: "Für Entwickler",
    developersText:
      "Die Bibliothek ist typisiert, läuft überall, wo JavaScript läuft, und fragt keinen Server.",
    researchers: "Für die Forschung",
    researchersText: "Jede Angabe mit dem, worauf sie beruht, als Tabelle und im Skript.",
    doubt: "Wie sicher ist das?",
    doubtText:
      "Vieles, was Halter wissen, wurde nie veröffentlicht. Auf den Seiten steht, worauf was beruht.",
  },
  list: {
    title: "Arten nach Familien",
    about: "Alle Arten und Zuchtformen nach Familien.",
    intro: (species, forms, families) =>
      `${species} Arten und ${forms} Zuchtformen aus ${families} Familien.`,
    forms: "Zuchtformen:",
  },
  family: {
    about: (family) => `Die Arten der Familie ${family}, ihre Größe und das Wasser, in dem sie leben.`,
    order: "Ordnung",
    sizes: "Wie groß sie werden",
    ranges: "Das Wasser, in dem sie gehalten werden",
  },
  profile: {
    about: (name) => `${name}: Bedürfnisse, Verhalten und passende Gesellschaft.`,
    sizes: "Maßstäblich gezeichnet",
    more: "Andere aus der Familie:",
  },
  scrolls: { table: "Tabelle", picture: "Bild" },
  closing:
    "Ratschläge für typische Tiere. Einzelne sind verschieden: beobachten. Krankheiten gehören in die Tierarztpraxis.",
  version: (version, data) => `Version ${version}, Daten ${data}`,
};
