/** One thing wrong with a record. */
export interface Problem {
  /** Where: `water.temperature[0].value`. */
  readonly path: string;
  /** What stood there. */
  readonly found: unknown;
  /** What would have been accepted. */
  readonly expected: string;
  /** What the field means. */
  readonly explanation?: string | undefined;
}

/** A record that breaks the schema, with all its problems. */
export class RecordError extends Error {
  override readonly name = "RecordError";

  constructor(readonly problems: readonly Problem[]) {
    super(problems.map(describeProblem).join("\n"));
  }
}

/** A problem in a sentence or two, on one line whatever the record holds. */
export function describeProblem({ path, found, expected, explanation }: Problem): string {
  const sentence = `${path || "the record"}: expected ${expected}, found ${shown(found)}.`;
  return (explanation ? `${sentence} ${explanation}` : sentence).replaceAll(/\p{Cc}/gu, " ");
}

function shown(found: unknown): string {
  try {
    return JSON.stringify(found) ?? "nothing";
  } catch {
    return "what JSON cannot hold";
  }
}

/** `["water", "temperature", 0]` as `water.temperature[0]`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((part) => (typeof part === "number" ? `[${part}]` : `.${String(part)}`))
    .join("")
    .replace(/^\./, "");
}
