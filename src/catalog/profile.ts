import type { SpeciesProfile } from "../species";

/** The profile of the species that the module is named after. It cannot be changed. */
declare const profile: SpeciesProfile;

export default profile;
