import { expectTypeOf, test } from "vitest";
import * as z from "zod";
import { heldTo, type Identical, type Inferred } from "../../src/schema/held-to";

interface Fish {
  readonly name: string;
  readonly note?: string;
}

interface Pond {
  readonly id: string;
  readonly fish?: readonly Fish[] | undefined;
}

test("a type as zod infers it can be written to, and what may be absent may be undefined", () => {
  type Written = { id: string; fish?: { name: string; note?: string | undefined }[] | undefined };
  expectTypeOf<Identical<Inferred<Pond>, Written>>().toEqualTypeOf<true>();
});

test("a field more, a field that must be there and another type each make a difference", () => {
  type Pair = { a: 1; b?: 2 | undefined };
  expectTypeOf<Identical<Pair, { a: 1 }>>().toEqualTypeOf<false>();
  expectTypeOf<Identical<{ a: 1 }, Pair>>().toEqualTypeOf<false>();
  expectTypeOf<Identical<Pair, { a: 1; b: 2 | undefined }>>().toEqualTypeOf<false>();
  expectTypeOf<Identical<Pair, { a: 1; b?: number | undefined }>>().toEqualTypeOf<false>();
});

test("a schema of another type does not compile", () => {
  const name = z.string();
  const fish = z.array(z.strictObject({ name, note: z.string().optional() })).optional();
  const same = heldTo<Pond>()(z.strictObject({ id: z.string(), fish }));
  // @ts-expect-error: fish is missing
  const without = heldTo<Pond>()(z.strictObject({ id: z.string() }));
  const nameless = z.array(z.strictObject({ name })).optional();
  // @ts-expect-error: the note of a fish is missing, which may be absent
  const deeper = heldTo<Pond>()(z.strictObject({ id: z.string(), fish: nameless }));
  expectTypeOf([same, without, deeper]).not.toBeAny();
});
