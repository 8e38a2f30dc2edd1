import { objectOf } from "../../checks";
import { ofPart } from "../../errors";
import { frozen } from "../../frozen";
import {
  bases,
  basisOf,
  classes,
  type RecordSources,
  type SourceReference,
  type SpeciesRecord,
  type Statement,
  type StatementGroup,
  type Statements,
  statementsOf,
  type TraitPath,
  traitPaths,
  traitTable,
} from "../../species";
import { groupsOf, hasValue, informs, inTraitUnit, joined, type Stated, topicKey } from "../../species/inner";
import { inOrder, type RowWith } from "../table";
import { dwc, ets } from "../terms";
import { describedOf } from "./described";
import { noValue, partsOf, valueColumns } from "./parts";

const columns = {
  statementID: {
    type: "string",
    about:
      "Tells the statement from all others of one release: it ends in its place in the record. A value of several parts has a row for each.",
    required: true,
    term: dwc("measurementID"),
  },
  taxonID: { type: "string", about: "The species.", required: true, term: dwc("taxonID") },
  form: {
    type: "string",
    about: "The form bred in captivity that it is about; empty for the species.",
    term: ets("morphotype"),
  },
  trait: { type: "string", about: "The trait.", required: true, term: ets("traitID") },
  ...valueColumns,
  meaning: {
    type: "string",
    about: "What a figure of water, a length or an age means.",
    words: [...new Set([...Object.keys(classes.waterMeaning), ...Object.keys(classes.lengthMeaning)])],
  },
  sex: {
    type: "string",
    about: "The sex that was measured; empty for both or unstated.",
    words: Object.keys(classes.sex),
    term: dwc("sex"),
  },
  lifeStage: {
    type: "string",
    about: "The stage that was measured; empty for grown animals.",
    words: Object.keys(classes.stage),
    term: dwc("lifeStage"),
  },
  measure: {
    type: "string",
    about: "What a length was measured as.",
    words: Object.keys(classes.lengthMeasure),
  },
  animals: {
    type: "integer",
    about: "The number of animals that a least room is stated for.",
    within: { min: 1 },
  },
  precision: {
    type: "string",
    about: "class where the ends are those of a handbook's class, such as soft water, not of this species.",
    words: ["class"],
  },
  endpoint: {
    type: "string",
    about: "What ended a test, or what a tested figure was best for.",
    words: Object.keys(classes.endpoint),
  },
  acclimatedAt: { type: "number", about: "The temperature that the tested animals were used to, °C." },
  individualCount: {
    type: "integer",
    about: "The number of animals tested.",
    within: { min: 1 },
    term: dwc("individualCount"),
  },
  basis: {
    type: "string",
    about: "How well it is supported.",
    required: true,
    words: [...bases],
    term: ets("basisOfRecordDescription"),
  },
  counts: {
    type: "string",
    about:
      "used: the fact rests on it; agrees: it says the same; stands: it counts as another value; repeats: its source has said so already; set-aside: it does not count; informs: a note without a value, or a figure that decides nothing, as those of the wild, of tests and of young animals.",
    required: true,
    words: ["used", "agrees", "stands", "repeats", "set-aside", "informs"],
  },
  by: {
    type: "string",
    about: "Who says so: a key of the record's sources, common-practice, or curator.",
    required: true,
  },
  sourceID: {
    type: "string",
    about: "The source; empty for common practice and what a curator blended.",
    term: ets("references"),
  },
  root: {
    type: "string",
    about: "The source that this one copies from; those with one root are one voice.",
    required: true,
  },
  at: { type: "string", about: "Page, row or address within the source." },
  recordedUnder: { type: "string", about: "The synonym under which the source records the species." },
  figuresOf: { type: "string", about: "The relative whose figures stand in for those of the species." },
  commercialUse: {
    type: "boolean",
    about:
      "False where the licence of the source, or of what it copies, forbids commercial use; empty where none is known to.",
  },
  estimate: {
    type: "boolean",
    about: "Whether it was computed from relatives or by a model, whoever printed it.",
    required: true,
  },
  statedUnit: { type: "string", about: "The unit of the source where it is another." },
  adoptedBecause: { type: "string", about: "Why it is the one to use." },
  setAsideBecause: { type: "string", about: "Why it is not to be used." },
  remarks: {
    type: "string",
    about: "What a reader should know.",
    term: dwc("measurementRemarks"),
  },
} as const;

/** What sources said. */
export const statements = /* @__PURE__ */ frozen({
  name: "statements",
  about:
    "What one source said of one trait of a species, in the trait's unit; of a value of several parts, one part.",
  columns,
  key: ["statementID", "part"],
  refers: { taxonID: "taxa", trait: "traits", sourceID: "sources" },
} as const);

/** A statement, or one part of it, as a row; `tables.statements` says what each cell holds. */
export type StatementRow = RowWith<typeof columns>;

/**
 * What sources said of the species and their forms, a row for each statement, or for each part of its value.
 *
 * @param records - Records, such as `allRecords` of `vivary/evidence`.
 * @throws InvalidInputError for what is no list of records.
 *
 * @example
 * ```ts
 * import { recordById } from "vivary/evidence";
 * import { statementRows } from "vivary/tables";
 *
 * const record = recordById("puntigrus-tetrazona");
 * const pH = statementRows(record ? [record] : []).filter(({ trait }) => trait === "water.pH");
 * pH.map(({ min, max, counts, root }) => [min, max, counts, root])[0]; // => [6, 8, "used", "fishbase"]
 * ```
 */
export function statementRows(records: readonly SpeciesRecord[]): readonly StatementRow[] {
  return describedOf(records, "records").flatMap((record, index) =>
    ofPart(["records", index], () => {
      objectOf(record.sources, "sources");
      return [
        ...rowsOf(record, record, null),
        ...Object.entries(record.forms ?? {}).flatMap(([form, stated]) =>
          ofPart(["forms", form], () => rowsOf(record, stated, form)),
        ),
      ];
    }),
  );
}

function rowsOf(record: SpeciesRecord, stated: Statements, form: string | null): readonly StatementRow[] {
  const { id, sources } = record;
  return traitPaths.flatMap((trait) => {
    const list: readonly Statement[] = statementsOf(stated, trait);
    const groups = groupsOf(list, trait, sources);
    return list.flatMap((statement, index) => {
      const told = {
        statementID: [id, form, trait, index + 1].filter((part) => part !== null).join("/"),
        taxonID: id,
        form,
        trait,
        ...aboutOf(statement, sources),
        counts: standingOf(statement, trait, groups.get(topicKey(statement, trait))),
      };
      const parts = hasValue(statement) ? partsOf(inTraitUnit(statement, trait), trait) : [noValue];
      return parts.map((part) => inOrder(columns, { ...told, ...part }));
    });
  });
}

/** What a statement says beside its value. */
function aboutOf(statement: Statement, sources: RecordSources) {
  const { by, as, sex, stage, measure, precision, endpoint, acclimatedAt, n, unit, value } = statement;
  const source: Partial<SourceReference> = (Object.hasOwn(sources, by) && sources[by]) || {};
  return {
    meaning: as ?? null,
    sex: sex ?? null,
    lifeStage: stage ?? null,
    measure: measure ?? null,
    animals: animalsOf(value),
    precision: precision ?? null,
    endpoint: endpoint ?? null,
    acclimatedAt: acclimatedAt ?? null,
    individualCount: n ?? null,
    basis: basisOf(statement, sources),
    by,
    sourceID: source.cite ?? null,
    root: source.root ?? source.cite ?? by,
    at: statement.at ?? source.at ?? null,
    recordedUnder: source.under ?? null,
    figuresOf: source.of ?? null,
    commercialUse: source.commercial === false ? false : null,
    estimate: statement.estimate ?? false,
    statedUnit: unit ?? null,
    adoptedBecause: statement.adopt ?? null,
    setAsideBecause: statement.setAside ?? null,
    remarks: statement.note ?? null,
  };
}

/** The number of animals that a room is stated for. */
export function animalsOf(value: unknown): number | null {
  const count: unknown = typeof value === "object" && value !== null ? Reflect.get(value, "for") : undefined;
  return typeof count === "number" ? count : null;
}

/** What becomes of a statement among those about the same. */
function standingOf(statement: Statement, trait: TraitPath, group: StatementGroup | undefined): string {
  if (!group || !hasValue(statement)) return "informs";
  if (statement.setAside) return "set-aside";
  const { way } = traitTable[trait];
  if (way === "all") return "used";
  const place = group.standing.findIndex(
    ({ by, value }) => by === statement.by && JSON.stringify(value) === valueText(statement, trait),
  );
  if (place < 0) return "repeats";
  if (informs(group)) return "informs";
  const spans = way === "figures" ? joined(group) : undefined;
  if (spans?.[0]?.said.includes(statement.by) ?? place === 0) return "used";
  const [adopted, own] = [0, place].map((index) => JSON.stringify((spans ?? group.standing)[index]?.value));
  return own === adopted ? "agrees" : "stands";
}

const valueText = (statement: Stated, trait: TraitPath) => JSON.stringify(inTraitUnit(statement, trait));
