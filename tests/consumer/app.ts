// An app as a consumer writes it: checked against the packed package, bundled, and run with nothing but the language.
import bettaSplendens from "vivary/catalog/betta-splendens";
import { assessPair } from "vivary/compatibility";
import record from "vivary/evidence/betta-splendens";
import { describe } from "vivary/report";
import { parseSpecies } from "vivary/schema";
import { convert } from "vivary/units";

const male = { species: bettaSplendens, sex: "male" } as const;
const verdict = assessPair(male, male);

export const answers: [string, number, string, string] = [
  parseSpecies(JSON.parse(JSON.stringify(record))).id,
  convert(24, "in", "cm"),
  verdict.outcome,
  describe(verdict).slice(0, 10),
];

/** What must not compile: were a type lost on the way, these lines would. */
export const mistakes = () => [
  // @ts-expect-error: a length is no temperature.
  convert(24, "in", "degC"),
  // @ts-expect-error: a record has no such field.
  parseSpecies(record).colour,
  // @ts-expect-error: there is no such outcome.
  verdict.outcome === "fine",
];
