import { choicesAreClear } from "./checks/choices-are-clear";
import { figuresArePlausible } from "./checks/figures-are-plausible";
import { idIsName } from "./checks/id-is-name";
import { keysAreNames } from "./checks/keys-are-names";
import { meaningsNest } from "./checks/meanings-nest";
import { sourcesAreNamed } from "./checks/sources-are-named";
import { statementsSayEnough } from "./checks/statements-say-enough";
import { unitsConvert } from "./checks/units-convert";
import type { Problem } from "./problem";

/** Looks for what the shape of a record cannot tell. Sees the record as it came, whatever else is wrong with it. */
export type Check = (record: Readonly<Record<string, unknown>>) => readonly Problem[];

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
