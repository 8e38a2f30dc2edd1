import { type Cell, list, paragraph, type Section, section } from "../parts";
import { namedAnimal, type Telling } from "../telling";

/** How it breeds, and what becomes of the young. */
export function breeding({ candidates, known, messages, noted, remarks, size }: Telling): readonly Section[] {
  const { headings, breeding: words, scientific } = messages.page;
  const mode = known("reproduction.mode");
  const from = known("reproduction.breedsFrom");
  const eaten = new Set((known("predation.eats") ?? []).map(({ prey }) => prey));
  const eatsOwn = mode !== "sea-larvae" && mode !== "mouthbrooder" && (eaten.has("egg") || eaten.has("fry"));
  const hasEggs = mode !== "livebearer" && mode !== "large-young" && eaten.has("egg");
  const named = (id: string): Cell => {
    const species = candidates.find((one) => one.id === id);
    return species ? [namedAnimal(species, messages)] : scientific(id);
  };
  return section(
    "breeding",
    headings.breeding,
    paragraph(
      noted("reproduction.mode", mode && words.mode[mode]),
      noted(
        "reproduction.breedsFrom",
        from !== undefined && words.from(size("reproduction.breedsFrom", from)),
      ),
      eatsOwn && words.eatsOwn(hasEggs, eaten.has("fry")),
    ),
    list((known("reproduction.interbreedsWith") ?? []).map(named), words.crosses),
    paragraph(noted("reproduction.interbreedsWith", "")),
    remarks(["reproduction.mode", "reproduction.breedsFrom", "reproduction.interbreedsWith"]),
  );
}
