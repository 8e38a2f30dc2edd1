import type { SpeciesProfile } from "vivary/species";
import { urlOf } from "./timing";

const { speciesById }: typeof import("vivary/catalog") = await import(urlOf("catalog"));

/** The species of an id, which the catalog must hold. */
export function speciesOf(id: string): SpeciesProfile {
  const found = speciesById(id);
  if (!found) throw new Error(`The catalog holds no ${id}.`);
  return found;
}
