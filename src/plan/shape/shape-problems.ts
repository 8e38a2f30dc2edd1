import type { Problem, ProblemCode } from "../../errors";
import { isObject } from "../../is-object";
import { meant } from "./nearest";
import type { ObjectShape, ProblemPath, Shape } from "./shape";

/** Everything in which a value differs from a shape. */
export function shapeProblems(shape: Shape, value: unknown, path: ProblemPath = []): readonly Problem[] {
  const refuse = (code: ProblemCode, expected: string) => [{ path, code, expected, found: value }];
  switch (shape.is) {
    case "number":
      return isNumber(value) && isWithin(value, shape)
        ? []
        : refuse(isNumber(value) ? "range" : "type", numberText(shape));
    case "count":
      return isNumber(value) && Number.isInteger(value) && isWithin(value, shape)
        ? []
        : refuse(isNumber(value) ? "range" : "type", `a whole number from ${shape.min} to ${shape.max}`);
    case "yes-or-no":
      return typeof value === "boolean" ? [] : refuse("type", "true or false");
    case "word":
      return typeof value === "string" && shape.words.includes(value)
        ? []
        : refuse("word", `${choiceOf(shape.words)}${meant(value, shape.words)}`);
    case "text":
      if (typeof value !== "string") return refuse("type", "a text");
      return hasUpTo(shape.longest, value) ? [] : refuse("text", `1 to ${shape.longest} characters`);
    case "list":
      return problemsOfList(shape, value, path);
    case "object":
      return problemsOfObject(shape, value, path);
    case "kinds": {
      if (!isObject(value)) return refuse("type", "an object");
      const kind = value[shape.by];
      const chosen = typeof kind === "string" && Object.hasOwn(shape.of, kind) ? shape.of[kind] : undefined;
      const words = Object.keys(shape.of);
      return chosen
        ? shapeProblems(chosen, value, path)
        : shapeProblems({ is: "word", words }, kind, [...path, shape.by]);
    }
    case "checked":
      return shape.check(value, path);
  }
}

function problemsOfList(
  { of, least, most }: Extract<Shape, { is: "list" }>,
  value: unknown,
  path: ProblemPath,
): readonly Problem[] {
  if (!Array.isArray(value)) return [{ path, code: "type", expected: "a list", found: value }];
  if (value.length < least)
    return [{ path, code: "range", expected: `a list of at least ${least}`, found: value.length }];
  if (value.length > most)
    return [{ path, code: "too-many", expected: `a list of at most ${most}`, found: value.length }];
  return Array.from(value, (item: unknown, index) => shapeProblems(of, item, [...path, index])).flat();
}

/** What is wrong with an object; of one that is something else altogether, in one line, what is asked for. */
function problemsOfObject(
  { fields, required = [] }: ObjectShape,
  value: unknown,
  path: ProblemPath,
): readonly Problem[] {
  if (!isObject(value)) return [{ path, code: "type", expected: "an object", found: value }];
  const known = Object.keys(fields);
  const strange = Object.keys(value).filter((key) => value[key] !== undefined && !known.includes(key));
  const isSomethingElse = strange.length > known.length && required.some((key) => !value[key]);
  if (isSomethingElse)
    return [{ path, code: "type", expected: `an object with ${required.join(", ")}`, found: value }];
  const problems: Problem[] = [];
  for (const key of known) {
    const [field, held] = [fields[key] as Shape, value[key]];
    if (held === undefined && !required.includes(key)) continue;
    problems.push(...shapeProblems(field, held, [...path, key]));
  }
  for (const key of strange) {
    const expected = `${choiceOf(known)}${meant(key, known)}`;
    problems.push({ path: [...path, key], code: "unknown-key", expected, found: key });
  }
  return problems;
}

const isNumber = (value: unknown): value is number => typeof value === "number" && Number.isFinite(value);

/** Whether a text has a character and no more than so many; those beyond the first plane count once, as in a schema. */
const hasUpTo = (longest: number, text: string) =>
  text !== "" && text.length <= 2 * longest && [...text].length <= longest;

interface Span {
  readonly min?: number;
  readonly above?: number;
  readonly max?: number;
}

const isWithin = (value: number, { min = -Infinity, above = -Infinity, max = Infinity }: Span) =>
  value >= min && value > above && value <= max;

function numberText({ min, above, max, unit }: Extract<Shape, { is: "number" }>): string {
  const ends = [
    min !== undefined && `from ${min}`,
    above !== undefined && `above ${above}`,
    max !== undefined && `${min === undefined ? "up " : ""}to ${max}`,
  ].filter(Boolean);
  return [ends.length > 0 ? "a number" : "a finite number", ...ends, unit].filter(Boolean).join(" ");
}

const choiceOf = (words: readonly string[]) => `one of ${words.join(", ")}`;
