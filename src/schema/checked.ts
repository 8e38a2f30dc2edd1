import type * as z from "zod";
import type { Problem } from "../errors";
import { readPlainData } from "../plain-data";
import type { Check } from "./checks/check";
import { problemsOf } from "./problems";
import { fieldsOf } from "./walk";

/** How a file is checked: its shape, and what its shape cannot tell. */
export interface FileSchema<Shape extends z.ZodType = z.ZodType> {
  readonly shape: Shape;
  readonly checks: readonly Check[];
}

/** What came of a check. */
export type Checked<Data> =
  | { readonly success: true; readonly data: Data }
  | { readonly success: false; readonly problems: readonly Problem[] };

/** The value as a file of its sort, or everything that is wrong with it. What is no plain data is told alone. */
export function checked<Shape extends z.ZodType>(
  { shape, checks }: FileSchema<Shape>,
  input: unknown,
): Checked<z.output<Shape>> {
  const { data, problems: unreadable } = readPlainData(input);
  if (unreadable.length > 0) return { success: false, problems: unreadable };
  const parsed = shape.safeParse(data);
  const ofShape = problemsOf(parsed.error?.issues ?? [], data);
  const tooMany = ofShape.some(({ code }) => code === "too-many");
  const ofMeaning = tooMany ? [] : checks.flatMap((check) => check(fieldsOf(data)));
  const problems = [...ofShape, ...ofMeaning];
  return parsed.success && problems.length === 0
    ? { success: true, data: parsed.data }
    : { success: false, problems };
}
