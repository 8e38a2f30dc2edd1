import type { FormProfile, SpeciesProfile } from "../../species";

/** What a record and a profile both say of a species: what it is called, and where it belongs. */
export interface Described extends Pick<SpeciesProfile, "id" | "taxonomy" | "names" | "identifiers"> {
  readonly forms?: Readonly<Record<string, Pick<FormProfile, "names">>> | undefined;
}
