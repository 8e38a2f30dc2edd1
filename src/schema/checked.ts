import type * as z from "zod";
import type { Problem } from "../errors";
import { readPlainData } from "../plain-data";
import { type Fields, fieldsOf } from "./fields";
import { problemsOf } from "./problems";

/** Looks for what the shape of a file cannot tell. Sees the file as it came, whatever else is wrong with it. */
export type Check = (file: Fields) => readonly Problem[];

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
