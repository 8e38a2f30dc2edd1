import type { AssessedPlan } from "./assessed-plan";
import type { AssessedParty } from "./party";

/**
 * Whether a shy party has company that settles it: calm fish in the open water, of which neither eats the other.
 * Its own group counts too. Unknown where it hangs on a trait that is missing or disputed.
 */
export function settlingCompany(party: AssessedParty, plan: AssessedPlan): boolean | undefined {
  const answers = plan.parties.map((other) => settles(other, party));
  if (answers.includes(true)) return true;
  return answers.includes(undefined) ? undefined : false;
}

function settles(other: AssessedParty, party: AssessedParty): boolean | undefined {
  if (other !== party && other.species.id === party.species.id) return false;
  const calm = certain(other.species.social?.settles);
  const zones = certain(other.species.space?.zones);
  if (calm === false) return false;
  if (zones?.every((zone) => zone === "bottom")) return false;
  const eaten = other === party ? false : eatsFish(other) || eatsFish(party);
  if (eaten) return false;
  return calm && zones && eaten === false ? (other === party ? shoals(party) : true) : undefined;
}

/** Whether the group is as large as its species needs. */
function shoals({ species, count }: AssessedParty): boolean | undefined {
  const group = certain(species.social?.group);
  return group && count !== undefined ? count >= group.least : undefined;
}

function eatsFish({ species }: AssessedParty): boolean | undefined {
  const eats = certain(species.predation?.eats);
  return eats?.some(({ prey }) => prey === "fish");
}

/** A value nobody disputes. */
function certain<Value>(
  fact: { readonly value: Value; readonly also?: readonly Value[] | undefined } | undefined,
) {
  return fact?.also ? undefined : fact?.value;
}
