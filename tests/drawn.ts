// Draws from lists that grow, such as the catalog. They hang on names, neither on how long a list is nor on who stands where: who
// is new is drawn in place of another here and there, and everything else is drawn as before.
import { createHash } from "node:crypto";
import fc from "fast-check";
import { allSpecies } from "vivary/catalog";
import type { SpeciesProfile } from "../src/species";
import { runs } from "./runs";

/** The greatest number that something is drawn by. */
const greatest = 2 ** 32 - 1;

/** A whole number from 0 to `greatest`, of one text always the same. */
export const hashOf = (text: string): number => createHash("sha256").update(text).digest().readUInt32BE();

/** The one of some things that a text draws; for a short list that does not grow, which may stand in any order. */
export const pick = <const Item>(all: readonly [Item, ...Item[]], text: string): Item =>
  all[hashOf(text) % all.length] ?? all[0];

/** How often each of a list stands on the circle that it is drawn from: the more, the more alike are their chances. */
const places = 32;

/** What draws one of a list by a number as `hashOf` gives it: each stands in places of its own, the next one counts. */
export function drawing<Item>(
  all: readonly Item[],
  nameOf: (item: Item) => string,
): (number: number) => Item {
  const circle = all
    .flatMap((item) =>
      Array.from({ length: places }, (_, place) => ({ item, at: hashOf(`${nameOf(item)} ${place}`) })),
    )
    .sort((a, b) => a.at - b.at);
  return (number) => {
    const next = circle.find(({ at }) => at >= number) ?? circle[0];
    if (!next) throw new Error("There is nothing to draw from.");
    return next.item;
  };
}

/** Any of a list, each about as likely as any other. */
export const anyOf = <Item>(all: readonly Item[], nameOf: (item: Item) => string): fc.Arbitrary<Item> =>
  fc.noShrink(fc.noBias(fc.integer({ min: 0, max: greatest }))).map(drawing(all, nameOf));

/** Some of a list, in its order, others at another turn; as many as are asked for, and more in a deeper run. */
export function someNamed<Item>(
  all: readonly Item[],
  nameOf: (item: Item) => string,
  usual: number,
  turn: number,
): readonly Item[] {
  const start = ((turn * 0.618_033_988_75) % 1) * greatest; // Steps of the golden section soon reach everywhere.
  const ahead = new Map(all.map((item) => [item, (hashOf(nameOf(item)) - start + greatest) % greatest]));
  const nearest = [...all].sort((a, b) => (ahead.get(a) ?? 0) - (ahead.get(b) ?? 0)).slice(0, runs(usual));
  const some = new Set(nearest);
  return all.filter((item) => some.has(item));
}

const idOf = ({ id }: SpeciesProfile) => id;
const drawSpecies = drawing(allSpecies, idOf);

/** Any species of the catalog. */
export const anySpecies: fc.Arbitrary<SpeciesProfile> = anyOf(allSpecies, idOf);

/** The species of the catalog that a text draws. */
export const speciesFor = (text: string): SpeciesProfile => drawSpecies(hashOf(text));

/** Some species of the catalog, as `someNamed` gives them. */
export const someSpecies = (usual: number, turn: number): readonly SpeciesProfile[] =>
  someNamed(allSpecies, idOf, usual, turn);
