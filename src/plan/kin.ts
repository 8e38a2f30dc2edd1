import type { Sex } from "../species";

/** How many animals there are, and of which sex. A number that is absent is unknown. */
export interface Numbers {
  readonly count?: number;
  readonly males?: number;
  readonly females?: number;
  /** How many are stated to be of a sex, where nobody says it of the others. */
  readonly some?: Readonly<Partial<Record<Sex, number>>>;
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
  const some = males === undefined || females === undefined ? stated(parties) : undefined;
  return {
    ...(count !== undefined && { count }),
    ...(males !== undefined && { males }),
    ...(females !== undefined && { females }),
    ...(some && { some }),
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

/** How many animals of several parties are stated to be of a sex; undefined where none are. */
function stated(parties: readonly Numbers[]): Numbers["some"] {
  const sum = (sex: Sex) =>
    parties.reduce((before, party) => before + (party[`${sex}s`] ?? party.some?.[sex] ?? 0), 0);
  return bySex(sum("male"), sum("female"));
}

/** Numbers of either sex; undefined where there are none of both. */
export const bySex = (male: number, female: number): Numbers["some"] =>
  male + female > 0 ? { ...(male > 0 && { male }), ...(female > 0 && { female }) } : undefined;

/** A number of all parties together; unknown where that of one is. */
function summed(name: Exclude<keyof Numbers, "some">, parties: readonly Numbers[]): number | undefined {
  let sum = 0;
  for (const { [name]: number } of parties) {
    if (number === undefined) return undefined;
    sum += number;
  }
  return sum;
}
