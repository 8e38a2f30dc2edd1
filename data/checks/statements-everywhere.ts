import {
  type FigurePath,
  type SpeciesRecord,
  type Statement,
  type Statements,
  splitPath,
  statementsOf,
  type TraitPath,
  traitTable,
} from "vivary/species";
import { convert, type Unit } from "vivary/units";

/** What a statement of water holds. */
export interface Span {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

/** The statements of a trait with a value, of a record and of its forms, each with where it stands. */
export function statementsEverywhere<Path extends TraitPath>(record: SpeciesRecord, trait: Path) {
  const forms = Object.entries(record.forms ?? {}).map(([id, form]) => ({
    holder: form,
    above: ["forms", id],
  }));
  return [{ holder: record as Statements, above: [] as string[] }, ...forms].flatMap(({ holder, above }) =>
    statementsOf(holder, trait)
      .map((statement, index) => ({
        at: [...above, ...splitPath(trait), index],
        statement,
      }))
      .filter(({ statement: { value } }) => value !== undefined),
  );
}

/** The span of a statement in the trait's unit. */
export function spanOf({ value = {}, unit }: Statement<Span>, trait: FigurePath): Span {
  const own = traitTable[trait].unit;
  if (unit === undefined || own === undefined) return value;
  const inOwn = (end: number | undefined) =>
    end === undefined ? undefined : convert(end, unit as Unit, own as Unit);
  return { min: inOwn(value.min), max: inOwn(value.max) };
}
