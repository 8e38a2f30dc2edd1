import type * as z from "zod";
import type { Problem, ProblemCode } from "../errors";
import type { Path } from "./fields";

type Issue = z.core.$ZodIssue;

/** What a schema found wrong with a value; of alternatives, what is wrong with the first, telling one. */
export function problemsOf(issues: readonly Issue[], input: unknown, above: Path = []): readonly Problem[] {
  return issues.flatMap((issue): readonly Problem[] => {
    const path = [...above, ...issue.path.filter((part) => typeof part !== "symbol")];
    if (issue.code === "invalid_union" && issue.errors[0]) return problemsOf(issue.errors[0], input, path);
    if (issue.code === "unrecognized_keys") {
      return issue.keys.map((key) => {
        const found = valueAt(input, [...path, key]);
        return { path: [...path, key], code: "unknown-key", expected: "no such field here", found };
      });
    }
    return [{ path, code: codeOf(issue), expected: expectedBy(issue), found: valueAt(input, path) }];
  });
}

function codeOf(issue: Issue): ProblemCode {
  switch (issue.code) {
    case "invalid_value":
      return "word";
    case "invalid_format":
    case "invalid_key":
      return "text";
    case "too_small":
      return issue.origin === "string" ? "text" : issue.origin === "array" ? "type" : "range";
    case "too_big":
      return issue.origin === "string" ? "text" : issue.origin === "array" ? "too-many" : "range";
    case "custom":
      return issue.params?.code === "too-many" ? "too-many" : "range";
    default:
      return "type";
  }
}

/** What the size of a text or list counts. */
const counted: Readonly<Record<string, readonly [one: string, more: string]>> = {
  string: [" character", " characters"],
  array: [" entry", " entries"],
};

function expectedBy(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return issue.expected;
    case "invalid_value":
      return `one of ${issue.values.join(", ")}`;
    case "too_small":
      return `${issue.inclusive === false ? "more than" : "at least"} ${sized(issue.minimum, issue.origin)}`;
    case "too_big":
      return `at most ${sized(issue.maximum, issue.origin)}`;
    case "invalid_key":
      return `another key: ${issue.issues.map((inner) => expectedBy(inner)).join(", ")}`;
    default:
      return issue.message;
  }
}

function sized(size: number | bigint, origin: string): string {
  const [one, more] = counted[origin] ?? ["", ""];
  return `${size}${Number(size) === 1 ? one : more}`;
}

function valueAt(input: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, key) => (typeof value === "object" && value !== null ? Reflect.get(value, key) : undefined),
    input,
  );
}
