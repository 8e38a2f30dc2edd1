import { bodyMass } from "vivary/load";
import {
  applyForm,
  type SizeForGroup,
  type SpeciesProfile,
  type StatedValue,
  splitPath,
  type TraitPath,
} from "vivary/species";
import type { Check } from "./check";

interface Contradiction {
  /** The trait at which it is told. */
  readonly trait: TraitPath;
  readonly found: string;
  readonly expected: string;
  readonly holds: (profile: SpeciesProfile) => boolean | undefined;
  readonly mend: string;
}

type Act = Exclude<StatedValue<"temperament.acts">, "none">;

const acrossSexes: readonly Act["target"][] = ["own-kind", "other-sex", "any"];
const allOfItsKind: readonly Act["target"][] = [...acrossSexes, "own-sex"];

/** Whom an animal would kill of those that it lives with; a pair and a harem have one male, who has no rival there. */
const killedIn: Readonly<Record<StatedValue<"social.living">, readonly Act["target"][]>> = {
  alone: [],
  pair: acrossSexes,
  harem: acrossSexes,
  group: allOfItsKind,
  shoal: allOfItsKind,
  either: allOfItsKind,
};

/** Above so many g/kg water is more than a little brackish: the mesohaline class of the Venice System of 1958. */
const freshest = 5;

type Food = StatedValue<"diet.foods">;

/** Foods that a plant eater may live on, and those that a meat eater may. */
const greens: readonly Food[] = ["algae", "plants", "wood", "detritus"];
const meats: readonly Food[] = [
  "frozen",
  "live",
  "plankton",
  "fallen-insects",
  "insects",
  "crustaceans",
  "worms",
  "molluscs",
  "fish",
];

/** What cannot be true together, as a keeper would say it. */
const contradictions: readonly Contradiction[] = [
  {
    trait: "social.group",
    found: "a shoal of fewer than five",
    expected: "a shoaling animal in a group of five or more",
    holds: ({ social }) => social?.living?.value === "shoal" && (social.group?.value.least ?? 5) < 5,
    mend: "Correct social.group or social.living.",
  },
  {
    trait: "social.group",
    found: "an animal that lives alone in a group of several",
    expected: "a least group of one",
    holds: ({ social }) => social?.living?.value === "alone" && (social.group?.value.least ?? 1) > 1,
    mend: "Correct social.group or social.living.",
  },
  {
    trait: "social.group",
    found: "a pair of three or more",
    expected: "a least group of one or two",
    holds: ({ social }) => social?.living?.value === "pair" && (social.group?.value.least ?? 2) > 2,
    mend: "Correct social.group or social.living.",
  },
  {
    trait: "social.largestGroup",
    found: "a largest group smaller than the least",
    expected: "as many as social.group.least, or more",
    holds: ({ social }) => (social?.largestGroup?.value ?? Infinity) < (social?.group?.value.least ?? 0),
    mend: "Correct social.largestGroup or social.group.",
  },
  {
    trait: "water.coolSeason",
    found: "a cool season outside of the water it is kept in",
    expected: "a season within water.temperature as kept",
    holds: ({ water }) => {
      const season = water?.coolSeason?.value ?? "none";
      const kept = water?.temperature?.value.kept;
      if (season === "none" || kept === undefined) return false;
      return (
        (season.max ?? -Infinity) > (kept.max ?? Infinity) ||
        (season.min ?? Infinity) < (kept.min ?? -Infinity)
      );
    },
    mend: "Correct water.coolSeason or water.temperature.",
  },
  {
    trait: "water.flow",
    found: "an air breather in a strong current",
    expected: "an animal that must reach the surface in calmer water",
    holds: ({ water }) =>
      water?.airBreathing?.value.kind === "obligate" && water.flow?.value.max === "strong",
    mend: "Correct water.flow or water.airBreathing.",
  },
  {
    trait: "water.flow",
    found: "a nest of bubbles in moving water",
    expected: "still or gentle water among the currents it is kept in",
    holds: ({ water, reproduction }) =>
      reproduction?.mode?.value === "bubble-nest" &&
      ["moderate", "strong"].includes(water?.flow?.value.min ?? "still"),
    mend: "Correct water.flow or reproduction.mode.",
  },
  {
    trait: "water.flow",
    found: "much oxygen needed in water that only stands still",
    expected: "some current where water.oxygenNeed is high",
    holds: ({ water }) => water?.oxygenNeed?.value === "high" && water.flow?.value.max === "still",
    mend: "Correct water.flow or water.oxygenNeed.",
  },
  {
    trait: "social.settledBy",
    found: "company that settles it, though it is not shy",
    expected: "temperament.shy where social.settledBy is true",
    holds: ({ social, temperament }) => social?.settledBy?.value && temperament?.shy?.value === false,
    mend: "Correct social.settledBy or temperament.shy.",
  },
  {
    trait: "social.settles",
    found: "a calm swimmer of the open water that lives on the ground alone",
    expected: "a zone above the ground where social.settles is true",
    holds: ({ social, space }) =>
      social?.settles?.value && space?.zones?.value.every((zone) => zone === "bottom"),
    mend: "Correct social.settles or space.zones.",
  },
  {
    trait: "diet.type",
    found: "a plant eater that swallows grown fish",
    expected: "another diet than herbivore where predation.eats names fish",
    holds: ({ diet, predation }) =>
      diet?.type?.value === "herbivore" && predation?.eats?.value.some(({ prey }) => prey === "fish"),
    mend: "Correct diet.type or predation.eats.",
  },
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
    trait: "social.group",
    found: "a least group of more than thirty",
    expected: "the fewest that live well together, not the most",
    holds: ({ social }) => (social?.group?.value.least ?? 1) > 30,
    mend: "Correct social.group.",
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
    trait: "temperament.acts",
    found: "an animal that lives with its kind and kills it at any time",
    expected: "an animal that lives alone, or kills only at times",
    holds: ({ social, temperament }) => {
      const killed = killedIn[social?.living?.value ?? "alone"];
      return temperament?.acts?.value.some(
        ({ does, target, when = "always" }) =>
          does === "kills" && when === "always" && killed.includes(target),
      );
    },
    mend: 'Say when it kills, such as "when": "crowded" or "guarding-brood"; or correct temperament.acts or social.living.',
  },
  sparing("fish", "fry", "grown fish eaten, and fry left alone"),
  sparing("fish", "shrimp", "fish eaten, and shrimps left alone"),
  sparing("shrimp", "shrimplet", "grown shrimps eaten, and shrimplets left alone"),
  sparing("snail", "young-snail", "grown snails eaten, and their young left alone"),
  sparing("crayfish", "young-crayfish", "grown crayfish eaten, and their young left alone"),
  sparing("crab", "young-crab", "grown crabs eaten, and their young left alone"),
  sparing("frog", "tadpole", "grown frogs eaten, and tadpoles left alone"),
  {
    trait: "water.generalHardness",
    found: "water of more than 35 °dH",
    expected: "degrees; ppm and mg/L are other units",
    holds: ({ water }) => (water?.generalHardness?.value.kept.max ?? 0) > 35,
    mend: 'Add "unit": "mg/L-CaCO3" where the source says ppm or mg/L.',
  },
  {
    trait: "size.lifespan",
    found: "an age that no animal of its length reaches",
    expected: "years, not months or days",
    holds: ({ size }) => {
      const { greatest, usual } = size?.lifespan?.value ?? {};
      const lengths = (size?.adultLength?.value ?? []).map(({ total }) => total.max);
      return (greatest ?? usual ?? 0) > yearsOfRoot * Math.sqrt(Math.max(...lengths));
    },
    mend: 'Correct size.lifespan; the year is "a", the day "d".',
  },
  {
    trait: "size.lifespan",
    found: "a usual age above the greatest",
    expected: "a usual age no greater than the greatest on record",
    holds: ({ size }) => (size?.lifespan?.value.usual ?? 0) > (size?.lifespan?.value.greatest ?? Infinity),
    mend: "Correct the figure or its unit, or set one of the two aside and say why.",
  },
  {
    trait: "size.grownAt",
    found: "an animal that is grown when it has died",
    expected: "an age when grown within size.lifespan",
    holds: ({ size }) => (size?.grownAt?.value ?? 0) > monthsOfLife(size),
    mend: 'Correct size.grownAt or size.lifespan, or name the unit: the month is "mo", the year "a".',
  },
  {
    trait: "reproduction.breedsFrom",
    found: "an animal that breeds only when half its life is over",
    expected: "a youngest age of breeding within the first half of size.lifespan",
    holds: ({ size, reproduction }) => (reproduction?.breedsFrom?.value ?? 0) > monthsOfLife(size) / 2,
    mend: 'Correct reproduction.breedsFrom or size.lifespan, or name the unit: the month is "mo", the year "a".',
  },
  {
    trait: "water.coolSeason",
    found: "a cool season that is no cooler",
    expected: "a season that ends below the warmest of water.temperature as kept",
    holds: ({ water }) => {
      const season = water?.coolSeason?.value ?? "none";
      const warmest = water?.temperature?.value.kept.max;
      return season !== "none" && warmest !== undefined && season.max === warmest;
    },
    mend: "Correct water.coolSeason or water.temperature.",
  },
  {
    trait: "water.salinity",
    found: "brackish water for an animal of fresh water alone",
    expected: `brackish among origin.waters where it is kept in more than ${freshest} g/kg`,
    holds: ({ origin, water }) =>
      (water?.salinity?.value.kept.max ?? 0) > freshest &&
      origin?.waters?.value.every((one) => one === "fresh"),
    mend: "Correct water.salinity or its unit, or origin.waters.",
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
    trait: "social.largestGroup",
    found: "a largest group that is not how it lives",
    expected: "one that lives alone, two or more of a pair or a harem, three or more of a group or a shoal",
    holds: ({ social }) => {
      const [living, most] = [social?.living?.value, social?.largestGroup?.value];
      if (living === undefined || most === undefined || living === "either") return false;
      return living === "alone" ? most > 1 : most < (living === "pair" || living === "harem" ? 2 : 3);
    },
    mend: "Correct social.largestGroup or social.living.",
  },
  {
    trait: "diet.type",
    found: "a plant eater of whose foods none grows, or a meat eater of whose foods none was alive",
    expected: "among diet.foods what diet.type lives on",
    holds: ({ diet }) => {
      const [type, foods] = [diet?.type?.value, diet?.foods?.value];
      if (foods === undefined) return false;
      const eaten = type === "herbivore" ? greens : type === "carnivore" ? meats : foods;
      return !foods.some((food) => eaten.includes(food));
    },
    mend: "Correct diet.type or diet.foods.",
  },
  {
    trait: "size.lengthWeight",
    found: "a mass of more than five times that of fish of its shape, or less than a fifth",
    expected: "a and b for mass in g of a total length in cm",
    holds: ({ size }) => {
      const [lengthWeight, shape] = [size?.lengthWeight?.value, size?.bodyShape?.value];
      const length = Math.max(...(size?.adultLength?.value ?? []).map(({ total }) => total.max));
      if (lengthWeight === undefined || shape === undefined || !(length > 0)) return false;
      const times = bodyMass({ length, lengthWeight }).typical / bodyMass({ length, shape }).typical;
      return times > 5 || times < 1 / 5;
    },
    mend: "Look for a decimal point that was lost, for mm or kg, or for another outline in size.bodyShape.",
  },
  fedOn("fish", ["fish", "fry"]),
  fedOn("molluscs", ["snail", "young-snail", "mussel"]),
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

/** The months that an animal lives: to the greatest age on record, else to the usual one. */
function monthsOfLife(size: SpeciesProfile["size"]): number {
  const { greatest, usual } = size?.lifespan?.value ?? {};
  return 12 * (greatest ?? usual ?? Number.NaN);
}

/** The least floor with the number of animals that it is for. */
const leastFloor = (space: SpeciesProfile["space"]): SizeForGroup =>
  space?.footprint?.value[0] ?? { least: Number.NaN, for: Number.NaN };

/** An age in years over the root of a length in cm that none here reaches; goldfish come nearest. */
const yearsOfRoot = 6.5;

const leastTank = (space: SpeciesProfile["space"]) => space?.baseLength?.value[0]?.least ?? Number.NaN;

/** The shortest usual length of grown animals, in cm; undefined lengths compare with nothing. */
function shortestUsual(size: SpeciesProfile["size"]): number {
  const usual = (size?.adultLength?.value ?? []).filter(({ as }) => as === "usual");
  return usual.length > 0 ? Math.min(...usual.map(({ length }) => length)) : Number.NaN;
}

type Prey = Exclude<StatedValue<"predation.eats">, "none">["prey"];

/** Somebody who eats one prey, and not what goes down as easily. */
function sparing(eaten: Prey, spared: Prey, found: string): Contradiction {
  return {
    trait: "predation.eats",
    found,
    expected: `${spared} wherever predation.eats names ${eaten}`,
    holds: ({ predation }) => {
      const prey = predation?.eats?.value.map((one) => one.prey) ?? [];
      return prey.includes(eaten) && !prey.includes(spared);
    },
    mend: `Add a line for ${spared}: who swallows ${eaten} swallows it too, and a kind that is not named counts as left alone.`,
  };
}

/** Somebody whose food is alive in the wild, and who leaves it alone among tank mates. */
function fedOn(food: Food, prey: readonly Prey[]): Contradiction {
  return {
    trait: "predation.eats",
    found: `${food} among its foods, and none eaten of its tank mates`,
    expected: `${prey.join(" or ")} wherever diet.foods names ${food}`,
    holds: ({ diet, predation }) =>
      diet?.foods?.value.includes(food) &&
      predation?.eats !== undefined &&
      !predation.eats.value.some((one) => prey.includes(one.prey)),
    mend: "Add a line for what it takes: a kind that is not named counts as left alone; or correct diet.foods.",
  };
}

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
    records.flatMap(({ path, record, profile }) => {
      const own = contradictions.filter(({ holds }) => holds(profile));
      const ofForms = Object.keys(record.forms ?? {}).flatMap((id) => {
        const form = applyForm(profile, id);
        return contradictions
          .filter((contradiction) => !own.includes(contradiction) && contradiction.holds(form))
          .map((contradiction) => ({ contradiction, above: ["forms", id] }));
      });
      return [...own.map((contradiction) => ({ contradiction, above: [] })), ...ofForms].map(
        ({ contradiction: { trait, found, expected, mend }, above }) => ({
          file: path,
          at: [...above, ...splitPath(trait)],
          found,
          expected,
          mend,
        }),
      );
    }),
};
