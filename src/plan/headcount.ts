import type { Group } from "./plan";

/** How many animals a group has. */
export const headcount = ({ males = 0, females = 0, unsexed = 0, juveniles = 0 }: Group): number =>
  males + females + unsexed + juveniles;
