import type { CheckedPlan } from "../checked-plan";
import type { TraitReader } from "./trait-reader";

/** The traits that tell whether company settles. */
export const settlingBy = ["social.settles", "space.zones", "social.group", "predation.eats"] as const;

/** Yes, no, or not known. */
type Certainty = boolean | undefined;

/**
 * Whether a shy party has company that settles it: calm fish in the open water, as many as their kind needs, of which
 * neither eats fish; or enough of its own kind, if that is calm. Unknown where it hangs on a trait that is missing.
 */
export function hasSettlingCompany(
  { parties }: CheckedPlan,
  of: number,
  trait: TraitReader<(typeof settlingBy)[number]>,
): Certainty {
  const settles = (other: number): Certainty => {
    const own = parties[other]?.animals.id === parties[of]?.animals.id;
    return all([
      () => trait(other, "social.settles"),
      () => trait(other, "space.zones")?.some((zone) => zone !== "bottom"),
      () => isShoal(other),
      ...(own ? [] : [() => sparesFish(other), () => sparesFish(of)]),
    ]);
  };
  const isShoal = (other: number): Certainty => {
    const count = parties[other]?.animals.kin.count;
    const group = trait(other, "social.group");
    return group && count !== undefined ? count >= group.least : undefined;
  };
  const sparesFish = (other: number): Certainty =>
    trait(other, "predation.eats")?.every(({ prey }) => prey !== "fish");
  return any(byName(parties).map((other) => () => settles(other)));
}

/** The parties' indices in an order of their own: which is asked first, and so what is read, hangs on no plan's order. */
function byName(parties: CheckedPlan["parties"]): readonly number[] {
  const names = parties.map(({ animals: { id, form = "" } }) => `${id} ${form}`);
  return [...names.entries()].sort(([, a], [, b]) => (a < b ? -1 : Number(a > b))).map(([index]) => index);
}

/** No as soon as one says no; the others are not asked. */
function all(questions: readonly (() => Certainty)[]): Certainty {
  let answer: Certainty = true;
  for (const ask of questions) {
    const told = ask();
    if (told === false) return false;
    answer &&= told;
  }
  return answer;
}

/** Yes as soon as one says yes; the others are not asked. */
function any(questions: readonly (() => Certainty)[]): Certainty {
  let answer: Certainty = false;
  for (const ask of questions) {
    const told = ask();
    if (told === true) return true;
    if (told === undefined) answer = undefined;
  }
  return answer;
}
