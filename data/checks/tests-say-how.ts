import {
  type SpeciesRecord,
  type Statement,
  type Statements,
  statementsOf,
  type TraitPath,
} from "vivary/species";
import type { Check } from "./check";

const waters = ["water.temperature", "water.pH", "water.generalHardness", "water.salinity"] as const;

/** A limit of pooled or untold tests has no one temperature that its animals were used to. */
const pooled: readonly unknown[] = ["mixed", "unstated"];

/** What a test ended with decides what its figure means, and what the animals were used to how far it reaches. */
export const testsSayHow: Check = {
  name: "A figure of a test says how it ended, and two limits of a temperature what the animals were used to",
  find: ({ records }) =>
    records.flatMap(({ path, record }) =>
      waters.flatMap((trait) =>
        everywhere(record, trait).flatMap((statement) => [
          ...(endsSomehow(statement, trait) ? [] : [untold(path, trait, statement)]),
          ...(isOneTest(statement, trait) ? [] : [joined(path, trait, statement)]),
        ]),
      ),
    ),
};

/** The statements with a value of a record and its forms. */
function everywhere(record: SpeciesRecord, trait: (typeof waters)[number]): readonly Statement<Span>[] {
  const holders: readonly Statements[] = [record, ...Object.values(record.forms ?? {})];
  return holders.flatMap((holder) => statementsOf(holder, trait)).filter(({ value }) => value !== undefined);
}

interface Span {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

function endsSomehow({ as, endpoint }: Statement, trait: TraitPath): boolean {
  const isTest = as === "limit" || (as === "tested" && trait === "water.temperature");
  return !isTest || endpoint !== undefined;
}

/** Whether the two ends of a limit of temperature are of animals that were used to one temperature. */
function isOneTest({ as, value, endpoint, acclimatedAt }: Statement<Span>, trait: TraitPath): boolean {
  if (trait !== "water.temperature" || as !== "limit") return true;
  if (value?.min === undefined || value.max === undefined) return true;
  return acclimatedAt !== undefined || pooled.includes(endpoint);
}

const untold = (path: string, trait: TraitPath, { as, by }: Statement) => ({
  where: path,
  found: `${trait}: what ${by} says is ${as}, without an endpoint`,
  expected: "what ended the test, or what the figure was best for",
  mend: 'Add endpoint, such as "balance" or "growth"; "unstated" where the source does not say.',
});

const joined = (path: string, trait: TraitPath, { by }: Statement) => ({
  where: path,
  found: `${trait}: both limits of ${by}, without the temperature that the animals were used to`,
  expected: "acclimatedAt, or one statement for each of two temperatures",
  mend: 'Add acclimatedAt, part the two ends, or say endpoint "mixed" where the source pools tests.',
});
