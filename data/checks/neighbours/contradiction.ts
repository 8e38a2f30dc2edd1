import type { SpeciesProfile, TraitPath } from "vivary/species";

/** What cannot be true together of one animal, as a keeper would say it. */
export interface Contradiction {
  /** The trait at which it is told. */
  readonly trait: TraitPath;
  readonly found: string;
  readonly expected: string;
  readonly holds: (profile: SpeciesProfile) => boolean | undefined;
  readonly mend: string;
}
