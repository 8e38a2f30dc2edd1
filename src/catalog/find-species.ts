import { applyForm, type Names, type SpeciesProfile } from "../species";
import { allSpecies } from "./generated";

/**
 * The species that bear a name, in any case, the best match first: by accepted name or id, by synonym, by vernacular
 * name in any language, by the name of a form. A form's name gives the profile with the form applied.
 *
 * @example
 * ```ts
 * import { findSpecies } from "vivary/catalog";
 *
 * findSpecies("barbus tetrazona")[0]?.id; // => "puntigrus-tetrazona"
 * findSpecies("Long-fin Tiger Barb")[0]?.form; // => "long-fin"
 * findSpecies("unicorn"); // => []
 * ```
 */
export function findSpecies(name: string): readonly SpeciesProfile[] {
  const wanted = folded(name);
  const matches = [...ways.keys()].map((rank) =>
    allSpecies.flatMap((profile) => ways[rank]?.(profile, wanted) ?? []),
  );
  return [...new Set(matches.flat())];
}

type Way = (profile: SpeciesProfile, wanted: string) => readonly SpeciesProfile[];

/** The ways a name may match, the best first. */
const ways: readonly Way[] = [
  (profile, wanted) => (isOneOf([profile.taxonomy.name, profile.id], wanted) ? [profile] : []),
  (profile, wanted) => (isOneOf(profile.taxonomy.synonyms ?? [], wanted) ? [profile] : []),
  (profile, wanted) => (isOneOf(every(profile.names), wanted) ? [profile] : []),
  (profile, wanted) =>
    Object.entries(profile.forms ?? {})
      .filter(([, form]) => isOneOf(every(form.names), wanted))
      .map(([id]) => applyForm(profile, id)),
];

const every = (names: Names): readonly string[] => Object.values(names).flat();

const isOneOf = (names: readonly string[], wanted: string) => names.some((name) => folded(name) === wanted);

/** Case, surrounding space and the way hyphens are set do not matter. */
const folded = (name: string) =>
  name
    .trim()
    .toLowerCase()
    .replaceAll(/[\s-]+/g, " ");
