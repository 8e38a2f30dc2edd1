import { applyForm, type Kind, type Listing, type Sex, type SpeciesProfile, type Stage } from "../species";
import type { Temper } from "./choices";
import { headcount } from "./headcount";
import { bySex, type Kin, kinOf, type Numbers } from "./kin";
import type { Group, Party } from "./plan";

/** The animals of a party as rules see them, beside the traits that a rule asks for. */
export interface Animals extends Numbers {
  /** The id of the species. */
  readonly id: string;
  readonly kind: Kind;
  readonly family: string;
  readonly order: string;
  readonly form?: string;
  readonly sex?: Sex;
  readonly stage?: Stage;
  /** Total length in cm. */
  readonly length?: number;
  /** What the individuals are like; as their kind if absent. */
  readonly temper?: Exclude<Temper, "typical">;
  /** Young of it are wanted. */
  readonly raises?: true;
  /** These and the other animals of the species. */
  readonly kin: Kin;
  /** The laws that name the species. */
  readonly listings: readonly Listing[];
}

/** A party checked: its animals, and the profile with the form applied. */
export interface CheckedParty {
  readonly animals: Animals;
  readonly species: SpeciesProfile;
  /** The id that the plan gives the group. */
  readonly groupId?: string;
}

/** Whether two parties are the same animals, by the same profile and under the same name. */
export const isSameParty = (one: CheckedParty, other: CheckedParty): boolean =>
  one === other ||
  (one.species === other.species && one.groupId === other.groupId && areAlike(one.animals, other.animals));

/** Whether two values of plain data say the same. */
function areAlike(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== "object" || typeof other !== "object" || !one || !other) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => areAlike(one[key as keyof object], other[key as keyof object]))
  );
}

/** A party by itself, without the others of its species. */
type LoneParty = Omit<CheckedParty, "animals"> & { readonly animals: Omit<Animals, "kin"> };

/** The parties of a pair. */
export const partiesOf = (parties: readonly Party[]): readonly CheckedParty[] =>
  withKin(parties.map(ofParty));

/** The groups of a plan as parties. */
export const partiesOfGroups = (groups: readonly Group[]): readonly CheckedParty[] =>
  withKin(groups.map(ofGroup));

function ofParty(party: Party): LoneParty {
  const { sex, stage, length, count, temper } = party;
  const sexed = sex && count !== undefined;
  return loneParty(party, {
    ...(sex && { sex }),
    ...(stage && { stage }),
    ...(length !== undefined && { length }),
    ...(count !== undefined && { count }),
    ...tempered(temper),
    ...(sexed && { males: sex === "male" ? count : 0, females: sex === "female" ? count : 0 }),
  });
}

/** Unsexed animals and juveniles leave the number of either sex unknown. */
function ofGroup(group: Group): LoneParty {
  const { id, length, males = 0, females = 0, unsexed = 0, juveniles = 0, temper, raises } = group;
  const count = headcount(group);
  const sexed = unsexed + juveniles === 0;
  const sex = sexed && (males === 0 ? "female" : females === 0 && "male");
  const some = sexed ? undefined : bySex(males, females);
  const party = loneParty(group, {
    count,
    ...(length !== undefined && { length }),
    ...(sex && { sex }),
    ...(some && { some }),
    ...tempered(temper),
    ...(raises && { raises }),
    ...(juveniles === count && { stage: "juvenile" as const }),
    ...(sexed && { males, females }),
  });
  return id === undefined ? party : { groupId: id, ...party };
}

const tempered = (temper: Temper = "typical") => (temper === "typical" ? {} : { temper });

/** The profile of some animals, with their form applied. */
export const speciesOf = ({ species, form }: Pick<Party, "species" | "form">): SpeciesProfile =>
  form === undefined ? species : applyForm(species, form);

type Counted = Omit<Animals, "id" | "kind" | "family" | "order" | "form" | "kin" | "listings">;

function loneParty(given: Pick<Party, "species" | "form">, counted: Counted): LoneParty {
  const species = speciesOf(given);
  const { id, taxonomy, listings = [] } = species;
  const { kind, family, order } = taxonomy;
  const named = { id, kind, family, order, ...(species.form !== undefined && { form: species.form }) };
  return { species, animals: { listings, ...named, ...counted } };
}

/** Tells each party of the others of its species. */
function withKin(parties: readonly LoneParty[]): readonly CheckedParty[] {
  const byId = new Map<string, LoneParty["animals"][]>();
  for (const { animals } of parties) byId.set(animals.id, [...(byId.get(animals.id) ?? []), animals]);
  const kin = new Map([...byId].map(([id, animals]) => [id, kinOf(animals)]));
  return parties.map((party) => ({
    ...party,
    animals: { kin: kin.get(party.animals.id) ?? kinOf([party.animals]), ...party.animals },
  }));
}
