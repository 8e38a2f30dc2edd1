import { finite, InvalidInputError, positive } from "../errors";
import { applyForm, type Names, type Sex, type SpeciesProfile, type Stage } from "../species";
import * as classes from "../species/classes";
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
}

/** A party as a verdict names it. */
export interface VerdictParty extends Omit<AssessedParty, "species"> {
  /** The id of the species. */
  readonly id: string;
  /** The accepted scientific name. */
  readonly name: string;
  /** Vernacular names, of the form if one is stated. */
  readonly names: Names;
}

/** A party checked, with its form applied. */
export function assessedParty(party: Party, at: string): AssessedParty {
  const { form, sex, stage, length, count } = party;
  if (sex !== undefined) oneOf(sex, classes.sex, `${at}.sex`);
  if (stage !== undefined) oneOf(stage, classes.stage, `${at}.stage`);
  const sexed = sex && count !== undefined;
  return {
    species: speciesOf(party, at),
    ...(form !== undefined && { form }),
    ...(sex && { sex }),
    ...(stage && { stage }),
    ...(length !== undefined && { length: positive(length, `${at}.length`) }),
    ...(count !== undefined && { count: countOf(count, `${at}.count`, 1) }),
    ...(sexed && { males: sex === "male" ? count : 0, females: sex === "female" ? count : 0 }),
  };
}

/** A group of a plan as a party. Unsexed animals and juveniles leave the number of either sex unknown. */
export function partyOfGroup(group: Group, at: string): AssessedParty {
  const count = (name: "males" | "females" | "unsexed" | "juveniles") =>
    countOf(group[name] ?? 0, `${at}.${name}`, 0);
  const [males, females, unsexed, juveniles] = [
    count("males"),
    count("females"),
    count("unsexed"),
    count("juveniles"),
  ];
  const total = males + females + unsexed + juveniles;
  if (total === 0) throw new InvalidInputError(at, "at least one animal", 0);
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
export function verdictParty({ species, ...rest }: AssessedParty): VerdictParty {
  const { id, taxonomy, names, forms } = species;
  const form = rest.form === undefined ? undefined : forms?.[rest.form];
  return { id, name: taxonomy.name, names: { ...names, ...form?.names }, ...rest };
}

function speciesOf({ species, form }: Pick<Party, "species" | "form">, at: string): SpeciesProfile {
  if (typeof species?.id !== "string" || typeof species.taxonomy?.name !== "string") {
    throw new InvalidInputError(`${at}.species`, "a species profile", species);
  }
  return form === undefined ? species : applyForm(species, form);
}

function countOf(value: unknown, at: string, least: number): number {
  if (Number.isInteger(value) && (value as number) >= least) return value as number;
  throw new InvalidInputError(at, `a whole number of at least ${least}`, value);
}

function oneOf(value: string, of: Readonly<Record<string, string>>, at: string): void {
  if (!Object.hasOwn(of, value))
    throw new InvalidInputError(at, `one of ${Object.keys(of).join(", ")}`, value);
}
