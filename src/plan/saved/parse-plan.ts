import { InvalidInputError, type Problem, type ProblemCode } from "../../errors";
import { isObject } from "../../is-object";
import type { SpeciesProfile } from "../../species";
import { conflictsBeside } from "../checked-plan";
import type { Group, Plan } from "../plan";
import { profileProblems } from "../profile-problems";
import { groupsShape, mostGroups, planShape } from "../shape/plan-shape";
import type { ProblemPath } from "../shape/shape";
import { shapeProblems } from "../shape/shape-problems";
import { inTodaysFormat } from "./formats";

/** The profile of a species by whatever a plan calls it, its id or a name; undefined where there is none, never a list. */
export type SpeciesLookup = (nameOrId: string) => SpeciesProfile | undefined;

/**
 * A species that a plan calls by another name than its id: an id it once bore, a synonym, a vernacular name. Or a form
 * that a plan calls by an id it once bore.
 */
export interface Renamed {
  readonly path: ProblemPath;
  readonly from: string;
  /** The id it bears now. */
  readonly to: string;
}

/** What {@link safeParsePlan} returns. */
export type ParsedPlan =
  | { readonly success: true; readonly plan: Plan; readonly renamed: readonly Renamed[] }
  | { readonly success: false; readonly problems: readonly Problem[] };

/**
 * Checks that a value is a saved plan, and gives each of its groups the profile of its species. A form stays beside it, as
 * `form` of the group.
 *
 * @param input - What was saved: an object, not its text.
 * @param lookup - Gives the profile of a species by what the plan calls it. `speciesById` knows ids alone, old ones too;
 * `(name) => findSpecies(name)[0]` knows names too, and of several species that bear a name takes the first. Or it gives
 * the profiles that an app has loaded: `speciesIn` lists which.
 * @returns The plan, with the species and forms that have another id than the plan says in `renamed`; or every problem at once,
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
 * The plan that was saved. As {@link safeParsePlan}, with a lookup such as there, but throws.
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
  const ofShape = [...ofFormat, ...shapeProblems(planShape(groupsShape(nameProblems)), saved)];
  const found = foundSpecies(saved, lookup);
  const problems = [...ofShape, ...found.problems];
  const plan = { ...(saved as object), groups: found.groups } as unknown as Plan;
  const all = [...problems, ...conflictsBeside(problems, plan)];
  if (all.length > 0) return { success: false, problems: all };
  return { success: true, plan, renamed: found.renamed };
}

const nameProblems = (value: unknown, path: ProblemPath): readonly Problem[] =>
  shapeProblems({ is: "text", longest: 120 }, value, path);

interface FoundSpecies {
  readonly groups: readonly Group[];
  readonly problems: readonly Problem[];
  readonly renamed: readonly Renamed[];
}

/** The groups with profiles in place of names, as far as both can be read. */
function foundSpecies(saved: unknown, lookup: SpeciesLookup): FoundSpecies {
  const given = isObject(saved) && Array.isArray(saved.groups) ? saved.groups.slice(0, mostGroups) : [];
  const groups: Group[] = [];
  const problems: Problem[] = [];
  const renamed: Renamed[] = [];
  for (const [index, group] of (given as readonly unknown[]).entries()) {
    const { species: name, form } = isObject(group) ? group : {};
    const path = ["groups", index, "species"];
    const { species, problems: wrong } = lookedUp(name, path, lookup);
    const current = species && currentForm(species, form);
    groups.push({ ...Object(group), species, ...(current !== undefined && { form: current }) });
    problems.push(...wrong);
    if (species && species.id !== name) renamed.push({ path, from: String(name), to: species.id });
    if (current !== undefined && current !== form) {
      renamed.push({ path: ["groups", index, "form"], from: String(form), to: current });
    }
  }
  return { groups, problems, renamed };
}

interface LookedUp {
  /** Absent where the lookup gave none, or none that is sound. */
  readonly species?: SpeciesProfile;
  readonly problems: readonly Problem[];
}

/** What a lookup gives for a name; nothing for what is no name, which the shape of a plan refuses. */
function lookedUp(name: unknown, path: ProblemPath, lookup: SpeciesLookup): LookedUp {
  if (typeof name !== "string" || nameProblems(name, path).length > 0) return { problems: [] };
  const refuse = (code: ProblemCode, expected: string) => ({
    problems: [{ path, code, expected, found: name }],
  });
  try {
    const species = lookup(name);
    if (!species) return refuse("unknown-species", "the id or name of a species");
    if (species instanceof Promise) {
      return refuse("type", "a species whose profile is loaded: the lookup gave a promise");
    }
    const problems = profileProblems(species, path);
    return problems.length > 0 ? { problems } : { species, problems };
  } catch (error) {
    const said = error instanceof Error ? `: ${error.message}` : "";
    return refuse("unknown-species", `a species that the lookup gives; it threw${said}`);
  }
}

/** The id of a form; of one that had another id once, the one it has now. */
function currentForm({ forms = {} }: SpeciesProfile, form: unknown): string | undefined {
  if (typeof form !== "string" || Object.hasOwn(forms, form)) return undefined;
  return Object.keys(forms).find((id) => forms[id]?.once?.includes(form));
}
