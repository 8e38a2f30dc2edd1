import type { StatedValue, TraitPath } from "../traits/values";
import { topicKey } from "./groups";
import type { SpeciesRecord } from "./record";
import type { Statement } from "./statement";
import { hasValue, statementsOf } from "./statements";

/**
 * What a record says of one trait of a species or of one of its forms: the statements of the form, and of the species'
 * those in whose place no statement of the form stands. Lines without a value inform of both.
 */
export function statementsFor<Path extends TraitPath>(
  record: SpeciesRecord,
  form: string | undefined,
  path: Path,
): readonly Statement<StatedValue<Path>>[] {
  const ofSpecies = statementsOf(record, path);
  const bred =
    form !== undefined && Object.hasOwn(record.forms ?? {}, form) ? record.forms?.[form] : undefined;
  if (!bred) return ofSpecies;
  const own = statementsOf(bred, path);
  const replaced = new Set(
    own
      .filter((statement) => hasValue(statement) && !statement.setAside)
      .map((statement) => topicKey(statement, path)),
  );
  const inherited = ofSpecies.filter(
    (statement) => !hasValue(statement) || !replaced.has(topicKey(statement, path)),
  );
  return [...own, ...inherited];
}
