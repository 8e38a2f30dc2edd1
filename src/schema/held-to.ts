import type * as z from "zod";

type Single = string | number | boolean | null | undefined;

/** A type that can be written to, in which a field that may be absent is never there as `undefined`. */
type Plain<Type> = Type extends Single
  ? Type
  : Type extends readonly (infer Item)[]
    ? Plain<Item>[]
    : { -readonly [Key in keyof Type]: Plain<Exclude<Type[Key], undefined>> };

/** A type with every field that it may have. */
type Complete<Type> = Type extends Single
  ? Type
  : Type extends readonly (infer Item)[]
    ? Complete<Item>[]
    : { -readonly [Key in keyof Type]-?: Complete<Exclude<Type[Key], undefined>> };

type Mutual<One, Other> = [One] extends [Other] ? ([Other] extends [One] ? true : false) : false;

/** Whether two types hold the same fields, required and optional, of the same types. */
export type Same<One, Other> =
  Mutual<Plain<One>, Plain<Other>> extends true ? Mutual<Complete<One>, Complete<Other>> : false;

/** The schema itself. Does not compile where the schema and the type differ in a field, in its type or its presence. */
export const heldTo =
  <Type>() =>
  <Schema extends z.ZodType>(
    schema: Schema & (Same<z.output<Schema>, Type> extends true ? unknown : "schema and type differ"),
  ): Schema =>
    schema;
