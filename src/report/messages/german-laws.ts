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
  "European Union": "Europäische Union",
  Switzerland: "Schweiz",
  "New Zealand": "Neuseeland",
};

/** What instruments do that keepers in the language area meet. */
const effects: Readonly<Record<string, string>> = {
  "Keeping, breeding, transport, sale, exchange and release are prohibited.":
    "Haltung, Zucht, Beförderung, Verkauf, Tausch und Freisetzung sind verboten.",
  "Keeping, breeding, transport, sale, exchange and release are prohibited from 2 August 2024.":
    "Haltung, Zucht, Beförderung, Verkauf, Tausch und Freisetzung sind ab 2. August 2024 verboten.",
  "Keeping, breeding, transport, sale, exchange and release are prohibited since 7 August 2025; animals kept before may live out their lives without being bred, sold or released.":
    "Haltung, Zucht, Beförderung, Verkauf, Tausch und Freisetzung sind seit 7. August 2025 verboten; vorher gehaltene Tiere dürfen bis zu ihrem Tod bleiben, ohne Zucht, Verkauf oder Freisetzung.",
  "Bringing snails of the genus into the Union and moving, holding, breeding and releasing them there are prohibited, as for every quarantine pest.":
    "Schnecken der Gattung in die Union zu bringen und sie dort zu verbringen, zu halten, zu vermehren und freizusetzen ist verboten, wie bei jedem Quarantäneschädling.",
  "Genetically modified fish, such as the fluorescent forms, may not be kept, bred or sold, as none has been authorised; other forms are not concerned.":
    "Gentechnisch veränderte Fische, etwa die fluoreszierenden Formen, dürfen nicht gehalten, gezüchtet oder verkauft werden, da keiner zugelassen ist; andere Formen sind nicht betroffen.",
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
};

/** A jurisdiction in German, or as the law names it. */
export const jurisdictionIn = (name = "") =>
  (Object.hasOwn(jurisdictions, name) ? jurisdictions[name] : undefined) ?? name;

/** What an instrument does in German; of one that is not translated the English text, said to be so. */
export const effectIn = (effect = "") =>
  (Object.hasOwn(effects, effect) ? effects[effect] : undefined) ?? `auf Englisch: ${effect}`;
