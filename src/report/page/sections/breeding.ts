import type { Kind } from "../../../species";
import { type Cell, list, paragraph, type Section, section } from "../parts";
import { namedAnimal, type Telling } from "../telling";

/** What the young of each kind count as among prey. */
const youngOf: Readonly<Record<Kind, string>> = {
  fish: "fry",
  shrimp: "shrimplet",
  crayfish: "young-crayfish",
  crab: "young-crab",
  snail: "young-snail",
  mussel: "mussel",
  frog: "tadpole",
};

/** Months in steps of half a month, told no later than they are: a reader need not know more closely. */
const halfDown = (months: number) => Math.floor(months * 2) / 2 || months;

/** How it breeds, and what becomes of the young. */
export function breeding({
  profile,
  candidates,
  known,
  messages,
  noted,
  remarks,
  age,
}: Telling): readonly Section[] {
  const { headings, breeding: words, scientific } = messages.page;
  const mode = known("reproduction.mode");
  const from = known("reproduction.breedsFrom");
  const eaten = new Set<string>((known("predation.eats") ?? []).map(({ prey }) => prey));
  const hasEggs = mode === "scatters-eggs" || mode === "guards-eggs" || mode === "bubble-nest";
  const eats = {
    eggs: hasEggs && profile.taxonomy.kind === "fish" && eaten.has("egg"),
    young:
      (hasEggs || mode === "livebearer" || mode === "broods-young") &&
      eaten.has(youngOf[profile.taxonomy.kind]),
  };
  const named = (id: string): Cell => {
    const species = candidates.find((one) => one.id === id);
    return species ? [namedAnimal(species, messages)] : scientific(id);
  };
  return section(
    "breeding",
    headings.breeding,
    paragraph(
      noted("reproduction.mode", mode && words.mode[mode]),
      noted("reproduction.breedsFrom", from !== undefined && words.from(age(halfDown(from)))),
      (eats.eggs || eats.young) && words.eatsOwn(eats.eggs, eats.young),
    ),
    list((known("reproduction.interbreedsWith") ?? []).map(named), words.crosses),
    paragraph(noted("reproduction.interbreedsWith", "")),
    remarks(["reproduction.mode", "reproduction.breedsFrom", "reproduction.interbreedsWith"]),
  );
}
