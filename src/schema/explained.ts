import * as z from "zod";
import type { Problem } from "../errors";
import type { Path } from "./fields";

/** The problem with what the field means that it lies in, as far as the schema says. */
export function explained(problem: Problem, shape: z.ZodType): Problem {
  const explanation = problem.explanation ?? meaningAt(shape, problem.path);
  return explanation === undefined ? problem : { ...problem, explanation };
}

/** The meaning of the innermost thing around a path that has one. What a line of a list is called is none. */
function meaningAt(shape: z.ZodType, [key, ...deeper]: Path): string | undefined {
  const inner = key === undefined ? undefined : within(shape, key);
  if (inner === undefined) return meaningOf(shape);
  const innermost = meaningAt(inner, deeper);
  const isLabel = typeof key === "number" && innermost === meaningOf(inner);
  return (isLabel ? undefined : innermost) ?? meaningOf(shape);
}

/** What the schema says of what it holds. */
const meaningOf = (shape: z.ZodType): string | undefined =>
  shape.description ?? (isWrapped(shape) ? meaningOf(shape.unwrap() as z.ZodType) : undefined);

/** Whether a schema is another one that may be absent, or that is made when it is first needed. */
const isWrapped = (shape: z.ZodType): shape is z.ZodOptional | z.ZodLazy =>
  shape instanceof z.ZodOptional || shape instanceof z.ZodLazy;

/** The schema of a field, or of the entries of a list; of alternatives the first that has such a field. */
function within(shape: z.ZodType, key: string | number): z.ZodType | undefined {
  if (isWrapped(shape)) return within(shape.unwrap() as z.ZodType, key);
  if (shape instanceof z.ZodArray) return shape.element as z.ZodType;
  if (shape instanceof z.ZodRecord) return shape.valueType as z.ZodType;
  if (shape instanceof z.ZodObject) return Object.hasOwn(shape.shape, key) ? shape.shape[key] : undefined;
  if (!(shape instanceof z.ZodUnion)) return undefined;
  return shape.options.map((option) => within(option as z.ZodType, key)).find((found) => found);
}
