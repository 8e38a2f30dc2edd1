import { readdirSync, readFileSync } from "node:fs";
import { parseSpecies } from "../../src/schema";
import type { SpeciesRecord, Statements } from "../../src/species";

const folder = new URL("../../data/species/", import.meta.url);

/** Every file of `data/species`, as JSON reads it. */
export const files: readonly { readonly id: string; readonly json: unknown }[] = readdirSync(folder)
  .filter((name) => name.endsWith(".json"))
  .map((name) => ({
    id: name.slice(0, -".json".length),
    json: JSON.parse(readFileSync(new URL(name, folder), "utf8")),
  }));

/** The least that is a record. */
export const leastRecord = {
  id: "danio-rerio",
  taxonomy: {
    name: "Danio rerio",
    authority: "(Hamilton, 1822)",
    family: "Danionidae",
    order: "Cypriniformes",
    kind: "fish",
  },
  names: { en: ["zebra danio"] },
  sources: {},
} as const;

/** Sources that the statements of a test may name. */
const sources: SpeciesRecord["sources"] = {
  study: { cite: "a-study", at: "p. 4" },
  survey: { cite: "a-survey", at: "table 2" },
  mirror: { cite: "a-mirror", at: "row 7", root: "a-study" },
  handbook: { cite: "a-handbook", memory: true },
  letter: { cite: "a-letter", memory: true },
  keeper: { cite: "a-keeper", observed: true },
  relative: { cite: "a-study", at: "p. 9", of: "Danio kyathit" },
};

/** A record of the given statements and forms, with the sources that they name, checked as any record is. */
export function recordOf(stated: Statements & Pick<SpeciesRecord, "forms">): SpeciesRecord {
  const text = JSON.stringify(stated);
  const named = Object.entries(sources).filter(([key]) => text.includes(`"by":"${key}"`));
  return parseSpecies({ ...leastRecord, sources: Object.fromEntries(named), ...stated });
}
