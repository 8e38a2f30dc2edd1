import type { Problem, ProblemCode } from "../errors";
import { classes, splitPath, traitPaths, traitTable } from "../species";
import { isObject } from "./shape/problems-of";
import type { Path } from "./shape/shape";

/** How deep the parts of a fact may lie. */
const deepest = 8;

/** Profiles in which nothing was found wrong and which nobody can change any more. */
const sound = new WeakSet<object>();

/** What is wrong with something that should be a profile, as far as its parts can be read. */
export function profileProblems(value: unknown, path: Path): readonly Problem[] {
  if (!isObject(value)) return [problem(path, "a species profile", value)];
  if (sound.has(value)) return [];
  const problems = [
    ...taxonProblems(value, path),
    ...namesProblems(value.names, [...path, "names"]),
    ...listingProblems(value.listings, [...path, "listings"]),
    ...factsProblems(value, path),
    ...formProblems(value.forms, [...path, "forms"]),
  ];
  if (problems.length === 0 && isFrozenThrough(value, 0)) sound.add(value);
  return problems;
}

function taxonProblems(profile: Fields, path: Path): readonly Problem[] {
  const { id, taxonomy } = profile;
  const { name, family, kind } = isObject(taxonomy) ? taxonomy : {};
  const texts = { id, "taxonomy.name": name, "taxonomy.family": family };
  return [
    ...Object.entries(texts)
      .filter(([, text]) => typeof text !== "string")
      .map(([at, text]) => problem([...path, ...at.split(".")], "a text, as in a species profile", text)),
    ...(typeof kind === "string" && Object.hasOwn(classes.kind, kind)
      ? []
      : [
          problem(
            [...path, "taxonomy", "kind"],
            `one of ${Object.keys(classes.kind).join(", ")}`,
            kind,
            "word",
          ),
        ]),
  ];
}

function namesProblems(names: unknown, path: Path): readonly Problem[] {
  const areNames = isObject(names) && Object.values(names).every(isListOf(isText));
  return areNames ? [] : [problem(path, "lists of names by language", names)];
}

function listingProblems(listings: unknown, path: Path): readonly Problem[] {
  const isListing = (listing: unknown) =>
    isObject(listing) && Object.values(listing).every((text) => text === undefined || isText(text));
  if (listings === undefined || isListOf(isListing)(listings)) return [];
  return [problem(path, "a list of laws, each with its texts", listings)];
}

/** What is wrong with the forms that might be applied. */
function formProblems(forms: unknown, path: Path): readonly Problem[] {
  if (forms === undefined) return [];
  if (!isObject(forms)) return [problem(path, "forms by their ids", forms)];
  return Object.entries(forms).flatMap(([name, form]) => {
    const at = [...path, name];
    if (!isObject(form)) return [problem(at, "a form of the species", form)];
    const named = form.names === undefined ? [] : namesProblems(form.names, [...at, "names"]);
    return [...named, ...factsProblems(form, at)];
  });
}

const isText = (value: unknown) => typeof value === "string";
const isListOf = (fits: (item: unknown) => boolean) => (value: unknown) =>
  Array.isArray(value) && value.every(fits);

type Fields = Readonly<Record<string, unknown>>;

function factsProblems(profile: Fields, path: Path): readonly Problem[] {
  return traitPaths.flatMap((trait) => {
    const [section, name] = splitPath(trait);
    const held = profile[section];
    const fact = isObject(held) ? held[name] : held;
    if (fact === undefined) return [];
    const at = [...path, section, name];
    if (!isObject(fact) || fact.value === undefined) return [problem(at, "a fact with its value", fact)];
    const values = [fact.value, ...(Array.isArray(fact.also) ? fact.also : [])];
    return values.every((value) => fits(value, traitTable[trait].way) && isPlain(value, 0))
      ? []
      : [
          problem(
            [...at, "value"],
            `what resolves as ${traitTable[trait].way}, with finite numbers`,
            fact.value,
          ),
        ];
  });
}

/** Whether a value has the build that its trait resolves to. */
function fits(value: unknown, way: string): boolean {
  if (way === "figures") return isObject(value) && isObject(value.kept);
  if (way === "all") return Array.isArray(value);
  if (way === "lengths")
    return Array.isArray(value) && value.length > 0 && value.every((length) => isObject(length?.total));
  return value !== null && !Array.isArray(value);
}

/** Whether a value holds nothing but texts, truth values and finite numbers, and not too deep. */
function isPlain(value: unknown, depth: number): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return true;
  return depth < deepest && Object.values(value).every((held) => isPlain(held, depth + 1));
}

function isFrozenThrough(value: unknown, depth: number): boolean {
  if (typeof value !== "object" || value === null) return true;
  return (
    depth < 2 * deepest &&
    Object.isFrozen(value) &&
    Object.values(value).every((held) => isFrozenThrough(held, depth + 1))
  );
}

const problem = (path: Path, expected: string, found: unknown, code: ProblemCode = "type"): Problem => ({
  path,
  code,
  expected,
  found,
});
