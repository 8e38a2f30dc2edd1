import { standardTanks } from "../../../advice";
import { factAt, type SpeciesProfile } from "../../../species";
import { lengthsMeant } from "../../../species/inner";
import { type TankDimensions, tankFloor } from "../../../tank";

/** How much larger the tank is in which company is sought than the least that a species needs by itself. Common practice. */
const roomForCompany = 1.5;

/** Of a species of which nobody states the room it needs: how many of its lengths the tank is long. Common practice. */
const lengthsOfTank = 8;

/** The smallest standard tank that has the room for some of a species and half as much again for company; undefined where none has. */
export function typicalTank(profile: SpeciesProfile, animals: number): TankDimensions | undefined {
  const grown = lengthsMeant(factAt(profile, "size.adultLength")?.value ?? [], "usual");
  const own = Math.max(...grown.map(({ total }) => total.max));
  const rooms = factAt(profile, "space.baseLength")?.value ?? [];
  const length = (rooms.find((room) => room.for >= animals) ?? rooms.at(-1))?.least ?? lengthsOfTank * own;
  const floors = factAt(profile, "space.footprint")?.value ?? [];
  const stated = floors.find((room) => room.for >= animals) ?? floors.at(-1);
  const further =
    factAt(profile, "space.furtherFootprint")?.value ?? (stated ? stated.least / stated.for : 0);
  const floor = stated ? stated.least + Math.max(0, animals - stated.for) * further : (length * length) / 2.5;
  const height = factAt(profile, "space.height")?.value ?? 0;
  return standardTanks.find((tank) => {
    const { longestRun, footprint, width } = tankFloor(tank).nominal;
    return (
      longestRun >= length && footprint >= roomForCompany * floor && width >= own && tank.height >= height
    );
  });
}
