import type { Check } from "../../checked";
import { choicesAreClear } from "./choices-are-clear";
import { figuresArePlausible } from "./figures-are-plausible";
import { idIsName } from "./id-is-name";
import { keysAreNames } from "./keys-are-names";
import { meaningsNest } from "./meanings-nest";
import { sourcesAreNamed } from "./sources-are-named";
import { statementsSayEnough } from "./statements-say-enough";
import { unitsConvert } from "./units-convert";

/** Every check of what a record means. */
export const recordChecks: readonly Check[] = [
  idIsName,
  keysAreNames,
  sourcesAreNamed,
  statementsSayEnough,
  unitsConvert,
  figuresArePlausible,
  meaningsNest,
  choicesAreClear,
];
