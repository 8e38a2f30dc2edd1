// The modules of names that src/search looks in.
import type { SpeciesRecord } from "vivary/species";

/** What the trade calls families and orders, where the names of their species do not say so. Common practice. */
export const groups: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  en: {
    Callichthyidae: ["armoured catfish"],
    Characiformes: ["characin"],
    Cichlidae: ["cichlid"],
    Nothobranchiidae: ["killifish"],
    Osphronemidae: ["labyrinth fish"],
    Helostomatidae: ["labyrinth fish"],
    Anabantidae: ["labyrinth fish"],
    Poeciliidae: ["livebearer"],
    Siluriformes: ["catfish"],
  },
  de: {
    Ampullariidae: ["Schnecken"],
    Anabantidae: ["Labyrinthfische"],
    Atyidae: ["Garnelen"],
    Botiidae: ["Schmerlen"],
    Callichthyidae: ["Panzerwelse"],
    Cambaridae: ["Flusskrebse", "Krebse"],
    Characiformes: ["Salmler"],
    Cichlidae: ["Buntbarsche"],
    Cobitidae: ["Schmerlen"],
    Danionidae: ["Bärblinge"],
    Gastromyzontidae: ["Schmerlen"],
    Gobiidae: ["Grundeln"],
    Helostomatidae: ["Labyrinthfische"],
    Loricariidae: ["Harnischwelse"],
    Melanotaeniidae: ["Regenbogenfische"],
    Nassariidae: ["Schnecken"],
    Neritidae: ["Schnecken"],
    Nothobranchiidae: ["Killifische"],
    Osphronemidae: ["Labyrinthfische"],
    Pachychilidae: ["Schnecken"],
    Planorbidae: ["Schnecken"],
    Poeciliidae: ["Lebendgebärende"],
    Siluriformes: ["Welse"],
    Sundadanionidae: ["Bärblinge"],
    Tetraodontidae: ["Kugelfische"],
  },
};

/** The languages that vernacular names are in, each with other words for it; a further one joins here, and gets a module. */
export const languages: Readonly<Record<string, readonly string[]>> = {
  de: ["deu", "ger", "dt", "german", "deutsch"],
  en: ["eng", "english", "englisch"],
};

/** Every language that a name of a species is in, English among them always. */
export const languagesOf = (records: readonly SpeciesRecord[]): readonly string[] =>
  [...new Set(["en", ...records.flatMap(({ names }) => Object.keys(names))])].sort();

/** The names of a language: of each species, and of each of its forms. */
export function searchNames(language: string, records: readonly SpeciesRecord[]) {
  const named = records.flatMap(({ id, names, forms = {} }) => [
    [id, names[language]] as const,
    ...Object.entries(forms).map(([form, own]) => [`${id}/${form}`, own.names[language]] as const),
  ]);
  return {
    language,
    names: Object.fromEntries(named.filter(([, texts = []]) => texts.length > 0)),
    groups: groups[language] ?? {},
  };
}

/** Of each species the accepted name, family and order, and the names by which it was known, ids once used among them. */
export function scientificNames(
  records: readonly SpeciesRecord[],
  moved: readonly (readonly [id: string, to: string])[],
): readonly (readonly string[])[] {
  return records.map(({ id, taxonomy: { name, family, order, synonyms = [] } }) => {
    const ids = synonyms.map((synonym) => synonym.toLowerCase().replaceAll(" ", "-"));
    const former = moved.filter(([old, to]) => to === id && !ids.includes(old)).map(([old]) => nameOf(old));
    return [name, family, order, ...synonyms, ...former];
  });
}

/** An id as the name it was made from. */
const nameOf = (id: string) => `${id[0]?.toUpperCase()}${id.slice(1).replaceAll("-", " ")}`;
