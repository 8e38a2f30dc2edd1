import type { SizeForGroup, SpeciesProfile } from "vivary/species";
import type { Contradiction } from "./contradiction";

/** The tank it needs. */
export const ofRoom: readonly Contradiction[] = [
  {
    trait: "space.footprint",
    found: "a floor that does not belong to the tank's length",
    expected: "a floor between a fifth of the square of the length and the square itself",
    holds: ({ space }) =>
      sameNumber(space).some(
        ([length, floor]) => floor.least < length.least ** 2 / 5 || floor.least > length.least ** 2,
      ),
    mend: "Correct space.footprint or space.baseLength.",
  },
  {
    trait: "space.footprint",
    found: "a smaller tank for more animals",
    expected: "least rooms that do not shrink as the group grows",
    holds: ({ space }) => [space?.baseLength, space?.footprint].some((rooms) => shrinks(rooms?.value ?? [])),
    mend: "Correct space.footprint or space.baseLength.",
  },
  {
    trait: "space.footprint",
    found: "a length and a floor of the tank for different numbers of animals",
    expected: "one number for which both are stated",
    holds: (profile) =>
      profile.space?.baseLength !== undefined &&
      profile.space.footprint !== undefined &&
      sameNumber(profile.space).length === 0,
    mend: "State space.footprint for the number that space.baseLength is stated for.",
  },
  {
    trait: "space.zones",
    found: "an animal that drowns without air and never comes to the surface",
    expected: "the surface among space.zones where water.airBreathing is obligate",
    holds: ({ water, space }) =>
      water?.airBreathing?.value.kind === "obligate" && space?.zones?.value.includes("surface") === false,
    mend: "Correct space.zones or water.airBreathing.",
  },
  {
    trait: "space.openWater",
    found: "more cover and open water than the plan has room for",
    expected: "shares that come to one at most, space.cover and space.openWater together",
    holds: ({ space }) => (space?.cover?.value ?? 0) + (space?.openWater?.value ?? 0) > 1,
    mend: "Correct space.cover or space.openWater.",
  },
  {
    trait: "space.territory",
    found: "a territory where the animal never is",
    expected: "the zone of space.territory among space.zones",
    holds: ({ space }) => {
      const territory = space?.territory?.value ?? "none";
      return territory !== "none" && space?.zones?.value.includes(territory.zone) === false;
    },
    mend: "Correct space.territory or space.zones.",
  },
  {
    trait: "space.territory",
    found: "a territory of more than twice the floor that it is to have",
    expected: "cm², within space.footprint or little more",
    holds: ({ space }) => {
      const territory = space?.territory?.value ?? "none";
      return territory !== "none" && territory.area > 2 * leastFloor(space).least;
    },
    mend: "Correct space.territory or space.footprint.",
  },
  {
    trait: "space.furtherFootprint",
    found: "for one more animal more floor than the first have, or less than a tenth",
    expected: "at most the share that each has in space.footprint, and no less than a tenth of it",
    holds: ({ space }) => {
      const { least, for: number } = leastFloor(space);
      const share = ((space?.furtherFootprint?.value ?? Number.NaN) * number) / least;
      return share > 1 || share < 0.1;
    },
    mend: "Correct space.furtherFootprint or space.footprint, in cm² both.",
  },
  {
    trait: "space.footprint",
    found: "a tank for fewer animals than live together",
    expected: "a length and a floor stated for as many as social.group.least, or more",
    holds: ({ social, space }) =>
      [space?.baseLength, space?.footprint].some((rooms) =>
        rooms?.value.every((room) => room.for < (social?.group?.value.least ?? 1)),
      ),
    mend: "State the room for the least group too, or correct social.group.",
  },
  {
    trait: "space.baseLength",
    found: "a tank less than four times as long as the animal",
    expected: "a tank in which it can swim and turn",
    holds: ({ size, space }) => leastTank(space) < 4 * shortestUsual(size),
    mend: "Correct space.baseLength or size.adultLength.",
  },
  {
    trait: "size.adultLength",
    found: "a tank more than forty times as long as the animal",
    expected: "a length in cm, or with the unit of the source",
    holds: ({ size, space }) => leastTank(space) > 40 * shortestUsual(size),
    mend: "Look for inches taken for centimetres; state the unit of the source.",
  },
];

/** The least floor with the number of animals that it is for. */
const leastFloor = (space: SpeciesProfile["space"]): SizeForGroup =>
  space?.footprint?.value[0] ?? { least: Number.NaN, for: Number.NaN };

/** Whether of two rooms the one for more animals is smaller. */
const shrinks = (rooms: readonly SizeForGroup[]) =>
  rooms.some((few) => rooms.some((many) => many.for > few.for && many.least < few.least));

/** The lengths of the tank with the floors that are stated for the same number of animals. */
function sameNumber(space: SpeciesProfile["space"]): readonly (readonly [SizeForGroup, SizeForGroup])[] {
  const floors = space?.footprint?.value ?? [];
  return (space?.baseLength?.value ?? []).flatMap((length) =>
    floors.filter((floor) => floor.for === length.for).map((floor) => [length, floor] as const),
  );
}

const leastTank = (space: SpeciesProfile["space"]) => space?.baseLength?.value[0]?.least ?? Number.NaN;

/** The shortest usual length of grown animals, in cm; undefined lengths compare with nothing. */
function shortestUsual(size: SpeciesProfile["size"]): number {
  const usual = (size?.adultLength?.value ?? []).filter(({ as }) => as === "usual");
  return usual.length > 0 ? Math.min(...usual.map(({ length }) => length)) : Number.NaN;
}
