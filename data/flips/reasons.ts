// Why a change of records flips a verdict.
import { assessPair } from "vivary/compatibility";
import { sentence } from "vivary/report";
import { type SpeciesProfile, type SpeciesRecord, statementsOf, type TraitPath } from "vivary/species";
import { spaced } from "../reading/schema-at";
import { type Flip, statement } from "./flips";

/**
 * The findings that came with a flip, each with its figures and with the statements that it rests on.
 *
 * @param changed - The records whose statements are told.
 */
export function reasonsOf(
  { pair, before, after }: Flip,
  changed: readonly SpeciesRecord[],
  profiles: readonly SpeciesProfile[],
): readonly string[] {
  const ids = pair.split(" ");
  const [one, other] = ids.map((id) => profiles.find((profile) => profile.id === id));
  if (!one || !other) return [];
  const verdict = assessPair({ species: one }, { species: other });
  const came = verdict.findings.filter(({ weight, rule }) => {
    const named = `${weight} ${rule}`;
    return after.against.includes(named) && !before.against.includes(named);
  });
  const told = changed.filter(({ id }) => ids.includes(id));
  const lines = came.flatMap((finding) => [
    `  ${finding.rule}: ${sentence(verdict, finding)}`,
    ...told.flatMap((record) => finding.traits.flatMap((trait) => statementsBehind(record, trait))),
  ]);
  return [...new Set(lines)];
}

/** The lines of a record that a trait rests on. */
const statementsBehind = (record: SpeciesRecord, trait: TraitPath): readonly string[] =>
  statementsOf(record, trait)
    .filter(({ value, setAside }) => value !== undefined && !setAside)
    .map(({ note, adopt, ...said }) => `${statement}${trait}: ${spaced(said)}`);
