import type { Statement, TraitPath } from "vivary/species";
import type { Check } from "./check";
import { type Span, statementsEverywhere, waters } from "./statements-everywhere";

/** A limit of pooled or untold tests has no one temperature that its animals were used to. */
const pooled: readonly unknown[] = ["mixed", "unstated"];

/** What a test ended with decides what its figure means, and what the animals were used to how far it reaches. */
export const testsSayHow: Check = {
  name: "A figure of a test says how it ended, and two limits of a temperature what the animals were used to",
  find: ({ records }) =>
    records.flatMap(({ path, record }) =>
      waters.flatMap((trait) =>
        statementsEverywhere(record, trait).flatMap(({ at, statement }) => [
          ...(endsSomehow(statement, trait) ? [] : [{ file: path, at, ...untold(trait, statement) }]),
          ...(isOneTest(statement, trait) ? [] : [{ file: path, at, ...joined(trait, statement) }]),
        ]),
      ),
    ),
};

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

const untold = (trait: TraitPath, { as, by }: Statement) => ({
  found: `${trait}: what ${by} says is ${as}, without an endpoint`,
  expected: "what ended the test, or what the figure was best for",
  mend: 'Add endpoint, such as "balance" or "growth"; "unstated" where the source does not say.',
});

const joined = (trait: TraitPath, { by }: Statement) => ({
  found: `${trait}: both limits of ${by}, without the temperature that the animals were used to`,
  expected: "acclimatedAt, or one statement for each of two temperatures",
  mend: 'Add acclimatedAt, part the two ends, or say endpoint "mixed" where the source pools tests.',
});
