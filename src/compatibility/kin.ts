import type { Sex } from "../species";
import type { AssessedParty } from "./party";

/** All animals of one species that are judged together, over the parties it is listed in. */
export interface Kin {
  /** A number that is absent is unknown. */
  readonly count?: number;
  readonly males?: number;
  readonly females?: number;
  /** Whether there may be animals of the sex. */
  readonly mayHave: Readonly<Record<Sex, boolean>>;
}

/** The animals of a party and of others of its species. */
export function kinOf(parties: readonly Omit<AssessedParty, "kin">[]): Kin {
  const [count, males, females] = (["count", "males", "females"] as const).map((name) =>
    sum(parties.map((party) => party[name])),
  );
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
export function mayHave({ sex, males, females }: Omit<AssessedParty, "kin">, wanted: Sex): boolean {
  const counted = wanted === "male" ? males : females;
  if (counted !== undefined) return counted > 0;
  return sex === undefined || sex === wanted;
}

function sum(counts: readonly (number | undefined)[]): number | undefined {
  return counts.reduce(
    (total, count) => (total === undefined || count === undefined ? undefined : total + count),
    0,
  );
}
