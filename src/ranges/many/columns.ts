import { listOf, objectOf } from "../../checks";
import { refusal } from "../../errors";
import { ends } from "../ends";
import type { PartialRange } from "../range";

/** The ranges of many things on one axis, as columns of numbers that a program can run through fast. */
export interface RangeColumns {
  /** Whose the ranges are. Who has none on this axis is left out. */
  readonly ids: readonly string[];
  /** The lower end of each, −∞ where it is open; in the unit of the axis. */
  readonly min: Float64Array;
  /** The upper end of each, ∞ where it is open; in the unit of the axis. */
  readonly max: Float64Array;
}

/** A trait whose value is a range, or holds one to be kept in. */
interface HeldRange {
  readonly value: PartialRange | { readonly kept: PartialRange };
}

/** The traits of a profile that hold ranges: `"water.temperature"`, … */
export type RangePath<Profile> = {
  [Section in keyof Profile & string]: {
    [Name in keyof NonNullable<Profile[Section]> & string]: NonNullable<
      NonNullable<Profile[Section]>[Name]
    > extends { readonly value: { readonly kept: PartialRange } }
      ? `${Section}.${Name}`
      : never;
  }[keyof NonNullable<Profile[Section]> & string];
}[keyof Profile & string];

/**
 * The ranges of many profiles on one axis, for {@link sharing} and {@link pairsThatShare}. Of figures of water it is the
 * span to keep them in.
 *
 * @param profiles - Things with an id and a trait at the path, such as the profiles of `vivary/catalog`; any number.
 * @param path - The trait, by section and name.
 * @throws InvalidInputError for what is no list of profiles or no path, and where a range is reversed, states no end, or
 * an end is not finite.
 *
 * @example
 * ```ts
 * import { rangeColumns } from "vivary/ranges";
 *
 * const barb = { id: "tiger-barb", water: { temperature: { value: { kept: { min: 20, max: 26 } } } } };
 * const loach = { id: "kuhli-loach", water: { temperature: { value: { kept: { min: 24, max: 30 } } } } };
 * const { ids, min } = rangeColumns([barb, loach], "water.temperature");
 * ids; // => ["tiger-barb", "kuhli-loach"]
 * [...min]; // => [20, 24]
 * ```
 */
export function rangeColumns<Profile extends { readonly id: string }>(
  profiles: readonly Profile[],
  path: RangePath<Profile>,
): RangeColumns {
  const [section, name] = partsOf(path);
  const held = listOf(profiles, "profiles").flatMap((profile, index) => {
    const { id } = objectOf(profile, `profiles[${index}]`);
    if (typeof id !== "string") throw refusal(`profiles[${index}].id`, "a text", id);
    const range = rangeAt(profile, section, name);
    return range === undefined ? [] : [{ id, ...ends(range, `profiles[${index}].${path}`) }];
  });
  return {
    ids: held.map(({ id }) => id),
    min: Float64Array.from(held, ({ min }) => min),
    max: Float64Array.from(held, ({ max }) => max),
  };
}

function partsOf(path: string): readonly [section: string, name: string] {
  const [section, name, ...more] = typeof path === "string" ? path.split(".") : [];
  if (section && name && more.length === 0) return [section, name];
  throw refusal("path", "a section and a name, such as water.temperature", path);
}

function rangeAt(profile: object, section: string, name: string): PartialRange | undefined {
  const traits: unknown = Object.hasOwn(profile, section) ? Reflect.get(profile, section) : undefined;
  if (traits === undefined) return undefined;
  const fact = Reflect.get(objectOf(traits as object, section), name) as HeldRange | undefined;
  if (fact === undefined) return undefined;
  const { value } = objectOf(fact, `${section}.${name}`);
  return "kept" in objectOf(value, `${section}.${name}.value`)
    ? (value as { readonly kept: PartialRange }).kept
    : (value as PartialRange);
}
