import { plainData } from "../../plain-data";
import { traitDefinitions } from "../traits/definitions";
import type { StatedValue, TraitPath } from "../traits/values";
import { groupsOf, type StatementGroup } from "./groups";
import type { SpeciesRecord } from "./record";
import { statementsOf } from "./statements";

/** What sources said about one meaning, sex, stage and measure, and whether they agree. */
export interface Disagreement<Path extends TraitPath> extends StatementGroup<StatedValue<Path>> {
  /** Whether those that stand say different things. */
  readonly disputed: boolean;
}

/**
 * Where the sources of a trait agree and where they do not: one row for each meaning, sex, stage and measure.
 * Values are in the trait's unit. A trait nobody stated gives no rows. Statements that add up, such as foods, all
 * stand and are never disputed.
 *
 * @throws InvalidInputError where there is no such trait, for what is no record, and where a unit is unknown.
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
  const statements = plainData(statementsOf(record, path));
  const groups = groupsOf(statements, path, record.sources) as ReadonlyMap<
    string,
    StatementGroup<StatedValue<Path>>
  >;
  const addsUp = traitDefinitions[path].way === "all";
  return [...groups.values()].map((group) => ({
    ...group,
    disputed: !addsUp && new Set(group.standing.map(({ value }) => JSON.stringify(value))).size > 1,
  }));
}
