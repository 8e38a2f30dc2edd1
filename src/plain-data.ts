import { InvalidInputError, type Problem, type ProblemCode } from "./errors";

/** What was given as plain data, and what of it is none. */
export interface PlainData {
  readonly data: unknown;
  readonly problems: readonly Problem[];
}

/** How deep plain data may be nested. */
const deepest = 16;
/** How many values plain data may hold. */
const most = 100_000;

/**
 * A copy of what JSON can hold: texts, finite numbers, truth values, lists and objects. All else is a problem, and so
 * is what throws when it is read or is nested without end. Never throws.
 */
export function readPlainData(input: unknown): PlainData {
  const problems: Problem[] = [];
  const path: (string | number)[] = [];
  let count = 0;

  const refused = (code: ProblemCode, expected: string, found: unknown) => {
    problems.push({ path: [...path], code, expected, found });
  };
  const copyAt = (key: string | number, held: () => unknown): unknown => {
    path.push(key);
    const copy = copyOf(held);
    path.pop();
    return copy;
  };
  const copyOf = (held: () => unknown): unknown => {
    count += 1;
    if (count > most) return undefined;
    try {
      return copied(held());
    } catch {
      return refused("type", "data that can be read", undefined);
    }
  };
  const copied = (held: unknown): unknown => {
    if (typeof held === "number" && !Number.isFinite(held)) return refused("type", "a finite number", held);
    if (["bigint", "symbol", "function"].includes(typeof held)) return refused("type", "plain data", held);
    if (typeof held !== "object" || held === null) return held;
    if (path.length === deepest) return refused("type", `at most ${deepest} levels`, held);
    if (!Array.isArray(held)) {
      const copies = Object.keys(held).map((key) => [key, copyAt(key, () => Reflect.get(held, key))]);
      return Object.fromEntries(copies);
    }
    if (held.length > most) return refused("too-many", `at most ${most} entries`, held.length);
    return Array.from(held.keys(), (index) => copyAt(index, () => held[index]));
  };

  const data = copyOf(() => input);
  if (count <= most) return { data, problems };
  return {
    data: undefined,
    problems: [
      { path: [], code: "too-many", expected: `at most ${most} values`, found: `more than ${most}` },
    ],
  };
}

/**
 * A copy of plain data.
 *
 * @throws InvalidInputError with all that is none.
 */
export function plainData<Given>(given: Given): Given {
  const { data, problems } = readPlainData(given);
  if (problems.length > 0) throw new InvalidInputError(problems);
  return data as Given;
}
