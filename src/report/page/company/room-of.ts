import { floorNeeded, runNeeded } from "../../../compatibility/inner";
import { factAt, type SpeciesProfile } from "../../../species";

/** The least room for so many of a species, as the rules have it; what nobody states is absent. */
export interface LeastRoom {
  /** cm. */
  readonly length?: number;
  /** cm². */
  readonly floor?: number;
}

export function leastRoom(profile: SpeciesProfile, animals: number): LeastRoom {
  const lengths = factAt(profile, "space.baseLength")?.value ?? [];
  const floors = factAt(profile, "space.footprint")?.value ?? [];
  const further = factAt(profile, "space.furtherFootprint")?.value;
  return {
    ...(lengths.length > 0 && { length: runNeeded(lengths, animals) }),
    ...(floors.length > 0 && { floor: floorNeeded(floors, further, animals) }),
  };
}
