import { objectOf } from "../../errors";
import { plainData } from "../../plain-data";
import { groupsOf, type StatementGroup } from "../record/groups";
import type { FormRecord, RecordSources, SpeciesRecord } from "../record/record";
import type { Statements } from "../record/statement";
import { statementsOf } from "../record/statements";
import { traitDefinitions } from "../traits/definitions";
import { essentialTraits, splitPath, traitPaths } from "../traits/path";
import type { TraitPath } from "../traits/values";
import { withFreshSalinity, withSparedFlow } from "./derived";
import { factAt } from "./fact-at";
import { factOf } from "./facts";
import type { Fact, Facts, FormProfile, SpeciesProfile } from "./profile";

/**
 * The profile that rules see: every trait's statements become one {@link Fact}, in the trait's own unit.
 *
 * The statements of a trait are grouped by meaning, sex, stage and measure. In each group the one to use is the
 * one with `adopt`, else one that was read, curated, recalled, common practice, else the first; those set aside
 * do not count. `also` holds whole other values, one group changed at a time.
 *
 * @param record - A record as `parseSpecies` returns it.
 * @throws InvalidInputError for what is no record, and where a statement's unit is unknown.
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
export function resolve(record: SpeciesRecord): SpeciesProfile {
  const given = plainData(objectOf(record, "record"));
  const { id, taxonomy, names, identifiers, forms } = given;
  objectOf(taxonomy, "taxonomy");
  objectOf(names, "names");
  const facts = withFreshSalinity(factsOf(given, given.sources));
  const incomplete = essentialTraits.filter((path) => !factAt(facts, path));
  return {
    id,
    taxonomy,
    names,
    ...(identifiers && { identifiers }),
    ...(incomplete.length > 0 && { incomplete }),
    ...facts,
    ...(forms && { forms: formsOf(forms, given, facts) }),
  };
}

/** Each form with its own traits: the species' statements with the groups replaced that the form states. */
function formsOf(
  forms: Readonly<Record<string, FormRecord>>,
  record: SpeciesRecord,
  species: Facts,
): Readonly<Record<string, FormProfile>> {
  const resolved = Object.entries(objectOf(forms, "forms")).map(([id, form]) => {
    const facts = withFreshSalinity(factsOf(form, record.sources, record));
    const { names, once } = form;
    return [id, { names, ...(once && { once }), ...withSparedFlow(facts, species) }];
  });
  return Object.fromEntries(resolved);
}

/** The facts of every trait that `own` states, over the groups of `base` that it does not. */
function factsOf(own: Statements, sources: RecordSources, base?: Statements): Facts {
  const sections: Record<string, Record<string, Fact<unknown>>> = {};
  for (const path of traitPaths) {
    const { way } = traitDefinitions[path];
    const stated = standingGroups(own, path, sources);
    if (stated.length === 0) continue;
    const inherited = base && way !== "all" ? standingGroups(base, path, sources) : [];
    const fact = factOf(way, [...new Map([...inherited, ...stated]).values()]);
    if (!fact) continue;
    const [section, name] = splitPath(path);
    sections[section] = { ...sections[section], [name]: fact };
  }
  return sections as Facts;
}

/** The groups of a trait in which a statement stands, each with its key. */
function standingGroups(
  statements: Statements,
  path: TraitPath,
  sources: RecordSources,
): readonly (readonly [string, StatementGroup])[] {
  const groups = groupsOf(statementsOf(statements, path), path, sources);
  return [...groups].filter(([, { standing }]) => standing.length > 0);
}
