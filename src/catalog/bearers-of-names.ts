import { spellings } from "../folded";
import { moved } from "../shelf";
import type { Names, SpeciesProfile } from "../species";

/** Who bears a name: a species, or one of its forms. */
export interface Bearer {
  readonly profile: SpeciesProfile;
  readonly form?: string;
}

/** The bearers of each spelling of a name, the best match first. */
export function bearersOfNames(profiles: readonly SpeciesProfile[]): ReadonlyMap<string, readonly Bearer[]> {
  const bearers = new Map<string, Bearer[]>();
  for (const [name, bearer] of waysToName.flatMap((way) => profiles.flatMap(way))) {
    for (const spelling of spellings(name)) {
      const known = bearers.get(spelling) ?? [];
      if (!hasBearer(known, bearer)) bearers.set(spelling, [...known, bearer]);
    }
  }
  return bearers;
}

/** Whether the one who bears a name is among those who do. */
export const hasBearer = (bearers: readonly Bearer[], { profile, form }: Bearer): boolean =>
  bearers.some((one) => one.profile === profile && one.form === form);

type Named = readonly (readonly [name: string, bearer: Bearer])[];

/** The ways a species is named, the best first. */
const waysToName: readonly ((profile: SpeciesProfile) => Named)[] = [
  (profile) => named(profile, [profile.taxonomy.name, profile.id]),
  (profile) => named(profile, [...formerIdsOf(profile.id), ...(profile.taxonomy.synonyms ?? [])]),
  (profile) => named(profile, every(profile.names)),
  (profile) =>
    Object.entries(profile.forms ?? {}).flatMap(([form, { names }]) => named(profile, every(names), form)),
];

const formerIdsOf = (current: string) => moved.filter(([, to]) => to === current).map(([id]) => id);

const named = (profile: SpeciesProfile, names: readonly string[], form?: string): Named =>
  names.map((name) => [name, form === undefined ? { profile } : { profile, form }]);

const every = (names: Names): readonly string[] => Object.values(names).flat();
