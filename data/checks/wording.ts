// Problems of a file in the words of those who write it.
import type { DataFolder, Problem, ProblemCode } from "vivary/schema";
import { traitPaths } from "vivary/species";
import type { DataFile } from "../reading/files";
import { exampleAt, fieldNamesAt, spaced } from "../reading/schema-at";
import { guess, nearest } from "../reading/spelling";
import type { Slip } from "./check";

/** A problem of a file as a slip. */
export function slipOf({ folder, path: file }: DataFile, problem: Problem): Slip {
  const place = { file, at: problem.path };
  if (problem.code === "unknown-key") return { ...place, ...strangeField(folder, problem) };
  const { path, found, expected, explanation = "Correct it." } = problem;
  const field = textOf(path) || "the file";
  return {
    ...place,
    found: found === undefined ? `${field} is missing` : `${field} is ${shown(found)}`,
    expected: sorts[expected] ?? expected,
    guess: typeof found === "string" ? guessed(found, expected) : "",
    ...(shapeless.includes(problem.code) && { example: exampleAt(folder, path) }),
    mend: explanation,
  };
}

/** Mistakes of shape, which an example mends best. */
const shapeless: readonly ProblemCode[] = ["type", "range", "word", "text"];

/** The sorts of JSON as they are typed. */
const sorts: Readonly<Record<string, string>> = {
  object: "fields between { and }",
  record: "fields between { and }",
  array: "a list between [ and ]",
  string: "text in quotes",
  number: "a number without quotes",
  int: "a whole number without quotes",
  boolean: "true or false, without quotes",
};

/** A field that nothing reads. */
function strangeField(folder: DataFolder, { path }: Problem) {
  const field = String(path.at(-1));
  const around = path.slice(0, -1);
  const known = fieldNamesAt(folder, around);
  const elsewhere = traitPaths.find((trait) => trait.endsWith(`.${field}`));
  const likely = otherNames[field.toLowerCase()]?.find((name) => known.includes(name));
  const meant = likely ?? nearest(field, known) ?? (folder === "species" ? elsewhere : undefined);
  return {
    found: `${textOf(path)} is no field of ${textOf(around) || "the file"}`,
    guess: meant === undefined ? "" : ` Did you mean ${meant}?`,
    example: exampleAt(folder, around),
    mend: known.length > 0 ? `Fields here: ${known.join(", ")}.` : "Take it away.",
  };
}

/** Fields by other words, each with what they may be called. */
const otherNames: Readonly<Record<string, readonly string[]>> = {
  max: ["greatest", "most"],
  maximum: ["max", "greatest"],
  upto: ["greatest", "max"],
  min: ["least"],
  minimum: ["min", "least"],
};

/** The word that was meant, of those that are expected. */
function guessed(found: string, expected: string): string {
  const words = expected.startsWith("one of ") ? expected.slice("one of ".length).split(", ") : [];
  const meant = spellings[found.toLowerCase()];
  return meant && words.includes(meant) ? ` Did you mean ${meant}?` : guess(found, words);
}

/** Units as they are often written. */
const spellings: Readonly<Record<string, string>> = {
  "°c": "degC",
  c: "degC",
  celsius: "degC",
  "°f": "degF",
  f: "degF",
  fahrenheit: "degF",
  "°dh": "dH",
  "°d": "dH",
  dgh: "dH",
  gh: "dH",
  ppm: "mg/L-CaCO3",
  "mg/l": "mg/L-CaCO3",
  '"': "in",
  inch: "in",
  inches: "in",
  "cm²": "cm2",
  "cm^2": "cm2",
  years: "a",
  year: "a",
  month: "mo",
  months: "mo",
  ppt: "g/kg",
  "‰": "g/kg",
};

/** `["water", "pH", 0]` as `water.pH[0]`. */
const textOf = (path: Problem["path"]): string =>
  path
    .map((part) => (typeof part === "number" ? `[${part}]` : `.${part}`))
    .join("")
    .replace(/^\./, "");

/** A value on one line, of bounded length. */
function shown(value: unknown): string {
  const text = spaced(value);
  return text.length > 80 ? `${text.slice(0, 80)}…` : text;
}
