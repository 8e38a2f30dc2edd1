import type * as z from "zod";

type Single = string | number | boolean | null | undefined;

/** A type as zod infers it: it can be written to, and a field that may be absent may be `undefined`. */
export type Inferred<Type> = Type extends Single
  ? Type
  : Type extends readonly (infer Item)[]
    ? Inferred<Item>[]
    : {
        -readonly [Key in keyof Type]:
          | Inferred<Type[Key]>
          | (Type extends Record<Key, unknown> ? never : undefined);
      };

/** Whether the compiler takes two types for one. To be assignable is not enough, since a field may be left out. */
export type Identical<One, Other> =
  (<Any>() => Any extends One ? 1 : 2) extends <Any>() => Any extends Other ? 1 : 2 ? true : false;

/** The schema itself. Does not compile where the schema and the type differ in a field, in its type or its presence. */
export const heldTo =
  <Type>() =>
  <Schema extends z.ZodType>(
    schema: Schema &
      (Identical<z.output<Schema>, Inferred<Type>> extends true ? unknown : "schema and type differ"),
  ): Schema =>
    schema;
