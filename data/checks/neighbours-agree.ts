import type { SizeForGroup, SpeciesProfile } from "vivary/species";
import type { Check } from "./check";

interface Contradiction {
  readonly found: string;
  readonly expected: string;
  readonly holds: (profile: SpeciesProfile) => boolean | undefined;
  readonly mend: string;
}

/** What cannot be true together, as a keeper would say it. */
const contradictions: readonly Contradiction[] = [
  {
    found: "a shoal of fewer than three",
    expected: "a shoaling animal in a group of three or more",
    holds: ({ social }) => social?.living?.value === "shoal" && (social.group?.value.least ?? 3) < 3,
    mend: "Correct social.group or social.living.",
  },
  {
    found: "an animal that lives alone in a group of several",
    expected: "a least group of one",
    holds: ({ social }) => social?.living?.value === "alone" && (social.group?.value.least ?? 1) > 1,
    mend: "Correct social.group or social.living.",
  },
  {
    found: "a pair of three or more",
    expected: "a least group of one or two",
    holds: ({ social }) => social?.living?.value === "pair" && (social.group?.value.least ?? 2) > 2,
    mend: "Correct social.group or social.living.",
  },
  {
    found: "an air breather in a strong current",
    expected: "an animal that must reach the surface in calmer water",
    holds: ({ water }) =>
      water?.airBreathing?.value.kind === "obligate" && water.flow?.value.max === "strong",
    mend: "Correct water.flow or water.airBreathing.",
  },
  {
    found: "a nest of bubbles in moving water",
    expected: "still or gentle water among the currents it is kept in",
    holds: ({ water, reproduction }) =>
      reproduction?.mode?.value === "bubble-nest" &&
      ["moderate", "strong"].includes(water?.flow?.value.min ?? "still"),
    mend: "Correct water.flow or reproduction.mode.",
  },
  {
    found: "much oxygen needed in water that only stands still",
    expected: "some current where water.oxygenNeed is high",
    holds: ({ water }) => water?.oxygenNeed?.value === "high" && water.flow?.value.max === "still",
    mend: "Correct water.flow or water.oxygenNeed.",
  },
  {
    found: "company that settles it, though it is not shy",
    expected: "temperament.shy where social.settledBy is true",
    holds: ({ social, temperament }) => social?.settledBy?.value && temperament?.shy?.value === false,
    mend: "Correct social.settledBy or temperament.shy.",
  },
  {
    found: "a calm swimmer of the open water that lives on the ground alone",
    expected: "a zone above the ground where social.settles is true",
    holds: ({ social, space }) =>
      social?.settles?.value && space?.zones?.value.every((zone) => zone === "bottom"),
    mend: "Correct social.settles or space.zones.",
  },
  {
    found: "a plant eater that swallows grown fish",
    expected: "another diet than herbivore where predation.eats names fish",
    holds: ({ diet, predation }) =>
      diet?.type?.value === "herbivore" && predation?.eats?.value.some(({ prey }) => prey === "fish"),
    mend: "Correct diet.type or predation.eats.",
  },
  {
    found: "a floor that does not belong to the tank's length",
    expected: "a floor between a fifth of the square of the length and the square itself",
    holds: ({ space }) =>
      sameNumber(space).some(
        ([length, floor]) => floor.least < length.least ** 2 / 5 || floor.least > length.least ** 2,
      ),
    mend: "Correct space.footprint or space.baseLength.",
  },
  {
    found: "a smaller tank for more animals",
    expected: "least rooms that do not shrink as the group grows",
    holds: ({ space }) => [space?.baseLength, space?.footprint].some((rooms) => shrinks(rooms?.value ?? [])),
    mend: "Correct space.footprint or space.baseLength.",
  },
  {
    found: "a length and a floor of the tank for different numbers of animals",
    expected: "one number for which both are stated",
    holds: (profile) =>
      profile.space?.baseLength !== undefined &&
      profile.space.footprint !== undefined &&
      sameNumber(profile.space).length === 0,
    mend: "State space.footprint for the number that space.baseLength is stated for.",
  },
];

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

export const neighboursAgree: Check = {
  name: "A fact does not contradict its neighbour",
  find: ({ records }) =>
    records.flatMap(({ path, profile }) =>
      contradictions
        .filter(({ holds }) => holds(profile))
        .map(({ found, expected, mend }) => ({ where: path, found, expected, mend })),
    ),
};
