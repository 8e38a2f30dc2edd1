import { listOf, objectOf, oneOf } from "../checks";
import type { Finding, Quantity, Verdict } from "../compatibility";
import { frozen } from "../frozen";
import type { Condition } from "../plan";
import { bases } from "../species";
import { inOrder, listed, type RowWith } from "./table";

const outcomes = ["suitable", "conditional", "unsuitable"];

const columns = {
  rowID: { type: "string", about: "Tells the row from all others.", required: true },
  verdict: {
    type: "integer",
    about: "The place of the verdict in the list, from 1.",
    required: true,
    within: { min: 1 },
  },
  parties: { type: "string", about: "The species that were judged.", required: true },
  outcome: { type: "string", about: "The answer.", required: true, words: [...outcomes, "undetermined"] },
  atBest: {
    type: "string",
    about: "The best that it may be over what is disputed or unknown.",
    required: true,
    words: outcomes,
  },
  atWorst: {
    type: "string",
    about: "The worst that it may be over what is disputed or unknown.",
    required: true,
    words: outcomes,
  },
  finding: {
    type: "integer",
    about:
      "The place of the finding in the verdict, from 1, those that are met last; empty where there is none.",
    within: { min: 1 },
  },
  rule: { type: "string", about: "The rule." },
  weight: {
    type: "string",
    about: "How much it weighs.",
    words: ["blocking", "restricting", "advisory", "favourable"],
  },
  met: { type: "boolean", about: "Whether the plan meets its condition, so that it does not count." },
  fromID: { type: "string", about: "The species that it starts from; empty for the tank." },
  fromParty: {
    type: "integer",
    about: "The place among the parties, from 1, of the one that it starts from; empty for the tank.",
    within: { min: 1 },
  },
  toID: { type: "string", about: "The species that it falls on; empty for the tank." },
  toParty: {
    type: "integer",
    about: "The place among the parties, from 1, of the one that it falls on; empty for the tank.",
    within: { min: 1 },
  },
  basis: { type: "string", about: "The weakest basis of the facts used.", words: [...bases] },
  traits: { type: "string", about: "The traits used." },
  conditionOn: { type: "string", about: "The fact of the plan that would have to be." },
  conditionOf: { type: "string", about: "The species whose fact it is; empty for the tank." },
  conditionParty: {
    type: "integer",
    about: "The place among the parties, from 1, of the one whose fact it is; empty for the tank.",
    within: { min: 1 },
  },
  conditionMin: { type: "number", about: "The least that the fact may be, in the unit of the condition." },
  conditionMax: { type: "number", about: "The most that the fact may be, in the unit of the condition." },
  conditionUnit: { type: "string", about: "The unit of the condition." },
  conditionWords: { type: "string", about: "The words of which the fact must be one." },
  measure: { type: "string", about: "A figure behind the finding, by name; a row each." },
  number: { type: "number", about: "The figure, in the unit." },
  min: { type: "number", about: "The lower end, where it is a span." },
  max: { type: "number", about: "The upper end, where it is a span." },
  unit: { type: "string", about: "The unit of the figure; empty for counts and pH." },
  word: { type: "string", about: "The word, where the figure is one, or several." },
} as const;

/** Verdicts. */
export const verdicts = /* @__PURE__ */ frozen({
  name: "verdicts",
  about:
    "A figure behind a finding of a verdict; a finding without figures, and a verdict without findings, have a row too.",
  columns,
  key: ["rowID"],
  refers: {},
} as const);

/** A figure behind a finding of a verdict as a row; `tables.verdicts` says what each cell holds. */
export type VerdictRow = RowWith<typeof columns>;

type FindingCells = Omit<
  VerdictRow,
  "rowID" | "verdict" | "parties" | "outcome" | "atBest" | "atWorst" | "finding"
>;

/**
 * Verdicts as rows: one for each figure behind each finding, those whose condition is met among them.
 *
 * @param given - Verdicts of pairs or plans.
 * @throws InvalidInputError for what is no list of verdicts.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
 * import { assessPair } from "vivary/compatibility";
 * import { verdictRows } from "vivary/tables";
 *
 * const rows = verdictRows([assessPair({ species: danioRerio }, { species: pterophyllumScalare })]);
 * rows.find(({ rule }) => rule === "temperature")?.max; // => 26
 * ```
 */
export function verdictRows(given: readonly Verdict[]): readonly VerdictRow[] {
  return listOf(given, "verdicts").flatMap((verdict, index): readonly VerdictRow[] => {
    const { parties, outcome, bounds, findings, met } = checked(verdict, `verdicts[${index}]`);
    const ids = parties.map(({ id }) => id);
    const told = {
      verdict: index + 1,
      parties: parties.map(({ id, form }) => (form === undefined ? id : `${id}:${form}`)).join(" | "),
      outcome,
      ...bounds,
    };
    const all = [
      ...findings.map((finding) => ({ finding, met: false })),
      ...met.map((finding) => ({ finding, met: true })),
    ];
    if (all.length === 0)
      return [inOrder(columns, { rowID: `${index + 1}`, ...told, finding: null, ...nothing })];
    return all.flatMap(({ finding, met }, place) =>
      cellsOf(finding, met, ids).map((cells) =>
        inOrder(columns, {
          rowID: [index + 1, place + 1, cells.measure].filter((part) => part !== null).join("/"),
          ...told,
          finding: place + 1,
          ...cells,
        }),
      ),
    );
  });
}

/** The verdict itself, or an InvalidInputError where it lacks what a row tells. */
function checked(verdict: Verdict, at: string): Verdict {
  const { parties, outcome, bounds, findings, met } = objectOf(verdict, at);
  oneOf(outcome, columns.outcome.words, `${at}.outcome`);
  objectOf(bounds, `${at}.bounds`);
  for (const [index, party] of listOf(parties, `${at}.parties`).entries())
    objectOf(party, `${at}.parties[${index}]`);
  for (const [name, list] of Object.entries({ findings, met })) {
    for (const [index, finding] of listOf(list, `${at}.${name}`).entries())
      listOf(objectOf(finding, `${at}.${name}[${index}]`).traits, `${at}.${name}[${index}].traits`);
  }
  return verdict;
}

const noFigure = { measure: null, number: null, min: null, max: null, unit: null, word: null };
const noCondition = {
  conditionOn: null,
  conditionOf: null,
  conditionParty: null,
  conditionMin: null,
  conditionMax: null,
  conditionUnit: null,
  conditionWords: null,
};
const nothing: FindingCells = {
  rule: null,
  weight: null,
  met: null,
  fromID: null,
  fromParty: null,
  toID: null,
  toParty: null,
  basis: null,
  traits: null,
  ...noCondition,
  ...noFigure,
};

function cellsOf(finding: Finding, met: boolean, ids: readonly string[]): readonly FindingCells[] {
  const { rule, weight, from, to, basis, traits, measures = {} } = finding;
  const idOf = (place: number | undefined) => (place === undefined ? null : (ids[place] ?? null));
  const told = {
    rule,
    weight,
    met,
    fromID: idOf(from),
    fromParty: placeOf(from),
    toID: idOf(to),
    toParty: placeOf(to),
    basis,
    traits: listed(traits),
    ...("condition" in finding ? conditionCells(finding.condition, idOf) : noCondition),
  };
  const figures = Object.entries(measures as Readonly<Record<string, Held>>).map(([measure, held]) => ({
    ...noFigure,
    measure,
    ...figureCells(held),
  }));
  return (figures.length > 0 ? figures : [noFigure]).map((figure) => ({ ...told, ...figure }));
}

function conditionCells({ on, of, wanted }: Condition, idOf: (place: number | undefined) => string | null) {
  const told = { ...noCondition, conditionOn: on, conditionOf: idOf(of), conditionParty: placeOf(of) };
  if ("oneOf" in wanted) return { ...told, conditionWords: listed(wanted.oneOf.map(String)) };
  const { min = null, max = null, unit = null } = wanted;
  return { ...told, conditionMin: min, conditionMax: max, conditionUnit: unit };
}

/** The place of a party as people count. */
const placeOf = (index: number | undefined) => (index === undefined ? null : index + 1);

/** A figure or words of a finding. */
type Held = Quantity | { readonly value: string | readonly string[] };

function figureCells(held: Held): Partial<FindingCells> {
  if (!("value" in held)) return { min: held.min ?? null, max: held.max ?? null, unit: held.unit ?? null };
  const { value } = held;
  if (typeof value === "number") return { number: value, unit: ("unit" in held && held.unit) || null };
  return { word: typeof value === "string" ? value : listed(value) };
}
