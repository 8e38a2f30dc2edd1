import { finite, objectOf, oneOf, positive, refusal, whole } from "../errors";
import { applyForm, classes, type Names, type Sex, type SpeciesProfile, type Stage } from "../species";
import { type Kin, kinOf } from "./kin";
import type { Group, Party } from "./plan";

/** A party as rules see it: checked, its form applied. A count that is absent is unknown. */
export interface AssessedParty {
  readonly species: SpeciesProfile;
  readonly form?: string;
  readonly sex?: Sex;
  readonly stage?: Stage;
  /** Total length in cm. */
  readonly length?: number;
  readonly count?: number;
  readonly males?: number;
  readonly females?: number;
  /** It and the other parties of its species. */
  readonly kin: Kin;
}

/** A party by itself. */
type LoneParty = Omit<AssessedParty, "kin">;

/** Tells each party of the others of its species. */
export function withKin(parties: readonly LoneParty[]): readonly AssessedParty[] {
  return parties.map((party) => ({
    ...party,
    kin: kinOf(parties.filter(({ species }) => species.id === party.species.id)),
  }));
}

/** A party as a verdict names it. */
export interface VerdictParty extends Omit<AssessedParty, "species" | "kin"> {
  /** The id of the species. */
  readonly id: string;
  /** The accepted scientific name. */
  readonly name: string;
  /** Vernacular names, of the form if one is stated. */
  readonly names: Names;
}

/** A party checked, with its form applied. */
export function checkedParty(party: Party, at: string): LoneParty {
  const { form, sex, stage, length, count } = objectOf(party, at);
  if (sex !== undefined) oneOf(sex, Object.keys(classes.sex), `${at}.sex`);
  if (stage !== undefined) oneOf(stage, Object.keys(classes.stage), `${at}.stage`);
  const sexed = sex && count !== undefined;
  return {
    species: speciesOf(party, at),
    ...(form !== undefined && { form }),
    ...(sex && { sex }),
    ...(stage && { stage }),
    ...(length !== undefined && { length: positive(length, `${at}.length`) }),
    ...(count !== undefined && { count: whole(count, `${at}.count`, 1) }),
    ...(sexed && { males: sex === "male" ? count : 0, females: sex === "female" ? count : 0 }),
  };
}

/** A group of a plan as a party. Unsexed animals and juveniles leave the number of either sex unknown. */
export function partyOfGroup(group: Group, at: string): LoneParty {
  objectOf(group, at);
  const count = (name: "males" | "females" | "unsexed" | "juveniles") =>
    whole(group[name] ?? 0, `${at}.${name}`, 0);
  const [males, females, unsexed, juveniles] = [
    count("males"),
    count("females"),
    count("unsexed"),
    count("juveniles"),
  ];
  const total = males + females + unsexed + juveniles;
  if (total === 0) throw refusal(at, "at least one animal", 0);
  const sexed = unsexed + juveniles === 0;
  const sex = sexed && (males === 0 ? "female" : females === 0 && "male");
  const { species, form, length, entersOn } = group;
  if (entersOn !== undefined) finite(entersOn, `${at}.entersOn`);
  return {
    species: speciesOf({ species, form }, at),
    count: total,
    ...(form !== undefined && { form }),
    ...(length !== undefined && { length: positive(length, `${at}.length`) }),
    ...(sex && { sex }),
    ...(juveniles === total && { stage: "juvenile" }),
    ...(sexed && { males, females }),
  };
}

/** How a verdict names a party. */
export function verdictParty({ species, kin, ...rest }: AssessedParty): VerdictParty {
  const { id, taxonomy, names, forms } = species;
  const form = rest.form === undefined ? undefined : forms?.[rest.form];
  return { id, name: taxonomy.name, names: { ...names, ...form?.names }, ...rest };
}

function speciesOf({ species, form }: Pick<Party, "species" | "form">, at: string): SpeciesProfile {
  if (typeof species?.id !== "string" || typeof species.taxonomy?.name !== "string") {
    throw refusal(`${at}.species`, "a species profile", species);
  }
  return form === undefined ? species : applyForm(species, form);
}
