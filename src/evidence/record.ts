import type { SpeciesRecord } from "../species";

/** The record of the species that the module is named after. It cannot be changed. */
declare const record: SpeciesRecord;

export default record;
