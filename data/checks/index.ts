import { agesNameTheirUnit } from "./ages-name-their-unit";
import type { Check } from "./check";
import { datesArePast } from "./dates-are-past";
import { doisAreOfTheSource } from "./dois-are-of-the-source";
import { essentialTraits } from "./essential-traits";
import { familiesAreKnown } from "./families-are-known";
import { filesAreFormatted } from "./files-are-formatted";
import { filesAreRead } from "./files-are-read";
import { filesAreReadable } from "./files-are-readable";
import { formsDiffer } from "./forms-differ";
import { germanIsWhole } from "./german-is-whole";
import { identifiersAreKnown } from "./identifiers-are-known";
import { idsAreKept } from "./ids-are-kept";
import { interbreeding } from "./interbreeding";
import { keptWaterIsPlausible } from "./kept-water-is-plausible";
import { languagesAreKnown } from "./languages-are-known";
import { lawsNameAnimals } from "./laws-name-animals";
import { lawsNameForms } from "./laws-name-forms";
import { lawsReachIntoCountries } from "./laws-reach-into-countries";
import { lawsSpeakGerman } from "./laws-speak-german";
import { lengthsAgree } from "./lengths-agree";
import { lettersAreWhole } from "./letters-are-whole";
import { livesInFreshWater } from "./lives-in-fresh-water";
import { locatorsNameTheSpecies } from "./locators-name-the-species";
import { movedIdsArrive } from "./moved-ids-arrive";
import { namedAfterId } from "./named-after-id";
import { namesAreOneSpecies } from "./names-are-one-species";
import { neighboursAgree } from "./neighbours-agree";
import { notesAreSentences } from "./notes-are-sentences";
import { nothingIsLeftToFillIn } from "./nothing-is-left-to-fill-in";
import { observationsAreSigned } from "./observations-are-signed";
import { preyFitsTheHunter } from "./prey-fits-the-hunter";
import { recordsAreFormatted } from "./records-are-formatted";
import { recordsAreWhole } from "./records-are-whole";
import { rootsAndRelativesAreSpelt } from "./roots-and-relatives-are-spelt";
import { schemaIsCurrent } from "./schema-is-current";
import { sizesArePlausible } from "./sizes-are-plausible";
import { sourcesAreCited } from "./sources-are-cited";
import { sourcesAreOne } from "./sources-are-one";
import { sourcesNameTheSpecies } from "./sources-name-the-species";
import { tablesNameRecords } from "./tables-name-records";
import { testsSayHow } from "./tests-say-how";
import { wellFormed } from "./well-formed";
import { whatBlocksHasEvidence } from "./what-blocks-has-evidence";

export type { Check, Slip } from "./check";

/** Every check, what it says first. */
export const checks: readonly Check[] = [
  filesAreRead,
  filesAreReadable,
  schemaIsCurrent,
  recordsAreFormatted,
  filesAreFormatted,
  wellFormed,
  recordsAreWhole,
  nothingIsLeftToFillIn,
  notesAreSentences,
  lettersAreWhole,
  namedAfterId,
  namesAreOneSpecies,
  identifiersAreKnown,
  languagesAreKnown,
  germanIsWhole,
  familiesAreKnown,
  livesInFreshWater,
  datesArePast,
  movedIdsArrive,
  idsAreKept,
  lawsNameAnimals,
  lawsNameForms,
  lawsReachIntoCountries,
  lawsSpeakGerman,
  tablesNameRecords,
  sourcesAreCited,
  sourcesAreOne,
  doisAreOfTheSource,
  sourcesNameTheSpecies,
  locatorsNameTheSpecies,
  rootsAndRelativesAreSpelt,
  observationsAreSigned,
  essentialTraits,
  testsSayHow,
  sizesArePlausible,
  lengthsAgree,
  agesNameTheirUnit,
  keptWaterIsPlausible,
  neighboursAgree,
  interbreeding,
  whatBlocksHasEvidence,
  preyFitsTheHunter,
  formsDiffer,
];
