import * as z from "zod";

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
