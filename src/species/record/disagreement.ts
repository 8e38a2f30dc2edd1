import { plainData } from "../../plain-data";
import { overlap } from "../../ranges";
import { joined } from "../profile/joined";
import { totalLength } from "../profile/lengths";
import { traitDefinitions } from "../traits/definitions";
import type { StatedValue, TraitPath } from "../traits/values";
import { groupsOf, type StatementGroup } from "./groups";
import type { SpeciesRecord } from "./record";
import { statementsOf } from "./statements";

/** What sources said about one meaning, sex, stage, measure and number of animals, and whether they agree. */
export interface Disagreement<Path extends TraitPath> extends StatementGroup<StatedValue<Path>> {
  /** Whether those that stand say different things; of lengths also those that were measured otherwise. */
  readonly disputed: boolean;
}

/**
 * Where the sources of a trait agree and where they do not: one row for each meaning, sex, stage, measure and number of
 * animals. Values are in the trait's unit. A trait nobody stated gives no rows. Statements that add up, such as foods, all
 * stand and are never disputed. Spans of water are compared as they are used, an open end closed by the best of the others:
 * "at least 20 °C" and "at most 26 °C" agree. Lengths are compared as totals: those of one sex and meaning differ where the
 * total lengths that belong to them, by the species' own ratio where it is known, share none.
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
  const { way } = traitDefinitions[path];
  const rows = [...groups.values()];
  const saysTwo = (group: StatementGroup) => {
    const voices = way === "figures" ? joined(group) : group.standing;
    return new Set(voices.map(({ value }) => JSON.stringify(value))).size > 1;
  };
  const share = way === "lengths" ? ownStandardShare(record) : undefined;
  return rows.map((group) => ({
    ...group,
    disputed: way !== "all" && (saysTwo(group) || (way === "lengths" && totalsDiffer(group, rows, share))),
  }));
}

/** Whether a length stands to which no total belongs that belongs to another of its sex and meaning. */
function totalsDiffer(
  { as, sex, measure, standing }: StatementGroup,
  rows: readonly StatementGroup[],
  share: number | undefined,
): boolean {
  const others = rows.filter((row) => row.as === as && row.sex === sex && row.measure !== measure);
  const totals = (group: Pick<StatementGroup, "measure" | "standing">) =>
    group.standing.map(({ value }) => totalLength(value as number, group.measure ?? "unstated", share));
  return totals({ measure, standing }).some((total) =>
    others.flatMap(totals).some((other) => overlap(total, other) === undefined),
  );
}

function ownStandardShare(record: SpeciesRecord): number | undefined {
  const [group] = groupsOf(
    plainData(statementsOf(record, "size.standardShare")),
    "size.standardShare",
    record.sources,
  ).values();
  return group?.standing[0]?.value as number | undefined;
}
