import type { SourceReference, SpeciesRecord } from "vivary/species";
import type { Check } from "./check";

/** A row or a page copied from another record would give a species the figures of another one. */
export const locatorsNameTheSpecies: Check = {
  name: "A row or a page that names a species names this one, or says of whom its figures are",
  find({ records }) {
    const known = new Set(records.flatMap(({ record }) => namesOf(record)));
    return records.flatMap(({ path: file, record }) =>
      Object.entries(record.sources).flatMap(([key, source]) => {
        const place = { file, at: ["sources", key, "at"] };
        return strangersIn(source, record, known).map((stranger) => ({
          ...place,
          found: `a place in ${key} that names ${stranger}`,
          expected: `${record.taxonomy.name}, or a synonym of it`,
          mend: "Correct it; where the source goes by a synonym, add that to taxonomy.synonyms; where its figures are of another species, say so in of.",
        }));
      }),
    );
  },
};

/** How a page of FishBase, or of what is built like it, names its species. */
const asked = /GenusName=([A-Za-z]+)&SpeciesName=([a-z-]+)/;
/** How a row of one of its tables does. */
const numbered = /\bSpecCode (\d+)/;

/** Whom a locator names that is not this species, where it names nobody else. */
function strangersIn(
  { at = "", of, under }: SourceReference,
  record: SpeciesRecord,
  known: ReadonlySet<string>,
): readonly string[] {
  if (of !== undefined) return [];
  const own = namesOf(record);
  const [, genus, epithet] = asked.exec(at) ?? [];
  const named = [
    ...(genus === undefined ? [] : [`${genus} ${epithet}`]),
    ...pairsOfWords(at).filter((pair) => known.has(pair) || own.includes(pair)),
  ];
  const [, number] = numbered.exec(at) ?? [];
  const registered = record.identifiers?.fishbase;
  const isOfAnother = number !== undefined && registered !== undefined && under === undefined;
  return [
    ...(named.some((name) => own.includes(name)) ? [] : named.slice(0, 1)),
    ...(isOfAnother && number !== registered
      ? [`SpecCode ${number}, where identifiers.fishbase is ${registered}`]
      : []),
  ];
}

const namesOf = ({ taxonomy }: SpeciesRecord) => [taxonomy.name, ...(taxonomy.synonyms ?? [])];

/** Every two words of a text that follow one another, without its addresses. */
function pairsOfWords(text: string): readonly string[] {
  const words = text.replace(/https?:\S+/g, " , ").match(/[A-Za-z-]+|[^\sA-Za-z-]+/g) ?? [];
  return words.slice(1).map((word, index) => `${words[index]} ${word}`);
}
