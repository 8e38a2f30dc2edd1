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
  const [count, males, females] = [
    summed("count", parties),
    summed("males", parties),
    summed("females", parties),
  ];
  return {
    ...(count !== undefined && { count }),
    ...(males !== undefined && { males }),
    ...(females !== undefined && { females }),
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

/** A number of all parties together; unknown where that of one is. */
function summed(name: keyof Numbers, parties: readonly Numbers[]): number | undefined {
  let sum = 0;
  for (const { [name]: number } of parties) {
    if (number === undefined) return undefined;
    sum += number;
  }
  return sum;
}
