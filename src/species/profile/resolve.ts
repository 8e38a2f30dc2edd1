import { objectOf } from "../../checks";
import { plainData } from "../../plain-data";
import { groupsOf, type SourceVoice, type StatementGroup } from "../record/groups";
import type { FormRecord, SpeciesRecord } from "../record/record";
import type { Statements } from "../record/statement";
import { statementsOf } from "../record/statements";
import { traitDefinitions } from "../traits/definitions";
import { essentialTraits, splitPath, traitPaths } from "../traits/path";
import type { TraitPath } from "../traits/values";
import { type Admission, admissionBy, type ResolveOptions } from "./admission";
import { withFreshSalinity, withSparedFlow } from "./derived";
import { factAt } from "./fact-at";
import { factOf } from "./facts";
import type { Fact, Facts, FormProfile, SpeciesProfile } from "./profile";

/**
 * The profile that rules see: every trait's statements become one {@link Fact}, in the trait's own unit.
 *
 * The statements of a trait are grouped by meaning, sex, stage and measure, those of a least room by the number of
 * animals. In each group the one to use is the one with `adopt`, else the best supported: read, curated, observed,
 * recalled, common practice, derived; of equals that whose source's key sorts first. Those set aside do not count. A span
 * that leaves an end open takes it from the next that states it, unless their animals were used to different temperatures.
 * `also` holds whole other values: one group changed at a time, and all groups of one source.
 *
 * @param record - A record as `parseSpecies` returns it.
 * @throws InvalidInputError for what is no record, where a statement's unit is unknown, for an option that there is not, and
 * for an unknown basis.
 *
 * @example
 * ```ts
 * import { recordById } from "vivary/evidence";
 * import { resolve } from "vivary/species";
 *
 * const record = recordById("puntigrus-tetrazona");
 * record && resolve(record).water?.temperature?.value.kept; // => { min: 20, max: 26 }
 * ```
 */
export function resolve(record: SpeciesRecord, options: ResolveOptions = {}): SpeciesProfile {
  const given = plainData(objectOf(record, "record"));
  const admission = admissionBy(options, given.sources);
  const { id, taxonomy, names, identifiers, forms } = given;
  objectOf(taxonomy, "taxonomy");
  objectOf(names, "names");
  const facts = admission.facts(withFreshSalinity(factsOf(given, admission)));
  const incomplete = essentialTraits.filter((path) => !factAt(facts, path));
  return {
    id,
    taxonomy,
    names,
    ...(identifiers && { identifiers }),
    ...(incomplete.length > 0 && { incomplete }),
    ...facts,
    ...(forms && { forms: formsOf(forms, given, facts, admission) }),
  };
}

/** Each form with its own traits: the species' statements with the groups replaced that the form states. */
function formsOf(
  forms: Readonly<Record<string, FormRecord>>,
  record: SpeciesRecord,
  species: Facts,
  admission: Admission,
): Readonly<Record<string, FormProfile>> {
  const resolved = Object.entries(objectOf(forms, "forms")).map(([id, form]) => {
    const facts = withFreshSalinity(factsOf(form, admission, record));
    const { names, once } = form;
    return [id, { names, ...(once && { once }), ...admission.facts(withSparedFlow(facts, species)) }];
  });
  return Object.fromEntries(resolved);
}

/** The facts of every trait that `own` states, over the groups of `base` that it does not. */
function factsOf(own: Statements, admission: Admission, base?: Statements): Facts {
  const sections: Record<string, Record<string, Fact<unknown>>> = {};
  const standardShare = shareOf(own, admission) ?? (base && shareOf(base, admission));
  for (const path of traitPaths) {
    const { way } = traitDefinitions[path];
    const stated = standingGroups(own, path, admission);
    if (stated.length === 0) continue;
    const inherited = base && way !== "all" ? standingGroups(base, path, admission) : [];
    const fact = factOf(way, [...new Map([...inherited, ...stated]).values()], standardShare);
    if (!fact) continue;
    const [section, name] = splitPath(path);
    sections[section] = { ...sections[section], [name]: fact };
  }
  return sections as Facts;
}

/** Standard length as a share of total length, where a source gives the species' own. */
function shareOf(statements: Statements, admission: Admission): SourceVoice<number> | undefined {
  const [group] = standingGroups(statements, "size.standardShare", admission);
  return group?.[1].standing[0] as SourceVoice<number> | undefined;
}

/** The groups of a trait in which a statement stands, each with its key. */
function standingGroups(
  statements: Statements,
  path: TraitPath,
  { statements: admitted, sources }: Admission,
): readonly (readonly [string, StatementGroup])[] {
  const groups = groupsOf(admitted(path, statementsOf(statements, path)), path, sources);
  return [...groups].filter(([, { standing }]) => standing.length > 0);
}
