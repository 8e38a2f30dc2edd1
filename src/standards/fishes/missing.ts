import type { Untold } from "../official-requirement";
import { type Fish, idsOf } from "./fish";
import type { LengthName } from "./lengths";

/** That fish whose length is unknown leave something open; nothing where all are known. */
export function missingLength(fish: readonly Fish[], by: LengthName): Untold | undefined {
  const unknown = fish.filter(({ lengths }) => !lengths[by]);
  if (unknown.length === 0) return undefined;
  return { reason: "missing", trait: "size.adultLength", species: idsOf(unknown) };
}
