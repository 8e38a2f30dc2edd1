import { standardTanks } from "../../../advice";
import { factAt, type SpeciesProfile } from "../../../species";
import { lengthsMeant } from "../../../species/inner";
import { type TankDimensions, tankFloor } from "../../../tank";
import { leastRoom } from "./room-of";

/** How much larger the tank is in which company is sought than the least that a species needs by itself. Common practice. */
const roomForCompany = 1.5;

/** Of a species of which nobody states the room it needs: how many of its lengths the tank is long. Common practice. */
const lengthsOfTank = 8;

/**
 * The smallest standard tank that has the room for some of a species and half as much again for company; undefined where
 * none has, and where nobody knows how long the species grows.
 */
export function typicalTank(profile: SpeciesProfile, animals: number): TankDimensions | undefined {
  const lengths = factAt(profile, "size.adultLength")?.value;
  if (!lengths) return undefined;
  const own = Math.max(...lengthsMeant(lengths, "usual").map(({ total }) => total.max));
  const { length = lengthsOfTank * own, floor = 0 } = leastRoom(profile, animals);
  const height = factAt(profile, "space.height")?.value ?? 0;
  return standardTanks.find((tank) => {
    const { longestRun, footprint, width } = tankFloor(tank).inner;
    return (
      longestRun >= length * nearly &&
      footprint >= roomForCompany * floor &&
      width >= own &&
      tank.height >= height
    );
  });
}

/** Lengths are those that tanks are sold by, glass included. */
const nearly = 0.95;
