import { InvalidInputError, type Problem } from "../../errors";
import { applyForm, type SpeciesProfile } from "../../species";
import { conflictsBeside } from "../checked-plan";
import type { Group, Plan } from "../plan";
import { planShape } from "../plan-shape";
import { profileProblems } from "../profile-problems";
import type { ProblemPath } from "../shape/shape";
import { isObject, shapeProblems } from "../shape/shape-problems";
import { format, older } from "./formats";

/** The profile of a species by whatever a plan calls it; undefined where there is none. */
export type SpeciesLookup = (nameOrId: string) => SpeciesProfile | undefined;

/** A species that a plan calls by another name than its id: an id it once bore, a synonym, a vernacular name. */
export interface Renamed {
  readonly path: ProblemPath;
  readonly from: string;
  /** The id. */
  readonly to: string;
}

/** What {@link safeParsePlan} returns. */
export type ParsedPlan =
  | { readonly success: true; readonly plan: Plan; readonly renamed: readonly Renamed[] }
  | { readonly success: false; readonly problems: readonly Problem[] };

/**
 * Checks that a value is a saved plan, and gives each of its groups the profile of its species.
 *
 * @param input - What was saved: an object, not its text.
 * @param lookup - Gives the profile of a species by its id or any of its names, such as `speciesById`, or the profiles
 * that an app has loaded: `speciesIn` lists which.
 * @returns The plan, with the species that have another id than the plan says in `renamed`; or every problem at once,
 * each with its path, a code, what was expected and what was found. Never throws.
 *
 * @example
 * ```ts
 * import { speciesById } from "vivary/catalog";
 * import { safeParsePlan } from "vivary/plan";
 *
 * const saved = {
 *   format: 1,
 *   tank: { base: { shape: "rectangle", length: 80, width: 35 }, covr: 0.3 },
 *   groups: [{ species: "corydoras-paleatus", unsexed: "7" }],
 * };
 * const parsed = safeParsePlan(saved, speciesById);
 * parsed.success ? [] : parsed.problems.map(({ path, code }) => [path.join("."), code]); // => [["tank.covr", "unknown-key"], ["groups.0.unsexed", "type"]]
 * ```
 */
export function safeParsePlan(input: unknown, lookup: SpeciesLookup): ParsedPlan {
  try {
    return parsed(input, lookup);
  } catch (error) {
    if (error instanceof InvalidInputError) return { success: false, problems: error.problems };
    return { success: false, problems: [unreadable(input)] };
  }
}

/**
 * The plan that was saved. As {@link safeParsePlan}, but throws.
 *
 * @throws InvalidInputError with every problem.
 *
 * @example
 * ```ts
 * import { speciesById } from "vivary/catalog";
 * import { parsePlan } from "vivary/plan";
 *
 * const saved = { tank: { base: { shape: "circle", diameter: 50 } }, groups: [{ species: "betta-splendens", males: 1 }] };
 * parsePlan(saved, speciesById).plan.groups[0]?.species.taxonomy.name; // => "Betta splendens"
 * parsePlan({}, speciesById); // throws
 * ```
 */
export function parsePlan(input: unknown, lookup: SpeciesLookup): Extract<ParsedPlan, { success: true }> {
  const result = safeParsePlan(input, lookup);
  if (!result.success) throw new InvalidInputError(result.problems);
  return result;
}

/** Something that throws when it is read, or ends nowhere. */
const unreadable = (found: unknown): Problem => ({
  path: [],
  code: "type",
  expected: "plain data that can be read, and a lookup that answers",
  found: typeof found,
});

function parsed(input: unknown, lookup: SpeciesLookup): ParsedPlan {
  if (typeof lookup !== "function") {
    const expected = "a function that gives the profile of a species";
    return { success: false, problems: [{ path: ["lookup"], code: "type", expected, found: lookup }] };
  }
  const { saved, problems: ofFormat } = inTodaysFormat(input);
  const ofShape = [...ofFormat, ...shapeProblems(planShape(nameProblems), saved)];
  const found = foundSpecies(saved, lookup);
  const problems = [...ofShape, ...found.problems];
  const plan = { ...(saved as object), groups: found.groups } as unknown as Plan;
  const all = [...problems, ...conflictsBeside(problems, plan)];
  if (all.length > 0) return { success: false, problems: all };
  return { success: true, plan: { ...plan, groups: found.groups.map(withForm) }, renamed: found.renamed };
}

const nameProblems = (value: unknown, path: ProblemPath): readonly Problem[] =>
  shapeProblems({ is: "text", longest: 120 }, value, path);

/** What was saved without its format, brought up to today's. */
function inTodaysFormat(input: unknown): { readonly saved: unknown; readonly problems: readonly Problem[] } {
  if (!isObject(input)) return { saved: input, problems: [] };
  const { format: given = format, ...saved } = input;
  const known = typeof given === "number" && (given === format || Object.hasOwn(older, given));
  if (!known) {
    const expected = `a format up to ${format}; a later one needs a later version of this library`;
    return { saved, problems: [{ path: ["format"], code: "unknown-format", expected, found: given }] };
  }
  let current: object = saved;
  for (let at = given; at < format; at++) current = older[at]?.(current) ?? current;
  return { saved: current, problems: [] };
}

interface FoundSpecies {
  readonly groups: readonly Group[];
  readonly problems: readonly Problem[];
  readonly renamed: readonly Renamed[];
}

/** The groups with profiles in place of names, as far as both can be read. */
function foundSpecies(saved: unknown, lookup: SpeciesLookup): FoundSpecies {
  const given = isObject(saved) && Array.isArray(saved.groups) ? saved.groups : [];
  const groups: Group[] = [];
  const problems: Problem[] = [];
  const renamed: Renamed[] = [];
  for (const [index, group] of (given as readonly unknown[]).entries()) {
    const name = isObject(group) ? group.species : undefined;
    const path = ["groups", index, "species"];
    const species = typeof name === "string" ? lookup(name) : undefined;
    groups.push({ ...Object(group), species });
    if (typeof name !== "string" || nameProblems(name, path).length > 0) continue;
    if (!species)
      problems.push({ path, code: "unknown-species", expected: "the id or name of a species", found: name });
    else problems.push(...profileProblems(species, path));
    if (species && species.id !== name) renamed.push({ path, from: name, to: species.id });
  }
  return { groups, problems, renamed };
}

/** A group with its form applied to its species. */
function withForm({ form, ...group }: Group): Group {
  return form === undefined ? group : { ...group, species: applyForm(group.species, form) };
}
