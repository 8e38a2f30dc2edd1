import { InvalidInputError, type Problem } from "../../errors";
import { contains, overlap, type PartialRange } from "../../ranges";
import { statedOf } from "../../ranges/inner";
import { factAt } from "../../species";
import { type CheckedPlan, checkedPlan } from "../checked-plan";
import type { Plan } from "../plan";
import { type FactUnit, factUnits } from "./fact-units";
import { type FactName, groupFacts, isFact, isOfGroup, isWorded, readFact, tankFacts } from "./read-fact";
import type { TraitReader } from "./trait-reader";
import { wordProblems } from "./word-problems";

/** What a fact must be: a number within a span, or one of some words. */
export type Wanted =
  | (PartialRange & { readonly unit?: FactUnit | undefined })
  | { readonly oneOf: readonly (string | boolean)[] };

/** What must hold in a plan. */
export interface Condition {
  /**
   * The fact of the plan. `tank.footprint`, `tank.longestRun` and `tank.height` are of the tank as given, inside or outside
   * the glass; `tankGeometry` tells what is left of its floor inside.
   */
  readonly on: FactName;
  /** The party it is about, an index into the verdict's `parties`; absent: the tank or its water. */
  readonly of?: number | undefined;
  /** Numbers in the fact's unit; of a list, such as offerings, one word that is wanted will do. */
  readonly wanted: Wanted;
}

/**
 * Whether a plan meets a condition, on the adopted facts of its species.
 *
 * @returns `undefined` where the plan does not say, or where it hangs on a trait that is not known.
 * @throws InvalidInputError for what is no plan or no condition, for words or shares that are no answer to its fact, and
 * where the condition is about a group that the plan does not have.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { isMet } from "vivary/plan";
 *
 * const plan = {
 *   tank: { base: { shape: "rectangle", length: 60, width: 30 }, cover: 0.2 },
 *   groups: [{ species: danioRerio, unsexed: 10 }],
 * } as const;
 * isMet({ on: "tank.longestRun", wanted: { min: 80, unit: "cm" } }, plan); // => false
 * isMet({ on: "tank.lid", wanted: { oneOf: [true] } }, plan); // => undefined
 * ```
 */
export function isMet(condition: Condition, plan: Plan): boolean | undefined {
  const checked = checkedPlan(plan);
  refuse(conditionProblems(condition, checked.parties.length));
  refuseWords(condition);
  return holds(condition, checked, adoptedTraits(checked));
}

function refuse(problems: readonly Problem[]): void {
  if (problems.length > 0) throw new InvalidInputError(problems);
}

function refuseWords({ on, wanted }: Condition): void {
  if ("oneOf" in wanted) refuse(wordProblems(on, wanted.oneOf));
}

/** Refuses what {@link isMet} refuses of a condition on a fact that there is, on a plan of so many groups. */
export function refuseBesideFact(condition: Condition, groups: number): void {
  refuse(problemsBesideFact(condition, groups));
  refuseWords(condition);
}

/** Whether a checked plan meets a condition, by traits as they are read. */
export function holds(
  { on, of, wanted }: Condition,
  plan: CheckedPlan,
  trait: TraitReader,
): boolean | undefined {
  const value = readFact(plan, on, of, trait);
  if (value === undefined) return undefined;
  if ("oneOf" in wanted) {
    const found: readonly unknown[] = Array.isArray(value) ? value : [value];
    return wanted.oneOf.some((accepted) => found.includes(accepted));
  }
  return typeof value === "number" && contains(statedOf(wanted), value);
}

/** The values that resolving adopted. */
export const adoptedTraits =
  ({ parties }: CheckedPlan): TraitReader =>
  (of, path) => {
    const party = parties[of];
    return party && factAt(party.species, path)?.value;
  };

/** One condition that meets both, if they are about one fact and something meets both. */
export function jointCondition(a: Condition, b: Condition): Condition | undefined {
  if (a.on !== b.on || a.of !== b.of) return undefined;
  const wanted = jointlyWanted(a.wanted, b.wanted);
  return wanted && { ...a, wanted };
}

function jointlyWanted(a: Wanted, b: Wanted): Wanted | undefined {
  if ("oneOf" in a !== "oneOf" in b) return undefined;
  if ("oneOf" in a && "oneOf" in b) {
    const both = a.oneOf.filter((word) => b.oneOf.includes(word));
    return both.length > 0 ? { oneOf: both } : undefined;
  }
  const shared = overlap(statedOf(a as PartialRange), statedOf(b as PartialRange));
  return shared && { ...a, ...shared };
}

/** What is wrong with a condition on a plan of so many groups. */
export function conditionProblems(condition: Condition, groups: number): readonly Problem[] {
  const { on } = condition ?? {};
  if (!isFact(on)) {
    const names = [...Object.keys(tankFacts), ...Object.keys(groupFacts)];
    return [{ path: ["on"], code: "word", expected: `one of ${names.join(", ")}`, found: on }];
  }
  return problemsBesideFact(condition, groups);
}

/** What is wrong with a condition on a fact that there is. */
function problemsBesideFact({ on, of, wanted }: Condition, groups: number): readonly Problem[] {
  const isIndex = Number.isInteger(of) && Number(of) >= 0 && Number(of) < groups;
  if (isOfGroup(on) ? !isIndex : of !== undefined) {
    const expected = isOfGroup(on)
      ? `the index of one of ${groups} groups`
      : "nothing, since it is about the tank";
    return [{ path: ["of"], code: "range", expected, found: of }];
  }
  return wantedProblems(on, wanted);
}

function wantedProblems(on: FactName, wanted: unknown): readonly Problem[] {
  const { oneOf, min, max, unit } = Object(wanted) as Readonly<Record<string, unknown>>;
  if (isWorded(on)) {
    if (Array.isArray(oneOf) && oneOf.length > 0) return [];
    return [
      { path: ["wanted"], code: "type", expected: "{ oneOf: [...] }, since it is no number", found: wanted },
    ];
  }
  const ends = [min, max].filter((end) => end !== undefined);
  const isShare = factUnits[on] === "1";
  const isAnswer = (end: unknown) =>
    typeof end === "number" && Number.isFinite(end) && (!isShare || (end >= 0 && end <= 1));
  if (ends.length === 0 || !ends.every(isAnswer) || Number(min ?? -Infinity) > Number(max ?? Infinity)) {
    const expected = `a span with an end, such as { min: ${isShare ? 0.6 : 60} }, since it is a number`;
    return [{ path: ["wanted"], code: "type", expected, found: wanted }];
  }
  if (unit === undefined || unit === factUnits[on]) return [];
  return [{ path: ["wanted", "unit"], code: "word", expected: factUnits[on] ?? "no unit", found: unit }];
}
