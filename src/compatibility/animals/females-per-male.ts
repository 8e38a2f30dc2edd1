import type { Kin } from "../../plan";

/** Whether the plan says of all animals of which sex they are. */
export const areSexed = ({ males, females }: Kin): boolean => males !== undefined && females !== undefined;

/**
 * Females to each male: as many as there are where the plan says of all of which sex they are, else as many as there would be
 * were all others female. Undefined where it states no male.
 */
export function mostFemalesPerMale({ count = 1, males, some }: Kin): number | undefined {
  const stated = males ?? some?.male;
  return stated ? (count - stated) / stated : undefined;
}
