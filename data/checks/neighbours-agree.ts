import { applyForm, splitPath } from "vivary/species";
import type { Check } from "./check";
import { ofCompany } from "./neighbours/company";
import type { Contradiction } from "./neighbours/contradiction";
import { ofFood } from "./neighbours/food";
import { ofRoom } from "./neighbours/room";
import { ofSize } from "./neighbours/size";
import { ofWater } from "./neighbours/water";

const contradictions: readonly Contradiction[] = [...ofCompany, ...ofWater, ...ofRoom, ...ofFood, ...ofSize];

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
