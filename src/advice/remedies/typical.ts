import type { PlanChange } from "../../compatibility";
import { onceOfEach } from "../../made-once";
import type { Group, Plan } from "../../plan";
import type { SpeciesProfile } from "../../species";

/** Species as if all their individuals were alike, and the way back. */
export interface Typical {
  readonly of: (species: SpeciesProfile) => SpeciesProfile;
  readonly plan: (plan: Plan) => Plan;
  /** The plan with the species as they are. */
  readonly back: (plan: Plan) => Plan;
  /** The change with the species as they are. */
  readonly changeBack: (change: PlanChange) => PlanChange;
}

/** Makes species typical, each once. */
export function typical(): Typical {
  const originals = new Map<SpeciesProfile, SpeciesProfile>();
  const of = onceOfEach((species: SpeciesProfile) => {
    const made = asAlike(species);
    originals.set(made, species);
    return made;
  });
  const backGroup = (group: Group) => ({ ...group, species: originals.get(group.species) ?? group.species });
  return {
    of,
    plan: (plan) => ({ ...plan, groups: plan.groups.map((one) => ({ ...one, species: of(one.species) })) }),
    back: (plan) => ({ ...plan, groups: plan.groups.map(backGroup) }),
    changeBack: ({ add, ...others }) => ({ ...others, ...(add && { add: add.map(backGroup) }) }),
  };
}

const asAlike = (species: SpeciesProfile): SpeciesProfile =>
  Object.freeze({
    ...species,
    temperament: Object.freeze({
      ...species.temperament,
      varies: Object.freeze({ value: false, basis: "common-practice" }),
    }),
  });
