import { folded } from "../folded";
import { moved } from "../shelf";
import { applyForm, type Names, type SpeciesProfile } from "../species";
import { typedName } from "../typed-name";
import { allSpecies } from "./all-species";

/**
 * The species that bear a name, the best match first: by accepted name or id, by an id once used or a synonym, by
 * vernacular name in any language, by the name of a form. Case, accents, apostrophes and hyphens do not matter. A form's
 * name gives the profile with the form applied.
 *
 * @param name - At most 200 characters.
 * @throws InvalidInputError for anything but a text, and for a longer one.
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
  const sought = folded(typedName(name, "name"));
  index ??= indexOf(allSpecies);
  const bearers = index.get(sought) ?? [];
  return bearers.map(({ profile, form }) => (form === undefined ? profile : applyForm(profile, form)));
}

interface Bearer {
  readonly profile: SpeciesProfile;
  readonly form?: string;
}

type Named = readonly (readonly [name: string, bearer: Bearer])[];

/** The bearers of each folded name, the best match first. */
let index: ReadonlyMap<string, readonly Bearer[]> | undefined;

function indexOf(profiles: readonly SpeciesProfile[]): ReadonlyMap<string, readonly Bearer[]> {
  const bearers = new Map<string, Bearer[]>();
  for (const [name, bearer] of waysToName.flatMap((way) => profiles.flatMap(way))) {
    const known = bearers.get(folded(name)) ?? [];
    const isNew = !known.some(({ profile, form }) => profile === bearer.profile && form === bearer.form);
    if (isNew) bearers.set(folded(name), [...known, bearer]);
  }
  return bearers;
}

const formerIdsOf = (current: string) => moved.filter(([, to]) => to === current).map(([id]) => id);

/** The ways a species is named, the best first. */
const waysToName: readonly ((profile: SpeciesProfile) => Named)[] = [
  (profile) => named(profile, [profile.taxonomy.name, profile.id]),
  (profile) => named(profile, [...formerIdsOf(profile.id), ...(profile.taxonomy.synonyms ?? [])]),
  (profile) => named(profile, every(profile.names)),
  (profile) =>
    Object.entries(profile.forms ?? {}).flatMap(([form, { names }]) => named(profile, every(names), form)),
];

const named = (profile: SpeciesProfile, names: readonly string[], form?: string): Named =>
  names.map((name) => [name, form === undefined ? { profile } : { profile, form }]);

const every = (names: Names): readonly string[] => Object.values(names).flat();
