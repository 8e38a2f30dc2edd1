import type { StatedValue } from "vivary/species";
import type { Contradiction } from "./contradiction";

type Food = StatedValue<"diet.foods">;

/** Whether a plant eater may live on a food. */
const isGreen = (food: Food): boolean => ["algae", "plants", "wood", "detritus"].includes(food);

/** Whether a meat eater may; flakes and the like are made of either. */
const isMeat = (food: Food): boolean => food !== "dry" && !isGreen(food);

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

/** What it eats. */
export const ofFood: readonly Contradiction[] = [
  {
    trait: "diet.type",
    found: "a plant eater that swallows grown fish",
    expected: "another diet than herbivore where predation.eats names fish",
    holds: ({ diet, predation }) =>
      diet?.type?.value === "herbivore" && predation?.eats?.value.some(({ prey }) => prey === "fish"),
    mend: "Correct diet.type or predation.eats.",
  },
  sparing("fish", "fry", "grown fish eaten, and fry left alone"),
  sparing("fish", "shrimp", "fish eaten, and shrimps left alone"),
  sparing("shrimp", "shrimplet", "grown shrimps eaten, and shrimplets left alone"),
  sparing("snail", "young-snail", "grown snails eaten, and their young left alone"),
  sparing("crayfish", "young-crayfish", "grown crayfish eaten, and their young left alone"),
  sparing("crab", "young-crab", "grown crabs eaten, and their young left alone"),
  sparing("frog", "tadpole", "grown frogs eaten, and tadpoles left alone"),
  {
    trait: "diet.type",
    found: "a plant eater of whose foods none grows, or a meat eater of whose foods none was alive",
    expected: "among diet.foods what diet.type lives on",
    holds: ({ diet }) => {
      const [type, foods] = [diet?.type?.value, diet?.foods?.value];
      if (type === "herbivore") return foods?.some(isGreen) === false;
      return type === "carnivore" && foods?.some(isMeat) === false;
    },
    mend: "Correct diet.type or diet.foods.",
  },
  fedOn("fish", ["fish", "fry"]),
  fedOn("molluscs", ["snail", "young-snail", "mussel"]),
];
