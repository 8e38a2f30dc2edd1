import { listOf } from "../checks";
import { InvalidInputError, type Problem, type ProblemCode } from "../errors";
import { isFrozenThrough } from "../frozen";
import { isObject } from "../is-object";
import { bodyMassDomain } from "../load";
import type { Range } from "../ranges";
import { bases, type SpeciesProfile, splitPath, type TraitPath, traitPaths } from "../species";
import { kinds, traitDefinitions } from "../species/inner";
import type { ProblemPath } from "./shape/shape";

const known: readonly unknown[] = bases;

/** How deep the parts of a fact may lie. */
const deepest = 8;

/** Profiles in which nothing was found wrong and which nobody can change any more. */
const sound = new WeakSet<object>();

/** Whether a profile was found sound, and nobody can change it any more: what is looked up in it stays. */
export const isUnchangeable = (profile: object): boolean => sound.has(profile);

/** What is wrong with something that should be a profile, as far as its parts can be read. */
export function profileProblems(value: unknown, path: ProblemPath): readonly Problem[] {
  if (!isObject(value)) return [problem(path, "a species profile", value)];
  if (sound.has(value)) return [];
  const problems = [
    ...nameProblems(value, path),
    ...factsProblems(value, path),
    ...formsProblems(value, path),
    ...listingsProblems(value, path),
  ];
  if (problems.length === 0 && isFrozenThrough(value)) sound.add(value);
  return problems;
}

/** Profiles that a caller gives, or an InvalidInputError where they are no list of profiles. */
export function profilesOf(
  given: readonly SpeciesProfile[],
  path: readonly string[],
): readonly SpeciesProfile[] {
  const profiles = Array.from(listOf(given, path.join(".")));
  const problems = profiles.flatMap((profile, index) => profileProblems(profile, [...path, index]));
  if (problems.length > 0) throw new InvalidInputError(problems);
  return profiles;
}

function nameProblems(profile: Fields, path: ProblemPath): readonly Problem[] {
  const { id, names, taxonomy } = profile;
  const { name, family, order, kind } = isObject(taxonomy) ? taxonomy : {};
  const texts = { id, "taxonomy.name": name, "taxonomy.family": family, "taxonomy.order": order };
  return [
    ...Object.entries(texts)
      .filter(([, text]) => typeof text !== "string")
      .map(([at, text]) => problem([...path, ...at.split(".")], "a text, as in a species profile", text)),
    ...(kinds.some((one) => one === kind)
      ? []
      : [problem([...path, "taxonomy", "kind"], `one of ${kinds.join(", ")}`, kind, "word")]),
    ...namesProblems(names, path),
  ];
}

function namesProblems(names: unknown, path: ProblemPath): readonly Problem[] {
  const areTexts = (list: unknown) => Array.isArray(list) && list.every((name) => typeof name === "string");
  return isObject(names) && Object.values(names).every(areTexts)
    ? []
    : [problem([...path, "names"], "lists of names by language", names)];
}

function formsProblems({ forms = {} }: Fields, path: ProblemPath): readonly Problem[] {
  const at = [...path, "forms"];
  if (!isObject(forms)) return [problem(at, "forms by their ids", forms)];
  return Object.entries(forms).flatMap(([id, form]) =>
    isObject(form)
      ? [
          ...namesProblems(form.names, [...at, id]),
          ...factsProblems(form, [...at, id]),
          ...listingsProblems(form, [...at, id]),
        ]
      : [problem([...at, id], "what the form states", form)],
  );
}

function listingsProblems({ listings = [] }: Fields, path: ProblemPath): readonly Problem[] {
  return Array.isArray(listings) && listings.every((listing) => isObject(listing) && isPlain(listing, 0))
    ? []
    : [problem([...path, "listings"], "a list of laws", listings)];
}

type Fields = Readonly<Record<string, unknown>>;

function factsProblems(profile: Fields, path: ProblemPath): readonly Problem[] {
  return traitPaths.flatMap((trait) => {
    const [section, name] = splitPath(trait);
    const held = profile[section];
    const fact = isObject(held) ? held[name] : held;
    if (fact === undefined) return [];
    const at = [...path, section, name];
    if (!isObject(fact) || fact.value === undefined) return [problem(at, "a fact with its value", fact)];
    if (!known.includes(fact.basis)) {
      return [problem([...at, "basis"], `one of ${known.join(", ")}`, fact.basis, "word")];
    }
    const values = [fact.value, ...(Array.isArray(fact.also) ? fact.also : [])];
    const { way } = traitDefinitions[trait];
    return values.every((value) => fits(value, way) && isPlain(value, 0) && canBeWeighed(value, trait))
      ? []
      : [
          problem(
            [...at, "value"],
            `what resolves as ${way}, with finite numbers, sizes as in bodyMassDomain`,
            fact.value,
          ),
        ];
  });
}

/** Whether a value that mass is reckoned from lies where {@link bodyMassDomain} has it. */
function canBeWeighed(value: unknown, trait: TraitPath): boolean {
  const { length, lengthWeight } = bodyMassDomain;
  if (trait === "size.lengthWeight") {
    const { a, b } = value as Fields;
    return isWithin(a, lengthWeight.a) && isWithin(b, lengthWeight.b);
  }
  const isLength = ({ total }: { readonly total: Fields }) =>
    isWithin(total.min, length) && isWithin(total.max, length);
  return trait !== "size.adultLength" || (value as Parameters<typeof isLength>[0][]).every(isLength);
}

const isWithin = (value: unknown, { min, max }: Range) =>
  typeof value === "number" && value >= min && value <= max;

/** Whether a value has the build that its trait resolves to. */
function fits(value: unknown, way: string): boolean {
  if (way === "figures") return isObject(value) && isObject(value.kept);
  if (way === "all") return Array.isArray(value);
  if (way === "rooms")
    return Array.isArray(value) && value.length > 0 && value.every((room) => isObject(room));
  if (way === "lengths")
    return Array.isArray(value) && value.length > 0 && value.every((length) => isObject(length?.total));
  return value !== null && !Array.isArray(value);
}

/** Whether a value holds nothing but texts, truth values and finite numbers, and not too deep. */
function isPlain(value: unknown, depth: number): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object") return true;
  return value !== null && depth < deepest && Object.values(value).every((held) => isPlain(held, depth + 1));
}

const problem = (
  path: ProblemPath,
  expected: string,
  found: unknown,
  code: ProblemCode = "type",
): Problem => ({
  path,
  code,
  expected,
  found,
});
