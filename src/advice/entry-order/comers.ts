import type { Plan } from "../../plan";

/** Animals of one species that move in together, or that are there already. */
export interface Comers {
  /** Indices into the plan's groups. */
  readonly groups: readonly number[];
  /** Whether they live in the tank before the first day. */
  readonly areThere: boolean;
  /** The latest of the days that the plan states for them; absent where it states none. */
  readonly statedDay?: number;
}

/** The groups of a plan, those of one species together, in the order of the plan. */
export function comersOf({ groups }: Plan): readonly Comers[] {
  const bySpecies = new Map<string, number[]>();
  for (const [index, { species, entersOn }] of groups.entries()) {
    const key = `${isThere(entersOn)} ${species.id}`;
    bySpecies.set(key, [...(bySpecies.get(key) ?? []), index]);
  }
  return [...bySpecies.values()].map((together) => {
    const days = together.flatMap((index) => groups[index]?.entersOn ?? []);
    const areThere = days.length > 0 && days.every(isThere);
    return { groups: together, areThere, ...(days.length > 0 && { statedDay: Math.max(...days) }) };
  });
}

const isThere = (entersOn: number | undefined) => entersOn !== undefined && entersOn < 0;

/** The groups of some comers, in the order of the plan. */
export const groupsOf = (comers: readonly Comers[]): readonly number[] =>
  comers.flatMap(({ groups }) => groups).sort((one, other) => one - other);
