import { expectTypeOf, test } from "vitest";
import * as z from "zod";
import { heldTo, type Same } from "../../src/schema/held-to";

interface Pond {
  readonly id: string;
  readonly fish?: readonly { readonly name: string; readonly note?: string | undefined }[] | undefined;
}

test("the same fields are the same, whether they may be written to or not", () => {
  type Written = { id: string; fish?: { name: string; note?: string }[] };
  expectTypeOf<Same<Written, Pond>>().toEqualTypeOf<true>();
  expectTypeOf<Same<{ a: 1 } | { b: 2 }, { readonly b: 2 } | { readonly a: 1 }>>().toEqualTypeOf<true>();
});

test("a field that one of them lacks makes a difference, even one that may be absent", () => {
  expectTypeOf<Same<{ id: string }, Pond>>().toEqualTypeOf<false>();
  expectTypeOf<Same<{ id: string; fish?: { name: string }[] }, Pond>>().toEqualTypeOf<false>();
  expectTypeOf<Same<Pond, { id: string; fish?: { name: string }[] }>>().toEqualTypeOf<false>();
  expectTypeOf<Same<{ a: 1; c?: 3 } | { b: 2 }, { a: 1 } | { b: 2 }>>().toEqualTypeOf<false>();
});

test("so does a field that must be there in one of them, and another type", () => {
  expectTypeOf<Same<{ a?: 1 }, { a: 1 }>>().toEqualTypeOf<false>();
  expectTypeOf<Same<{ a: string }, { a: "one" }>>().toEqualTypeOf<false>();
  expectTypeOf<Same<{ a?: true }, { a?: boolean }>>().toEqualTypeOf<false>();
});

test("a schema of another type does not compile", () => {
  const fish = z.array(z.strictObject({ name: z.string(), note: z.string().optional() })).optional();
  const same = heldTo<Pond>()(z.strictObject({ id: z.string(), fish }));
  // @ts-expect-error: fish is missing
  const other = heldTo<Pond>()(z.strictObject({ id: z.string() }));
  expectTypeOf([same, other]).not.toBeAny();
});
