import type { Sex } from "../species";

/** How many animals there are, and of which sex. A number that is absent is unknown. */
export interface Numbers {
  readonly count?: number;
  readonly males?: number;
  readonly females?: number;
}

/** All animals of one species that are judged together, over the parties it is listed in. */
export interface Kin extends Numbers {
  /** Whether there may be animals of the sex. */
  readonly mayHave: Readonly<Record<Sex, boolean>>;
}

/** The animals of several parties of one species together. */
export function kinOf(parties: readonly (Numbers & { readonly sex?: Sex })[]): Kin {
  return {
    ...summed("count", parties),
    ...summed("males", parties),
    ...summed("females", parties),
    mayHave: {
      male: parties.some((party) => mayHave(party, "male")),
      female: parties.some((party) => mayHave(party, "female")),
    },
  };
}

/** Whether a party may have animals of the sex. */
export function mayHave({ sex, males, females }: Numbers & { readonly sex?: Sex }, wanted: Sex): boolean {
  const counted = wanted === "male" ? males : females;
  if (counted !== undefined) return counted > 0;
  return sex === undefined || sex === wanted;
}

function summed(name: keyof Numbers, parties: readonly Numbers[]): Numbers {
  const counts = parties.map((party) => party[name]);
  const known = counts.filter((count) => count !== undefined);
  return known.length === counts.length ? { [name]: known.reduce((sum, count) => sum + count, 0) } : {};
}
