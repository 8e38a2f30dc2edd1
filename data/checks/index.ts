import type { Check } from "./check";
import { essentialTraits } from "./essential-traits";
import { filesAreReadable } from "./files-are-readable";
import { interbreeding } from "./interbreeding";
import { movedIdsArrive } from "./moved-ids-arrive";
import { namedAfterId } from "./named-after-id";
import { namesAreOneSpecies } from "./names-are-one-species";
import { neighboursAgree } from "./neighbours-agree";
import { observationsAreSigned } from "./observations-are-signed";
import { preyFitsTheHunter } from "./prey-fits-the-hunter";
import { schemaIsCurrent } from "./schema-is-current";
import { sizesArePlausible } from "./sizes-are-plausible";
import { sourcesAreCited } from "./sources-are-cited";
import { sourcesNameTheSpecies } from "./sources-name-the-species";
import { testsSayHow } from "./tests-say-how";
import { wellFormed } from "./well-formed";
import { whatBlocksHasEvidence } from "./what-blocks-has-evidence";

export type { Check, Slip } from "./check";

/** Every check, what it says first. */
export const checks: readonly Check[] = [
  filesAreReadable,
  schemaIsCurrent,
  wellFormed,
  namedAfterId,
  namesAreOneSpecies,
  movedIdsArrive,
  sourcesAreCited,
  sourcesNameTheSpecies,
  observationsAreSigned,
  essentialTraits,
  testsSayHow,
  sizesArePlausible,
  neighboursAgree,
  interbreeding,
  whatBlocksHasEvidence,
  preyFitsTheHunter,
];
