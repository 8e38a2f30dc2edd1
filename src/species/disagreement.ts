import { basisOf, grouped, hasValue, rootOf, standing, statementsOf } from "./statements";
import { inTraitUnit } from "./trait-unit";
import { traitTable } from "./traits";
import type { Basis, Said, SpeciesRecord, Statement, TraitPath } from "./types";

/** What one source said, in the trait's own unit. */
export interface Voice<Path extends TraitPath> {
  /** The source at the root; mirrors of one database share it. */
  readonly root: string;
  readonly basis: Basis;
  readonly value: Said<Path>;
  /** Why it does not count, if it does not. */
  readonly setAside?: string | undefined;
}

/** What sources said about one meaning, sex, stage and measure. */
export interface Disagreement<Path extends TraitPath>
  extends Pick<Statement<unknown>, "as" | "sex" | "stage" | "measure"> {
  /** Those that stand, the adopted one first; one a root, or all of a trait whose statements add up. */
  readonly standing: readonly Voice<Path>[];
  readonly setAside: readonly Voice<Path>[];
  /** Whether those that stand say different things. */
  readonly disputed: boolean;
}

/**
 * Where the sources of a trait agree and where they do not: one row for each meaning, sex, stage and measure.
 * Values are in the trait's unit. A trait nobody stated gives no rows. Statements that add up, such as foods, all
 * stand and are never disputed.
 *
 * @example
 * ```ts
 * import { recordById } from "vivary/evidence";
 * import { disagreement } from "vivary/species";
 *
 * const record = recordById("puntigrus-tetrazona");
 * record && disagreement(record, "water.pH").map(({ as, disputed }) => [as, disputed]); // => [["kept", true]]
 * ```
 */
export function disagreement<Path extends TraitPath>(
  record: SpeciesRecord,
  path: Path,
): readonly Disagreement<Path>[] {
  const stated = statementsOf(record, path).filter(hasValue);
  const addsUp = traitTable[path].way === "all";
  return [...grouped(stated).values()].map((group) => {
    const voice = (statement: (typeof group)[number]): Voice<Path> => ({
      root: rootOf(statement, record.sources),
      basis: basisOf(statement, record.sources),
      value: inTraitUnit(statement, path).value as Said<Path>,
      ...(statement.setAside && { setAside: statement.setAside }),
    });
    const { as, sex, stage, measure } = group[0] as (typeof group)[number];
    const counting = group.filter((statement) => !statement.setAside);
    const voices = (addsUp ? counting : standing(group, record.sources)).map(voice);
    return {
      ...(as && { as }),
      ...(sex && { sex }),
      ...(stage && { stage }),
      ...(measure && { measure }),
      standing: voices,
      setAside: group.filter((statement) => statement.setAside).map(voice),
      disputed: !addsUp && new Set(voices.map(({ value }) => JSON.stringify(value))).size > 1,
    };
  });
}
