import type { AssessedPlan } from "./assessed-plan";
import type { AssessedParty } from "./party";

/** Yes, no, or not known. */
type Answer = boolean | undefined;

/**
 * Whether a shy party has company that settles it: calm fish in the open water, as many as their kind needs, of which
 * neither eats fish; or enough of its own kind, if that is calm. Unknown where it hangs on a trait that is missing or disputed.
 */
export function settlingCompany(party: AssessedParty, plan: AssessedPlan): Answer {
  return any(plan.parties.map((other) => settles(other, party)));
}

function settles(other: AssessedParty, party: AssessedParty): Answer {
  const calm = all([certain(other.species.social?.settles), swimsInTheOpen(other)]);
  if (other.species.id === party.species.id) return all([calm, shoals(party)]);
  return all([calm, shoals(other), sparesFish(other), sparesFish(party)]);
}

function swimsInTheOpen({ species }: AssessedParty): Answer {
  return certain(species.space?.zones)?.some((zone) => zone !== "bottom");
}

function sparesFish({ species }: AssessedParty): Answer {
  return certain(species.predation?.eats)?.every(({ prey }) => prey !== "fish");
}

/** Whether there are as many of its kind as it needs, by every source. */
function shoals({ species, kin: { count } }: AssessedParty): Answer {
  const group = species.social?.group;
  if (!group || count === undefined) return undefined;
  const answers = [group.value, ...(group.also ?? [])].map(({ least }) => count >= least);
  return answers.every((enough) => enough === answers[0]) ? answers[0] : undefined;
}

function all(answers: readonly Answer[]): Answer {
  if (answers.includes(false)) return false;
  return answers.includes(undefined) ? undefined : true;
}

function any(answers: readonly Answer[]): Answer {
  if (answers.includes(true)) return true;
  return answers.includes(undefined) ? undefined : false;
}

/** A value nobody disputes. */
export function certain<Value>(
  fact: { readonly value: Value; readonly also?: readonly Value[] | undefined } | undefined,
) {
  return fact?.also ? undefined : fact?.value;
}
