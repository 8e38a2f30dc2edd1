import type { Check } from "./checks/check";
import { choicesAreClear } from "./checks/choices-are-clear";
import { figuresArePlausible } from "./checks/figures-are-plausible";
import { idIsName } from "./checks/id-is-name";
import { keysAreNames } from "./checks/keys-are-names";
import { meaningsNest } from "./checks/meanings-nest";
import { sourcesAreNamed } from "./checks/sources-are-named";
import { statementsSayEnough } from "./checks/statements-say-enough";
import { unitsConvert } from "./checks/units-convert";

/** Every check of meaning. */
export const checks: readonly Check[] = [
  idIsName,
  keysAreNames,
  sourcesAreNamed,
  statementsSayEnough,
  unitsConvert,
  figuresArePlausible,
  meaningsNest,
  choicesAreClear,
];
