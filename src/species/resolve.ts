import { basisOf, grouped, hasValue, type Stated, standing, statementsOf, weakest } from "./statements";
import { totalLength } from "./total-length";
import { inTraitUnit } from "./trait-unit";
import { essentialTraits, factAt, splitPath, traitPaths, traitTable } from "./traits";
import type {
  AdultLength,
  Basis,
  Fact,
  Facts,
  FormProfile,
  FormRecord,
  SourceReference,
  SpeciesProfile,
  SpeciesRecord,
  Statements,
  TraitPath,
} from "./types";

type Sources = Readonly<Record<string, SourceReference>>;
type Groups = ReadonlyMap<string, readonly Stated[]>;

/**
 * The profile that rules see: every trait's statements become one {@link Fact}, in the trait's own unit.
 *
 * The statements of a trait are grouped by meaning, sex, stage and measure. In each group the one to use is the
 * one with `adopt`, else one that was read, curated, recalled, common practice, else the first; those set aside
 * do not count. `also` holds whole other values, one group changed at a time.
 *
 * @param record - A record as `parseSpecies` returns it.
 * @throws InvalidInputError where a statement's unit is unknown.
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
  const { id, taxonomy, names, identifiers, forms } = record;
  const facts = resolveTraits(record, record.sources);
  const incomplete = essentialTraits.filter((path) => !factAt(facts, path));
  return {
    id,
    taxonomy,
    names,
    ...(identifiers && { identifiers }),
    ...(incomplete.length > 0 && { incomplete }),
    ...facts,
    ...(forms && { forms: mapValues(forms, (form) => resolveForm(form, record)) }),
  };
}

/** A form's own traits: the species' statements with the groups replaced that the form states. */
function resolveForm(form: FormRecord, record: SpeciesRecord): FormProfile {
  return { names: form.names, ...resolveTraits(form, record.sources, record) };
}

/** The facts of every trait that `own` states, over the groups of `base` that it does not. */
function resolveTraits(own: Statements, sources: Sources, base?: Statements): Facts {
  const sections: Record<string, Record<string, Fact<unknown>>> = {};
  for (const path of traitPaths) {
    const stated = standingGroups(own, path, sources);
    if (stated.size === 0) continue;
    const inherited =
      base && traitTable[path].way !== "all" ? standingGroups(base, path, sources) : new Map();
    const fact = resolveTrait(path, new Map([...inherited, ...stated]), sources);
    if (!fact) continue;
    const [section, name] = splitPath(path);
    sections[section] = { ...sections[section], [name]: fact };
  }
  return withFreshSalinity(sections as Facts);
}

/** The groups of a trait in which a statement stands. Numbers are converted to the trait's unit. */
function standingGroups(statements: Statements, path: TraitPath, sources: Sources): Groups {
  const counting = statementsOf(statements, path)
    .filter(hasValue)
    .filter(({ setAside }) => !setAside)
    .map((statement) => inTraitUnit(statement, path));
  const addsUp = traitTable[path].way === "all";
  return new Map(
    [...grouped(counting)].map(([key, group]) => [key, addsUp ? group : standing(group, sources)]),
  );
}

function resolveTrait(path: TraitPath, groups: Groups, sources: Sources): Fact<unknown> | undefined {
  switch (traitTable[path].way) {
    case "all":
      return union([...groups.values()].flat(), sources);
    case "one":
      return oneOf(groups, sources);
    case "figures":
      return combine(groups, sources, figures);
    case "lengths":
      return combine(groups, sources, lengths);
  }
}

/** All statements together; `"none"` stands for an empty list. */
function union(statements: readonly Stated[], sources: Sources): Fact<unknown> {
  return {
    value: distinct(statements.map(({ value }) => value)).filter((value) => value !== "none"),
    basis: weakest(statements.map((statement) => basisOf(statement, sources))),
  };
}

/** The first statement of grown animals; the others are other values. */
function oneOf(groups: Groups, sources: Sources): Fact<unknown> | undefined {
  const [first, ...others] = [...groups.values()].flat();
  if (!first) return undefined;
  return fact(
    first.value,
    basisOf(first, sources),
    others.map(({ value }) => value),
  );
}

/** A value made of one statement from each group, and those with one group changed at a time. */
function combine(
  groups: Groups,
  sources: Sources,
  build: (chosen: readonly Stated[]) => unknown,
): Fact<unknown> | undefined {
  const chosen = [...groups.values()].map((group) => group[0] as Stated);
  const value = build(chosen);
  if (value === undefined) return undefined;
  const others = [...groups.values()].flatMap((group, index) =>
    group.slice(1).map((other) => build(chosen.map((used, at) => (at === index ? other : used)))),
  );
  const counting = chosen.filter(
    ({ as, stage }) => !informing.has(as) && (stage === undefined || stage === "adult"),
  );
  return fact(value, weakest(counting.map((statement) => basisOf(statement, sources))), others);
}

/** Meanings that inform a reader and decide nothing. */
const informing = /* @__PURE__ */ new Set<unknown>(["wild", "tested"]);

/** Figures by meaning; without `kept` the optimum stands in for it, without both there is no value. */
function figures(chosen: readonly Stated[]): unknown {
  const grown = chosen.filter(({ stage }) => stage === undefined || stage === "adult");
  const byMeaning = Object.fromEntries(grown.map(({ as, value }) => [as, value]));
  if (byMeaning.kept) return byMeaning;
  return byMeaning.optimum && { kept: byMeaning.optimum, standIn: true, ...byMeaning };
}

/** One adult length a group, each with the total length that belongs to it. */
function lengths(chosen: readonly Stated[]): readonly AdultLength[] {
  return chosen.map(({ value, measure = "unstated", as, sex }) => ({
    length: value as number,
    measure,
    as: as as AdultLength["as"],
    ...(sex && { sex }),
    total: totalLength(value as number, measure),
  }));
}

function fact(value: unknown, basis: Basis, others: readonly unknown[]): Fact<unknown> {
  const also = distinct([value, ...others.filter((other) => other !== undefined)]).slice(1);
  return also.length > 0 ? { value, basis, also } : { value, basis };
}

/** The greatest salinity of fresh water, g/kg: the boundary of the Venice System of 1958 (from memory). */
const freshWater = { min: 0, max: 0.5 };

/** A species of fresh water only, without a figure of salinity, is kept in fresh water. */
function withFreshSalinity(facts: Facts): Facts {
  const waters = facts.origin?.waters;
  if (!waters || facts.water?.salinity || waters.value.some((water) => water !== "fresh")) return facts;
  return {
    ...facts,
    water: { ...facts.water, salinity: { value: { kept: freshWater }, basis: waters.basis } },
  };
}

function distinct(list: readonly unknown[]): readonly unknown[] {
  const seen = new Set<string>();
  return list.filter((item) => {
    const key = JSON.stringify(item);
    return !seen.has(key) && seen.add(key);
  });
}

function mapValues<Held, Made>(
  object: Readonly<Record<string, Held>>,
  change: (value: Held, key: string) => Made,
): Record<string, Made> {
  return Object.fromEntries(Object.entries(object).map(([key, value]) => [key, change(value, key)]));
}
