/** What jurisdictions are called. */
const places: Readonly<Record<string, string>> = {
  Austria: "Österreich",
  Finland: "Finnland",
  Germany: "Deutschland",
  "Italy, Milan": "Italien, Mailand",
  "Italy, Rome": "Italien, Rom",
  "Italy, Turin": "Italien, Turin",
  Sweden: "Schweden",
  Switzerland: "Schweiz",
};

/** Instruments whose titles are not wholly as the law has them. */
const instruments: Readonly<Record<string, string>> = {
  "2. Tierhaltungsverordnung, BGBl. II 486/2004 as amended by BGBl. II 26/2006":
    "2. Tierhaltungsverordnung, BGBl. II 486/2004 in der Fassung BGBl. II 26/2006",
  "Finnish Food Authority, page on aquarium fish":
    "Finnische Lebensmittelbehörde (Ruokavirasto), Seite über Aquarienfische",
  "Gutachten über Mindestanforderungen an die Haltung von Zierfischen (Süßwasser), federal ministry of agriculture":
    "Gutachten über Mindestanforderungen an die Haltung von Zierfischen (Süßwasser), Bundesministerium für Landwirtschaft",
  "Gutachten über Mindestanforderungen an die Haltung von Zierfischen (Süßwasser), as FishBase prints it in its notes on single species (Ref. 51539)":
    "Gutachten über Mindestanforderungen an die Haltung von Zierfischen (Süßwasser), wie FishBase es in den Anmerkungen zu einzelnen Arten wiedergibt (Ref. 51539)",
  "Regolamento per il benessere e la tutela degli animali, Milano, council resolution 4 of 3 February 2020":
    "Regolamento per il benessere e la tutela degli animali, Milano, Ratsbeschluss 4 vom 3. Februar 2020",
  "Tierschutzverordnung (SR 455.1), Annex 2 Table 8": "Tierschutzverordnung (SR 455.1), Anhang 2 Tabelle 8",
};

/** Articles; without the line of a table. */
const articles: Readonly<Record<string, string>> = {
  "Annex 5": "Anlage 5",
  "Annex 5, 1.1 (2)": "Anlage 5, 1.1 (2)",
  "Annex 5, 1.1 (3)": "Anlage 5, 1.1 (3)",
  "Annex 5, 1.1 (4)": "Anlage 5, 1.1 (4)",
  "Annex 5, 1.1 (7)": "Anlage 5, 1.1 (7)",
  "Annex 5, 1.1 (8) and 1.2": "Anlage 5, 1.1 (8) und 1.2",
  "Annex 5, 1.1 (9)": "Anlage 5, 1.1 (9)",
  "Page on aquarium fish": "Seite über Aquarienfische",
  "Smallest aquarium": "Kleinstes Aquarium",
  "Species table, column Comments": "Artentabelle, Spalte Comments",
  "Chapter 13, section 1, advice": "Kapitel 13, § 1, Empfehlung",
  "Chapter 13, section 3": "Kapitel 13, § 3",
  "Chapter 13, section 4": "Kapitel 13, § 4",
  "Chapter 13, section 5, advice": "Kapitel 13, § 5, Empfehlung",
  "Table 8": "Tabelle 8",
  "Table 8, note b": "Tabelle 8, Anmerkung b",
  "Table 8, preliminary note A": "Tabelle 8, Vorbemerkung A",
  "Table 8, preliminary note B": "Tabelle 8, Vorbemerkung B",
  "Table 8, preliminary note C": "Tabelle 8, Vorbemerkung C",
};

/** What instruments ask, what was noted of it, and where the text in force is found. */
const texts: Readonly<Record<string, string>> = {
  // Austria
  "The text in force is at ris.bka.gv.at under BGBl. II 486/2004, Annex 5; the district authority (Bezirksverwaltungsbehörde) is competent.":
    "Der geltende Wortlaut steht auf ris.bka.gv.at unter BGBl. II 486/2004, Anlage 5; zuständig ist die Bezirksverwaltungsbehörde.",
  "An aquarium for lasting keeping holds at least 54 L, for small species too.":
    "Ein Aquarium zur dauerhaften Haltung fasst mindestens 54 l, auch für kleine Arten.",
  "Exempt are breeding and its preparation, single fish or pairs on exhibition, and competitions. The volume is that of the tank class of 60 x 30 x 30 cm in 1.1 (8), so the gross volume is compared. Known from two reproductions that agree.":
    "Ausgenommen sind Zucht und Zuchtvorbereitung, die Ausstellung einzelner Fische oder Paare und Wettbewerbe. Das Volumen ist das der Beckenklasse 60 x 30 x 30 cm in 1.1 (8), verglichen wird deshalb das Bruttovolumen. Bekannt aus zwei Wiedergaben, die übereinstimmen.",
  "A table states a least tank class of 60, 80, 100, 120 or 150 cm edge for each species it lists.":
    "Eine Tabelle nennt für jede aufgeführte Art eine Mindestbeckenklasse von 60, 80, 100, 120 oder 150 cm Kantenlänge.",
  "The table has not been read. Its classes are 60 x 30 x 30, 80 x 35 x 40, 100 x 40 x 50, 120 x 40 x 50 and 150 x 50 x 50 cm.":
    "Die Tabelle wurde nicht gelesen. Ihre Klassen sind 60 x 30 x 30, 80 x 35 x 40, 100 x 40 x 50, 120 x 40 x 50 und 150 x 50 x 50 cm.",
  "For fish over 40 cm when adult, freshwater stingrays, bonytongues and large catfish the floor measures 4 m2 for two and 1 m2 more for each further one.":
    "Für Fische, die ausgewachsen über 40 cm messen, Süßwasserrochen, Knochenzüngler und große Welse misst die Grundfläche 4 m² für zwei Tiere und 1 m² mehr für jedes weitere.",
  "The floor for two is taken for one fish as well. Bonytongues are taken as Osteoglossidae, large catfish as those over 40 cm.":
    "Die Fläche für zwei Tiere wird auch für ein einzelnes angesetzt. Als Knochenzüngler gelten hier die Osteoglossidae, als große Welse solche über 40 cm.",
  "Young fish are kept in tanks of the size stated for adults, which is an approximate least.":
    "Jungfische werden in Becken der für ausgewachsene Tiere genannten Größe gehalten, die ein ungefähres Mindestmaß ist.",
  "The requirements of floor, length and depth compare the adult length of young fish too. The tank classes of species stand in table 1.2, which has not been read.":
    "Bei Grundfläche, Länge und Tiefe wird auch für Jungfische die Länge ausgewachsener Tiere verglichen. Die Beckenklassen der Arten stehen in Tabelle 1.2, die nicht gelesen wurde.",
  "For koi, goldfish, golden orfe and other coldwater ornamental fish the tank or pond is 10 total body lengths long.":
    "Für Koi, Goldfische, Goldorfen und andere Kaltwasserzierfische ist das Becken oder der Teich 10 Gesamtkörperlängen lang.",
  "For koi, goldfish, golden orfe and other coldwater ornamental fish the tank or pond is 3 total body lengths deep.":
    "Für Koi, Goldfische, Goldorfen und andere Kaltwasserzierfische ist das Becken oder der Teich 3 Gesamtkörperlängen tief.",
  "Compared for goldfish, koi and orfe only. Which body counts was not read: the largest fish at adult size is taken.":
    "Verglichen nur für Goldfische, Koi und Orfen. Welcher Körper zählt, wurde nicht gelesen: angesetzt wird der größte Fisch in ausgewachsener Größe.",
  "The water leaves the temperature range stated for the species for at most 24 hours.":
    "Das Wasser verlässt den für die Art genannten Temperaturbereich für höchstens 24 Stunden.",
  "The ranges stand in table 1.2, which has not been read.":
    "Die Bereiche stehen in Tabelle 1.2, die nicht gelesen wurde.",
  "The hardness lies at most 3 dGH outside the class stated for the species: I below 15 dGH, II 15 to 30 dGH.":
    "Die Härte liegt höchstens 3 °dGH außerhalb der für die Art genannten Klasse: I unter 15 °dGH, II 15 bis 30 °dGH.",
  "The classes of species stand in table 1.2, which has not been read.":
    "Die Klassen der Arten stehen in Tabelle 1.2, die nicht gelesen wurde.",
  "Water that comes extremely soft and free of lime is set up with at least 4 to 5 dGH.":
    "Extrem weiches und kalkfreies Ausgangswasser wird auf mindestens 4 bis 5 °dGH gebracht.",
  "Whether the source water is free of lime, a plan does not tell.":
    "Ob das Ausgangswasser kalkfrei ist, sagt ein Plan nicht.",
  "The pH lies in the class stated for the species: I 5.0 to 7.0, II 6.0 to 8.0, III.":
    "Der pH-Wert liegt in der für die Art genannten Klasse: I 5,0 bis 7,0, II 6,0 bis 8,0, III.",
  "The classes of species stand in table 1.2, which has not been read; nor has class III.":
    "Die Klassen der Arten stehen in Tabelle 1.2, die nicht gelesen wurde; auch Klasse III nicht.",
  "The water is tested at least every 14 days.": "Das Wasser wird mindestens alle 14 Tage geprüft.",
  "Known from a translated summary, not from the text.":
    "Bekannt aus einer übersetzten Zusammenfassung, nicht aus dem Wortlaut.",
  "Young fish are fed at least once a day.": "Jungfische werden mindestens einmal am Tag gefüttert.",
  // Finland
  "The page restates rules without figures and its copy shows no date. The text in force is at finlex.fi; the Finnish Food Authority (Ruokavirasto) tells who is competent.":
    "Die Seite gibt Vorschriften ohne Zahlen wieder, und ihre Kopie trägt kein Datum. Der geltende Wortlaut steht auf finlex.fi; wer zuständig ist, sagt die Finnische Lebensmittelbehörde (Ruokavirasto).",
  "One side of an aquarium is screened from view, unless plants or furnishing protect the fish.":
    "Eine Seite eines Aquariums ist gegen Einsicht abgeschirmt, wenn nicht Pflanzen oder Einrichtung die Fische schützen.",
  "Amount, quality, temperature and depth of the water suit the species, size and number of the fish.":
    "Menge, Güte, Temperatur und Tiefe des Wassers entsprechen Art, Größe und Zahl der Fische.",
  // Germany
  "The report does not bind; authorities and courts use it when they apply the animal welfare act (Tierschutzgesetz). A revision was sent to associations as a draft in 2025. The report in use is at the federal ministry of agriculture; the veterinary office is competent.":
    "Das Gutachten ist nicht bindend; Behörden und Gerichte ziehen es heran, wenn sie das Tierschutzgesetz anwenden. Eine Überarbeitung ging 2025 als Entwurf an Verbände. Das maßgebliche Gutachten ist beim Bundesministerium für Landwirtschaft zu finden; zuständig ist das Veterinäramt.",
  "The report does not bind; authorities and courts use it when they apply the animal welfare act (Tierschutzgesetz). A revision was sent to associations as a draft in 2025. That Ref. 51539 is this report, printed in 1999, is from memory. The report in use is at the federal ministry of agriculture; the veterinary office is competent.":
    "Das Gutachten ist nicht bindend; Behörden und Gerichte ziehen es heran, wenn sie das Tierschutzgesetz anwenden. Eine Überarbeitung ging 2025 als Entwurf an Verbände. Dass Ref. 51539 dieses Gutachten ist, gedruckt 1999, ist aus dem Gedächtnis. Das maßgebliche Gutachten ist beim Bundesministerium für Landwirtschaft zu finden; zuständig ist das Veterinäramt.",
  "54 L is the least volume of an aquarium for lasting keeping.":
    "54 l sind das Mindestvolumen eines Aquariums zur dauerhaften Haltung.",
  "Breeding, shows and competitions may differ, and so may especially small species. The volume is that of the tank class of 60 x 30 x 30 cm, so the gross volume is compared.":
    "Zucht, Ausstellungen und Wettbewerbe dürfen abweichen, ebenso besonders kleine Arten. Das Volumen ist das der Beckenklasse 60 x 30 x 30 cm, verglichen wird deshalb das Bruttovolumen.",
  "An aquarium for lasting keeping should not fall below 60 L.":
    "Ein Aquarium zur dauerhaften Haltung sollte 60 l nicht unterschreiten.",
  "The smallest aquarium for the species has the front edge stated for it, from 60 to 150 cm.":
    "Das kleinste Aquarium für die Art hat die für sie genannte Frontlänge, von 60 bis 150 cm.",
  "The species is kept in a group of as many as stated for it or more.":
    "Die Art wird in einer Gruppe von mindestens so vielen Tieren gehalten, wie für sie genannt sind.",
  "The species is kept in pairs.": "Die Art wird paarweise gehalten.",
  "Whether the animals are a pair, a plan does not tell.": "Ob die Tiere ein Paar sind, sagt ein Plan nicht.",
  "Several females of the species are kept with one male.":
    "Von der Art werden mehrere Weibchen mit einem Männchen gehalten.",
  "No number is stated; for all but Apistogramma agassizii the text says many females.":
    "Eine Zahl ist nicht genannt; außer bei Apistogramma agassizii ist von vielen Weibchen die Rede.",
  "The species is not recommended for home aquaria.": "Die Art wird für Heimaquarien nicht empfohlen.",
  "Where the tank stands, a plan does not tell.": "Wo das Becken steht, sagt ein Plan nicht.",
  "The species is not kept with long-finned fish.":
    "Die Art wird nicht mit langflossigen Fischen vergesellschaftet.",
  "Which fish count as long-finned is not stated.":
    "Welche Fische als langflossig gelten, ist nicht genannt.",
  "The lines are those of the species table of FishBase, version 06/2018, at https://github.com/FiN-FBSLB/fishbase-sealifebase-archive/blob/d5ff1d9f183c9c626bf49be2bf72d0a68f642900/tables/0.2.0/species_fishbase.tsv.gz.":
    "Die Zeilen sind die der Artentabelle von FishBase, Fassung 06/2018, unter https://github.com/FiN-FBSLB/fishbase-sealifebase-archive/blob/d5ff1d9f183c9c626bf49be2bf72d0a68f642900/tables/0.2.0/species_fishbase.tsv.gz.",
  // Italy
  "The text in force is at comune.milano.it; the city office for animal welfare (Ufficio Tutela Animali) is competent.":
    "Der geltende Wortlaut steht auf comune.milano.it; zuständig ist das städtische Tierschutzamt (Ufficio Tutela Animali).",
  "An article states how fish and other aquatic animals are kept.":
    "Ein Artikel regelt, wie Fische und andere Wassertiere gehalten werden.",
  "The article has not been read. Art. 30 of the regulation before it asked for 2 L for each cm of summed length, 30 L at least, and no curved clear walls.":
    "Der Artikel wurde nicht gelesen. Art. 30 der früheren Satzung verlangte 2 l für jeden cm der summierten Länge, mindestens 30 l und keine gewölbten durchsichtigen Wände.",
  "The text in force is with the city of Rome (Roma Capitale), whose office for animal welfare is competent.":
    "Der geltende Wortlaut liegt bei der Stadt Rom (Roma Capitale), deren Tierschutzamt zuständig ist.",
  "The volume of an aquarium is at least 2 L for each cm of the summed length of the animals.":
    "Das Volumen eines Aquariums beträgt mindestens 2 l für jeden cm der summierten Länge der Tiere.",
  "How length is measured is not defined: total length is taken of fish, and what other animals add is left open. Whether the volume is that of the water or of the tank is not defined either.":
    "Wie die Länge gemessen wird, ist nicht bestimmt: angesetzt wird bei Fischen die Gesamtlänge, und was andere Tiere beitragen, bleibt offen. Ob das Volumen das des Wassers oder das des Beckens ist, ist auch nicht bestimmt.",
  "An aquarium never holds less than 30 L of water.": "Ein Aquarium fasst nie weniger als 30 l Wasser.",
  "Filled as planned or filled to the rim: the text speaks of capacity.":
    "Gefüllt wie geplant oder bis zum Rand: der Wortlaut spricht vom Fassungsvermögen.",
  "Aquaria are neither spherical nor have curved walls of clear material.":
    "Aquarien sind weder kugelförmig, noch haben sie gewölbte Wände aus durchsichtigem Material.",
  "Curved walls are taken to be clear.": "Gewölbte Wände gelten hier als durchsichtig.",
  "Adopted in 2006 and amended in 2011; the quotation that was read shows no date. The text in force is at comune.torino.it; the city office for animal welfare (Ufficio Tutela Animali) is competent.":
    "Beschlossen 2006 und geändert 2011; das Zitat, das gelesen wurde, trägt kein Datum. Der geltende Wortlaut steht auf comune.torino.it; zuständig ist das städtische Tierschutzamt (Ufficio Tutela Animali).",
  "Spherical aquaria are banned.": "Kugelförmige Aquarien sind verboten.",
  "Walls of a planned tank are upright: a round base may stand for a bowl.":
    "Die Wände eines geplanten Beckens sind senkrecht: hinter einer runden Grundfläche kann ein Kugelglas stehen.",
  // Sweden
  "SJVFS 2019:15 has since replaced the issue that was read. The issue of L 80 in force is at jordbruksverket.se; the county administrative board (länsstyrelsen) is competent.":
    "SJVFS 2019:15 hat die gelesene Ausgabe inzwischen ersetzt. Die geltende Ausgabe von L 80 steht auf jordbruksverket.se; zuständig ist die Provinzialregierung (länsstyrelsen).",
  "Pronounced shoaling fish are kept in a group of their own species.":
    "Ausgeprägte Schwarmfische werden in einer Gruppe der eigenen Art gehalten.",
  "No number is stated: two or more are left open.":
    "Eine Zahl ist nicht genannt: ab zwei Tieren bleibt es offen.",
  "Fish are not kept in spherical aquaria unless the demands on volume, oxygen and furnishing are fulfilled.":
    "Fische werden nicht in kugelförmigen Aquarien gehalten, wenn nicht die Anforderungen an Volumen, Sauerstoff und Einrichtung erfüllt sind.",
  "At least one side of an aquarium is screened from view, unless the furnishing gives the same protection.":
    "Mindestens eine Seite eines Aquariums ist gegen Einsicht abgeschirmt, wenn nicht die Einrichtung denselben Schutz bietet.",
  "The volume is not below 40 L unless the species is adapted to small waters.":
    "Das Volumen liegt nicht unter 40 l, wenn nicht die Art an kleine Gewässer angepasst ist.",
  "The section speaks of the volume of the water. Whether a species is adapted to small waters is not judged.":
    "Der Paragraf spricht vom Wasservolumen. Ob eine Art an kleine Gewässer angepasst ist, wird nicht beurteilt.",
  "An aquarium holds no more than one fish of up to 5 cm a litre of water, or one of up to 10 cm for 4 L.":
    "Ein Aquarium enthält höchstens einen Fisch bis 5 cm je Liter Wasser oder einen bis 10 cm auf 4 l.",
  "How length is measured is not defined: total length is taken. Thickset fish should have more water. Nothing is stated beyond 10 cm.":
    "Wie die Länge gemessen wird, ist nicht bestimmt: angesetzt wird die Gesamtlänge. Gedrungene Fische sollten mehr Wasser haben. Über 10 cm hinaus ist nichts genannt.",
  // Switzerland
  "The copy that was read shows no date. The text in force is at fedlex.admin.ch under SR 455.1; the cantonal veterinary office is competent.":
    "Die Kopie, die gelesen wurde, trägt kein Datum. Der geltende Wortlaut steht auf fedlex.admin.ch unter SR 455.1; zuständig ist das kantonale Veterinäramt.",
  "For each cm of each fish an aquarium holds 0.5 L up to 5 cm of body length, 0.75 L up to 10 cm, 1 L up to 15 cm, 1.25 L up to 20 cm, 1.75 L up to 30 cm, 2.25 L up to 40 cm and 3 L beyond; the least volume is the sum over all fish.":
    "Für jeden cm jedes Fisches fasst ein Aquarium 0,5 l bis 5 cm Körperlänge, 0,75 l bis 10 cm, 1 l bis 15 cm, 1,25 l bis 20 cm, 1,75 l bis 30 cm, 2,25 l bis 40 cm und 3 l darüber; das Mindestvolumen ist die Summe über alle Fische.",
  "Body length is taken from the front of the head to the base of the tail fin, of the fish as it is now. Whether the volume is that of the water or of the tank, the table does not say.":
    "Die Körperlänge reicht von der Vorderseite des Kopfes bis zum Ansatz der Schwanzflosse, beim Fisch, wie er jetzt ist. Ob das Volumen das des Wassers oder das des Beckens ist, sagt die Tabelle nicht.",
  "For each cm of each fish a pond holds 2 L up to 10 cm of body length, 2.5 L up to 20 cm, 5 L up to 30 cm, 7 L up to 40 cm, 9 L up to 50 cm, 11 L up to 60 cm, 13 L up to 70 cm, 16 L up to 80 cm, 19 L up to 90 cm, 22 L up to 100 cm, 25 L up to 120 cm, 30 L up to 150 cm and 40 L up to 200 cm.":
    "Für jeden cm jedes Fisches fasst ein Teich 2 l bis 10 cm Körperlänge, 2,5 l bis 20 cm, 5 l bis 30 cm, 7 l bis 40 cm, 9 l bis 50 cm, 11 l bis 60 cm, 13 l bis 70 cm, 16 l bis 80 cm, 19 l bis 90 cm, 22 l bis 100 cm, 25 l bis 120 cm, 30 l bis 150 cm und 40 l bis 200 cm.",
  "Told of goldfish, koi and orfe only, which ponds are built for. Whether it is a pond or an aquarium, a plan does not tell.":
    "Nur für Goldfische, Koi und Orfen aufgeführt, für die Teiche angelegt werden. Ob es ein Teich oder ein Aquarium ist, sagt ein Plan nicht.",
  "The tank is at least 3 body lengths of the largest fish long.":
    "Das Becken ist mindestens 3 Körperlängen des größten Fisches lang.",
  "The tank is at least 2 body lengths of the largest fish wide.":
    "Das Becken ist mindestens 2 Körperlängen des größten Fisches breit.",
  "The water is at least 1 body length of the largest fish deep.":
    "Das Wasser ist mindestens 1 Körperlänge des größten Fisches tief.",
  "Body length is taken from the front of the head to the base of the tail fin, of the fish as it is now.":
    "Die Körperlänge reicht von der Vorderseite des Kopfes bis zum Ansatz der Schwanzflosse, beim Fisch, wie er jetzt ist.",
  "An aquarium is not open to view from all sides, and parts of it at least give cover and retreat.":
    "Ein Aquarium ist nicht von allen Seiten einsehbar und bietet wenigstens in Teilen Deckung und Rückzug.",
  "No share of cover is stated.": "Ein Anteil der Deckung ist nicht genannt.",
  "Indoor aquaria keep a rhythm of day and night.":
    "In Aquarien in Innenräumen wird ein Tag-Nacht-Rhythmus eingehalten.",
  "The text in force is at fedlex.admin.ch under SR 455.1; the cantonal veterinary office is competent.":
    "Der geltende Wortlaut steht auf fedlex.admin.ch unter SR 455.1; zuständig ist das kantonale Veterinäramt.",
  "Keeping fish that grow longer than 100 cm in the wild, native species excepted, and freshwater stingrays of any length needs a permit.":
    "Die Haltung von Fischen, die in der Natur über 100 cm lang werden, ausgenommen einheimische Arten, und von Süßwasserrochen jeder Länge braucht eine Bewilligung.",
  "Known from pages that restate the article, and say that it is in force since 1 September 2008; the day of the ordinance is that of its title.":
    "Bekannt aus Seiten, die den Artikel wiedergeben und nach denen er seit 1. September 2008 gilt; der Tag der Verordnung ist der in ihrem Titel.",
};

const of = (table: Readonly<Record<string, string>>, text: string) =>
  Object.hasOwn(table, text) ? table[text] : undefined;

/** A jurisdiction in German, or as the law names it. */
export const placeIn = (name: string) => of(places, name) ?? name;

/** The title of an instrument in German, or as the law has it. */
export const instrumentIn = (title: string) => of(instruments, title) ?? title;

/** An article in German, with the lines of a table that it names, or as the law has it. */
export function articleIn(article: string): string {
  const [whole, table = article, lines = ""] = /^(.*), lines? ([\d, ]+)$/.exec(article) ?? [];
  const told = of(articles, table) ?? table;
  if (!whole) return told;
  return `${told}, ${lines.includes(",") ? "Zeilen" : "Zeile"} ${lines}`;
}

/** Where a note says which lines of a table were read. */
const linesRead = " The lines are those ";

/** What an instrument asks, a note or a caution in German; of one that is not translated the English text, said to be so. */
export function standardIn(text: string): string {
  const end = text.indexOf(linesRead);
  const parts = end > 0 ? [text.slice(0, end), text.slice(end + 1)] : [text];
  const told = parts.map((part) => of(texts, part));
  return told.every((part) => part !== undefined) ? told.join(" ") : `auf Englisch: ${text}`;
}
