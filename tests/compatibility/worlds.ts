import type { SpeciesProfile } from "../../src/species";
import { animal, type Stated } from "./animals";

/** A species as a test states it, with the values that sources dispute. */
export interface Disputed {
  readonly id: string;
  readonly stated: Stated;
  readonly also: readonly Stated[];
}

/** The profile of a species that is disputed. */
export const profileOf = ({ id, stated, also }: Disputed): SpeciesProfile => animal(id, stated, { also });

/** The traits of these paths. */
export function only(stated: object, paths: readonly string[]): Stated {
  return Object.fromEntries(Object.entries(stated).filter(([path]) => paths.includes(path)));
}

/** The species without one trait. */
export function without({ id, stated, also }: Disputed, path: string): Disputed {
  const kept = (traits: object) =>
    only(
      traits,
      Object.keys(traits).filter((name) => name !== path),
    );
  return { id, stated: kept(stated), also: also.map(kept) };
}

/** Every species it may be if one value of each trait is true: a plain product, written apart from the engine. */
export function worldsOf({ id, stated, also }: Disputed): readonly SpeciesProfile[] {
  return Object.keys(stated)
    .reduce<readonly Stated[]>(
      (worlds, path) => {
        const values = [stated, ...also].map((source) => only(source, [path]));
        const known = values.filter((value) => Object.keys(value).length > 0);
        return worlds.flatMap((world) => known.map((value) => ({ ...world, ...value })));
      },
      [{}],
    )
    .map((world) => animal(id, world));
}

/** Every way to take one item of each list. */
export function choices<Item>(lists: readonly (readonly Item[])[]): readonly (readonly Item[])[] {
  return lists.reduce<readonly (readonly Item[])[]>(
    (done, list) => done.flatMap((before) => list.map((item) => [...before, item])),
    [[]],
  );
}
