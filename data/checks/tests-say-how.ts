import { type FigurePath, figurePaths, type Statement } from "vivary/species";
import type { Check } from "./check";
import { type Span, spanOf, statementsEverywhere } from "./statements-everywhere";

/** A limit of pooled or untold tests has no one temperature that its animals were used to. */
const pooled: readonly unknown[] = ["mixed", "unstated"];

/** What a figure of a test was best for: no limit is meant. */
const best: readonly unknown[] = ["growth", "breeding", "choice", "performance", "housing"];

/** What a test ended with decides what its figure means, and what the animals were used to how far it reaches. */
export const testsSayHow: Check = {
  name: "A figure of a test, and none else, says how it ended, and two limits of a temperature what the animals were used to",
  find: ({ records }) =>
    records.flatMap(({ path, record }) =>
      figurePaths.flatMap((trait) =>
        statementsEverywhere(record, trait).flatMap(({ at, statement }) => [
          ...(endsSomehow(statement, trait) ? [] : [{ file: path, at, ...untold(trait, statement) }]),
          ...(isOneTest(statement, trait) ? [] : [{ file: path, at, ...joined(trait, statement) }]),
          ...(isOfTest(statement) ? [] : [{ file: path, at, ...untested(trait, statement) }]),
          ...(isUtmost(statement) ? [] : [{ file: path, at, ...bestFor(trait, statement) }]),
          ...(isBorne(statement, trait) ? [] : [{ file: path, at, ...strayed(trait, statement) }]),
        ]),
      ),
    ),
};

function endsSomehow({ as, endpoint }: Statement, trait: FigurePath): boolean {
  const isTest = as === "limit" || (as === "tested" && trait === "water.temperature");
  return !isTest || endpoint !== undefined;
}

/** Whether the two ends of a limit of temperature are of animals that were used to one temperature. */
function isOneTest({ as, value, endpoint, acclimatedAt }: Statement<Span>, trait: FigurePath): boolean {
  if (trait !== "water.temperature" || as !== "limit") return true;
  if (value?.min === undefined || value.max === undefined) return true;
  return acclimatedAt !== undefined || pooled.includes(endpoint);
}

/** Whether a figure that tells of a test is one of a test. */
const isOfTest = ({ as, endpoint, acclimatedAt, n }: Statement): boolean =>
  as === "limit" || as === "tested" || [endpoint, acclimatedAt, n].every((told) => told === undefined);

/** Whether a limit is not what something was best for. */
const isUtmost = ({ as, endpoint }: Statement): boolean => as !== "limit" || !best.includes(endpoint);

/** Whether the animals of a limit were used to a temperature that they bear. */
function isBorne(statement: Statement<Span>, trait: FigurePath): boolean {
  const { as, acclimatedAt } = statement;
  if (trait !== "water.temperature" || as !== "limit" || acclimatedAt === undefined) return true;
  const { min = -Infinity, max = Infinity } = spanOf(statement, trait);
  return min <= acclimatedAt && acclimatedAt <= max;
}

const untold = (trait: FigurePath, { as, by }: Statement) => ({
  found: `${trait}: what ${by} says is ${as}, without an endpoint`,
  expected: "what ended the test, or what the figure was best for",
  mend: 'Add endpoint, such as "balance" or "growth"; "unstated" where the source does not say.',
});

const joined = (trait: FigurePath, { by }: Statement) => ({
  found: `${trait}: both limits of ${by}, without the temperature that the animals were used to`,
  expected: "acclimatedAt, or one statement for each of two temperatures",
  mend: 'Add acclimatedAt, part the two ends, or say endpoint "mixed" where the source pools tests.',
});

const untested = (trait: FigurePath, { as, by }: Statement) => ({
  found: `${trait}: what ${by} says is ${as}, and tells of a test`,
  expected: "endpoint, acclimatedAt and n of limits and of tested figures alone",
  mend: 'Make it "tested" or "limit" if a test gave the figure, else take those fields out.',
});

const bestFor = (trait: FigurePath, { by, endpoint }: Statement) => ({
  found: `${trait}: a limit by ${by} that was best for ${endpoint}`,
  expected: "what ended the test, of a limit",
  mend: 'Correct endpoint, or make the figure "tested".',
});

const strayed = (trait: FigurePath, { by, acclimatedAt }: Statement) => ({
  found: `${trait}: animals of ${by} that were used to ${acclimatedAt} °C, past their own limit`,
  expected: "acclimatedAt within the limits of the line",
  mend: "Correct acclimatedAt, which is in °C, or the figure or its unit.",
});
