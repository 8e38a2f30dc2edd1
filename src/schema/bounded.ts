import * as z from "zod";

/** The greatest numbers of characters. */
const most = { key: 80, name: 120, place: 1000, note: 2000 } as const;

/**
 * Text that changes nothing around it: no control characters, no marks that are invisible or turn the direction of
 * reading – but those that join letters, which some scripts need –, no halves of characters, no end of a comment.
 */
const harmless = /^(?!.*\*\/)(?:[^\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]|[\u200c\u200d])*$/u;

const textUpTo = (length: number) =>
  z.string().min(1).max(length).regex(harmless, "text without control characters, invisible marks and */");

/** An id or a name of a source, a unit or a database. */
export const key = textUpTo(most.key);
/** A name. */
export const name = textUpTo(most.name);
/** An address, or where to look in a source. */
export const place = textUpTo(most.place);
/** A sentence or a few. */
export const note = textUpTo(most.note);

/** A key that follows a pattern. */
export const keyLike = (pattern: RegExp, expected: string) =>
  z.string().max(most.key).regex(pattern, expected);

/** The id of a species. */
export const speciesId = keyLike(/^[a-z]+(-[a-z0-9]+)+$/, "lower-case words joined by hyphens");
/** The id of a form, a source or a jurisdiction. */
export const slug = keyLike(/^[a-z0-9]+(-[a-z0-9]+)*$/, "lower-case words joined by hyphens");

/** The address of the JSON Schema, for editors. */
export const schemaAddress = place
  .optional()
  .describe("The address of the JSON Schema, from which an editor takes its help.");

/** A list that is not empty, of bounded length. */
export const listUpTo = <Item extends z.ZodType>(most: number, item: Item) => z.array(item).min(1).max(most);

/** Values under keys of their own choosing, a bounded number of them. */
export const keyedUpTo = <Key extends z.ZodType<string, string>, Held extends z.ZodType>(
  most: number,
  key: Key,
  held: Held,
) =>
  z
    .record(key, held)
    .refine((record) => Object.keys(record).length <= most, {
      message: `at most ${most} entries`,
      params: { code: "too-many" },
    })
    .meta({ maxProperties: most });
