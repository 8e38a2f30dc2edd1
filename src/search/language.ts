import type { SearchNames } from "./names";

/** The names of the language that the module is named after, to be given to `suggestSpecies`. */
declare const names: SearchNames;

export default names;
