import { decimal } from "../../../decimal";
import type { Judged } from "../../engine/rule/finding";
import { ownRule } from "../../engine/rule/own-rule";

type Answer = Judged<"restricting" | "advisory", { readonly cover: "1" }> & { readonly about: number };

/**
 * Dense cover settles it too, more slowly, as far as the open water leaves it that any of them needs. Who eats fish is
 * settled by none of another kind: it hides, and more cover than it needs anyway is a help and no need.
 */
export const settlingCompany = /* @__PURE__ */ ownRule({
  id: "settling-company",
  question: "Does calm company in the open water bring it out of hiding?",
  way: "all-groups",
  needs: { from: ["social.settledBy"] },
  uses: { from: ["space.cover", "space.openWater", "social.settles", "predation.eats"] },
  reads: ["tank.cover"],
  decidesBy: ["coverInsteadOfCompany"],
  mayYield: ["restricting", "advisory"],
  measures: { cover: "1" },
  judge: ({ groups, plan, thresholds }) =>
    groups.flatMap((own, about): readonly Answer[] => {
      if (!own["social.settledBy"]) return [];
      const needed = own["space.cover"];
      const cover = needed ? decimal(needed * thresholds.coverInsteadOfCompany) : 1;
      const told = { about, measures: { cover }, watchFor: "hiding" } as const;
      const toKnow = { ...told, weight: "advisory" } as const;
      const isDense = plan["tank.cover"] !== undefined && plan["tank.cover"] >= cover;
      // All are looked at: what is read hangs on no plan's order.
      const hindered = (isDense ? groups : []).filter(
        (group) => decimal(cover + (group["space.openWater"] ?? 0)) > 1,
      );
      if (isDense && hindered.length === 0) return [toKnow];
      const eatsFish = own["predation.eats"]?.some(({ prey }) => prey === "fish");
      if (eatsFish && own["social.settles"] === false) return [toKnow];
      const condition = { on: "group.company", of: "from", wanted: { oneOf: [true] } } as const;
      return [{ ...told, weight: "restricting", condition } as const];
    }),
});
