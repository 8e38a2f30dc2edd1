import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { surfaceOf } from "./read";

const folder = mkdtempSync(join(tmpdir(), "vivary-surface-"));
afterAll(() => rmSync(folder, { recursive: true }));

function report(code: string): string | undefined {
  const file = join(folder, "module.ts");
  mkdirSync(folder, { recursive: true });
  writeFileSync(file, code);
  return surfaceOf(new Map([["module", file]])).get("module");
}

const code = `
interface Hidden { readonly inner: number }
export interface Shown<Held extends object = object> extends Hidden { held?: Held; call(of: string): void }
export type Word = "b" | "a";
export type Both = Shown & { readonly more: Word };
export class Fault extends Error { constructor(readonly found: unknown) { super() } }
export function judge(a: number, b?: Word): Hidden | undefined { return a ? { inner: a } : undefined }
export const numbers: readonly number[] = [];
`;

test("each export is told with its type and its members, by name", () => {
  expect(report(code)).toMatchInlineSnapshot(`
    "type Both
      call: (of: string) => void
      held?: object | undefined
      readonly inner: number
      readonly more: Word
    class Fault: new (found: unknown): Fault
    interface Fault
      cause?: unknown
      message: string
      name: string
      readonly found: unknown
      stack?: string | undefined
    interface Shown<Held extends object = object>
      call: (of: string) => void
      held?: Held | undefined
      readonly inner: number
    type Word = 'a' | 'b'
    function judge: (a: number, b?: Word | undefined) => Hidden | undefined
    const numbers: readonly number[]
    "
  `);
});

test("a change of a type, of a member or of an argument shows; that of a body does not", () => {
  const held = report(code);
  for (const [from, to] of [
    ['"b" | "a"', '"b" | "c"'],
    ["readonly inner", "inner"],
    ["b?: Word", "b: Word"],
    ["numbers", "figures"],
    ["call(of: string)", "call(of: number)"],
  ] as const) {
    expect(report(code.replace(from, to)), to).not.toBe(held);
  }
  expect(report(code.replace("a ? { inner: a } : undefined", "undefined"))).toBe(held);
});
