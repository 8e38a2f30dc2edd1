import { canHappen } from "../../animals/acts";
import { defineRule } from "../../engine/rule/define-rule";

export const finNipping = defineRule({
  id: "fin-nipping",
  question: "Does it bite pieces out of the other's fins?",
  way: "each-way",
  needs: { from: ["temperament.acts"] },
  uses: { to: ["appearance.longFins"] },
  mayYield: ["restricting", "advisory"],
  judge: ({ from, to }) => {
    const long = to["appearance.longFins"] ?? true;
    if (from.party.id === to.party.id && from.party.form === to.party.form) return [];
    return from["temperament.acts"]
      .filter(
        ({ does, target }) =>
          does === "nips-fins" && (target === "any" || (target === "long-finned" && long)),
      )
      .filter((act) => canHappen(act, from.party, to.party))
      .slice(0, 1)
      .map(() =>
        long
          ? {
              weight: "restricting",
              watchFor: "torn fins",
              condition: { on: "group.longFins", of: "to", wanted: { oneOf: [false] } },
            }
          : { weight: "advisory", watchFor: "torn fins" },
      );
  },
});
