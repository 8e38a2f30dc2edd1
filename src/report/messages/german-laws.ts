/** What jurisdictions are called. */
const jurisdictions: Readonly<Record<string, string>> = {
  Germany: "Deutschland",
  Japan: "Japan",
  CITES: "CITES",
  "Arkansas (United States)": "Arkansas (Vereinigte Staaten)",
  "California (United States)": "Kalifornien (Vereinigte Staaten)",
  "Florida (United States)": "Florida (Vereinigte Staaten)",
  "Michigan (United States)": "Michigan (Vereinigte Staaten)",
  "Alabama (United States)": "Alabama (Vereinigte Staaten)",
  "United States": "Vereinigte Staaten",
  "Ontario (Canada)": "Ontario (Kanada)",
  "Queensland (Australia)": "Queensland (Australien)",
  "New South Wales (Australia)": "Neusüdwales (Australien)",
  Australia: "Australien",
  Brazil: "Brasilien",
  "United Kingdom": "Vereinigtes Königreich",
  "Great Britain": "Großbritannien",
  "England and Wales": "England und Wales",
  Scotland: "Schottland",
  "European Union": "Europäische Union",
  Switzerland: "Schweiz",
  "New Zealand": "Neuseeland",
};

/** What instruments do. */
const effects: Readonly<Record<string, string>> = {
  "Keeping, breeding, transport, sale, exchange and release are prohibited.":
    "Haltung, Zucht, Beförderung, Verkauf, Tausch und Freisetzung sind verboten.",
  "Keeping, breeding, transport, sale, exchange and release are prohibited from 2 August 2024.":
    "Haltung, Zucht, Beförderung, Verkauf, Tausch und Freisetzung sind ab 2. August 2024 verboten.",
  "Keeping, breeding, transport, sale, exchange and release are prohibited since 7 August 2025; animals kept before may live out their lives without being bred, sold or released.":
    "Haltung, Zucht, Beförderung, Verkauf, Tausch und Freisetzung sind seit 7. August 2025 verboten; vorher gehaltene Tiere dürfen bis zu ihrem Tod bleiben, ohne Zucht, Verkauf oder Freisetzung.",
  "Bringing snails of the genus into the Union and moving, holding, breeding and releasing them there are prohibited, as for every quarantine pest.":
    "Schnecken der Gattung in die Union zu bringen und sie dort zu verbringen, zu halten, zu vermehren und freizusetzen ist verboten, wie bei jedem Quarantäneschädling.",
  "Genetically modified fish, such as the fluorescent forms, may not be kept, bred or sold, as none has been authorised.":
    "Gentechnisch veränderte Fische, etwa die fluoreszierenden Formen, dürfen nicht gehalten, gezüchtet oder verkauft werden, da keiner zugelassen ist.",
  "A keeper must report the animals to the authority and be able to prove where they come from.":
    "Die Tiere sind der Behörde zu melden, und ihre Herkunft muss nachweisbar sein.",
  "Keeping needs a permit, as for other fish that grow past one metre.":
    "Die Haltung braucht eine Bewilligung, wie bei anderen Fischen, die über einen Meter lang werden.",
  "Keeping freshwater stingrays needs a permit.": "Die Haltung von Süßwasserrochen braucht eine Bewilligung.",
  "Taking it across a border needs a permit.": "Die Mitnahme über eine Grenze braucht eine Genehmigung.",
  "Taking it across a border needs a permit, and the quota for trade in wild-taken animals is zero.":
    "Die Mitnahme über eine Grenze braucht eine Genehmigung, und für den Handel mit Wildfängen gilt eine Quote von null.",
  "Taking it across a border needs a permit if it comes from Colombia, otherwise a certificate of origin.":
    "Die Mitnahme über eine Grenze braucht bei Herkunft aus Kolumbien eine Genehmigung, sonst eine Ursprungsbescheinigung.",
  "Taking it across a border needs a permit if it comes from Brazil, otherwise a certificate of origin.":
    "Die Mitnahme über eine Grenze braucht bei Herkunft aus Brasilien eine Genehmigung, sonst eine Ursprungsbescheinigung.",
  "Lists the species in Appendix I.": "Führt die Art in Anhang I.",
  "Lists the species in Appendix I; fish bred in registered farms may be traded with permits.":
    "Führt die Art in Anhang I; Fische aus registrierten Zuchtbetrieben dürfen mit Genehmigung gehandelt werden.",
  "Lists the species in Appendix II.": "Führt die Art in Anhang II.",
  "Import, sale and release are banned since 1 June 2023; keeping as a pet is not.":
    "Einfuhr, Verkauf und Freisetzung sind seit 1. Juni 2023 verboten, die Haltung als Heimtier nicht.",
  "Keeping, carrying and import are prohibited without permission.":
    "Haltung, Beförderung und Einfuhr sind ohne Genehmigung verboten.",
  "Keeping, breeding, transport, sale, exchange and release are prohibited; pets kept before the listing may live out their lives.":
    "Haltung, Zucht, Beförderung, Verkauf, Tausch und Freisetzung sind verboten; vor der Listung gehaltene Heimtiere dürfen bis zu ihrem Tod bleiben.",
  "Keeping a crayfish that is not native needs a licence, and only Cherax quadricarinatus may be sold alive.":
    "Die Haltung nicht heimischer Flusskrebse braucht eine Lizenz, und nur Cherax quadricarinatus darf lebend verkauft werden.",
  "Keeping live crayfish other than the native one needs a licence, and none may be sold alive.":
    "Die Haltung lebender Flusskrebse außer dem heimischen braucht eine Lizenz, und keiner darf lebend verkauft werden.",
  "Keeping or releasing a fish of the orders it lists needs a licence; a general licence covers indoor ornamental aquaria.":
    "Haltung oder Freisetzung von Fischen der genannten Ordnungen braucht eine Lizenz; für Zieraquarien in Innenräumen gilt eine allgemeine Lizenz.",
  "Wild animals may not be caught for aquaria unless a rule or permit of their own allows it.":
    "Wildtiere dürfen nicht für Aquarien gefangen werden, wenn nicht eine eigene Regelung oder Genehmigung es erlaubt.",
  "Catching, moving, keeping and trading animals from the wild are prohibited.":
    "Fang, Beförderung, Haltung und Handel von Wildfängen sind verboten.",
  "Releasing, buying, selling and breeding koi carp are prohibited without a permit.":
    "Freisetzung, Kauf, Verkauf und Zucht von Koi sind ohne Genehmigung verboten.",
  "Bringing it into the country is prohibited.": "Die Einfuhr ins Land ist verboten.",
  "Import and possession are banned.": "Einfuhr und Besitz sind verboten.",
  "Private keeping is prohibited.": "Die private Haltung ist verboten.",
  "Private keeping is prohibited; permits are given for research, trade and exhibition.":
    "Die private Haltung ist verboten; Genehmigungen gibt es für Forschung, Handel und Schau.",
  "Importing, transporting and keeping it need a permit.":
    "Einfuhr, Beförderung und Haltung brauchen eine Genehmigung.",
  "Importing, transporting and keeping walking catfish, piranhas and snakeheads are prohibited; a written permit may allow it for display or teaching.":
    "Einfuhr, Beförderung und Haltung von Froschwelsen, Piranhas und Schlangenkopffischen sind verboten; eine schriftliche Genehmigung kann sie für Schau oder Unterricht erlauben.",
  "Keeping, introducing, importing and selling the live animals are prohibited.":
    "Haltung, Freisetzung, Einfuhr und Verkauf lebender Tiere sind verboten.",
  "Keeping, selling, importing and releasing the live fish are prohibited.":
    "Haltung, Verkauf, Einfuhr und Freisetzung lebender Fische sind verboten.",
  "Injurious wildlife: importing, carrying and acquiring the live fish and their eggs are prohibited without a permit.":
    "Schädliche Wildtiere: Einfuhr, Beförderung und Erwerb lebender Fische und ihrer Eier sind ohne Genehmigung verboten.",
  "Injurious wildlife: importing the live animals and carrying them between States are prohibited without a permit.":
    "Schädliche Wildtiere: Einfuhr lebender Tiere und Beförderung zwischen den Bundesstaaten sind ohne Genehmigung verboten.",
  "Import and movement between States are prohibited.":
    "Einfuhr und Beförderung zwischen den Bundesstaaten sind verboten.",
  "Import and movement between States need a permit (PPQ 526), as for other aquatic snails.":
    "Einfuhr und Beförderung zwischen den Bundesstaaten brauchen eine Genehmigung (PPQ 526), wie bei anderen Wasserschnecken.",
  "Import is prohibited; sale between States is exempt, where the rule calls the species Pomacea bridgesii.":
    "Die Einfuhr ist verboten; der Verkauf zwischen den Bundesstaaten ist ausgenommen, wo die Vorschrift die Art Pomacea bridgesii nennt.",
  "Importing, keeping, moving, breeding, buying, selling and releasing crayfish of the genus are prohibited.":
    "Einfuhr, Haltung, Beförderung, Zucht, Kauf, Verkauf und Freisetzung von Flusskrebsen der Gattung sind verboten.",
  "Keeping, selling and moving the live fish are prohibited, and a sighting must be reported.":
    "Haltung, Verkauf und Beförderung lebender Fische sind verboten, und Funde sind zu melden.",
  "Importing, keeping, selling and moving the live fish are prohibited, and a sighting must be reported.":
    "Einfuhr, Haltung, Verkauf und Beförderung lebender Fische sind verboten, und Funde sind zu melden.",
  "Noxious fish: keeping, rearing and passing it on are prohibited without a permit.":
    "Schädlicher Fisch: Haltung, Aufzucht und Weitergabe sind ohne Genehmigung verboten.",
  "Prohibited noxious fish: it may not be brought into the State, kept or passed on.":
    "Verbotener schädlicher Fisch: er darf nicht in den Bundesstaat gebracht, gehalten oder weitergegeben werden.",
  "Restricted noxious fish: passing it on and releasing it are prohibited.":
    "Beschränkter schädlicher Fisch: Weitergabe und Freisetzung sind verboten.",
  "Restricted noxious fish: passing it on and releasing it are prohibited, and whoever has one must kill it.":
    "Beschränkter schädlicher Fisch: Weitergabe und Freisetzung sind verboten, und wer einen hat, muss ihn töten.",
  "Restricted noxious fish: koi count as carp, which may not be passed on or released, and whoever has one must kill it.":
    "Beschränkter schädlicher Fisch: Koi gelten als Karpfen, die weder weitergegeben noch freigesetzt werden dürfen, und wer einen hat, muss ihn töten.",
  "Snails of the genus may not be sold.": "Schnecken der Gattung dürfen nicht verkauft werden.",
};

/** A jurisdiction in German, or as the law names it. */
export const jurisdictionIn = (name = "") =>
  (Object.hasOwn(jurisdictions, name) ? jurisdictions[name] : undefined) ?? name;

/** What an instrument does in German; of one that is not translated the English text, said to be so. */
export const effectIn = (effect = "") =>
  (Object.hasOwn(effects, effect) ? effects[effect] : undefined) ?? `auf Englisch: ${effect}`;
