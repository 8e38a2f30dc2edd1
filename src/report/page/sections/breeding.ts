import type { SpeciesProfile } from "../../../species";
import { type Cell, list, paragraph, type Section, section } from "../parts";
import { namedAnimal, type Telling } from "../telling";

/** How it breeds, and what becomes of the young. */
export function breeding(
  { known, messages, remarks, size }: Telling,
  candidates: readonly SpeciesProfile[],
): readonly Section[] {
  const { headings, breeding: words } = messages.page;
  const mode = known("reproduction.mode");
  const from = known("reproduction.breedsFrom");
  const eaten = new Set((known("predation.eats") ?? []).map(({ prey }) => prey));
  const eatsOwn = mode !== "sea-larvae" && (eaten.has("egg") || eaten.has("fry"));
  const named = (id: string): Cell => {
    const species = candidates.find((one) => one.id === id);
    return species ? namedAnimal(species, messages) : messages.page.scientific(id);
  };
  return section(
    "breeding",
    headings.breeding,
    paragraph(
      mode && words.mode[mode],
      from !== undefined && words.from(size("reproduction.breedsFrom", from)),
      eatsOwn && words.eatsOwn(eaten.has("egg") && mode !== "livebearer", eaten.has("fry")),
    ),
    list((known("reproduction.interbreedsWith") ?? []).map(named), words.crosses),
    remarks(["reproduction.mode", "reproduction.breedsFrom", "reproduction.interbreedsWith"]),
  );
}
