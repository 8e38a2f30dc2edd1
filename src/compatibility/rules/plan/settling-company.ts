import { decimal } from "../../../decimal";
import type { Judged } from "../../engine/rule/finding";
import { ownRule } from "../../engine/rule/own-rule";

type Answer = Judged<"restricting" | "advisory", { readonly cover: "1" }> & { readonly about: number };

/**
 * Does calm company in the open water bring it out of hiding?
 *
 * Dense cover settles it too, more slowly; where others need open water, as much cover as that leaves, if it is no less than
 * it needs anyway. Who eats fish is settled by none of another kind: it hides, and more cover than it needs is a help and no
 * need.
 */
export const settlingCompany = /* @__PURE__ */ ownRule({
  id: "settling-company",
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
      const planned = plan["tank.cover"] ?? 0;
      // All are looked at: what is read hangs on no plan's order.
      const open = planned < (needed || 1) ? [] : groups.map((group) => group["space.openWater"] ?? 0);
      const left = decimal(1 - Math.max(0, ...open));
      if (planned >= Math.min(cover, left) && left >= (needed || 1)) return [toKnow];
      const eatsFish = own["predation.eats"]?.some(({ prey }) => prey === "fish");
      if (eatsFish && own["social.settles"] === false) return [toKnow];
      const condition = { on: "group.company", of: "from", wanted: { oneOf: [true] } } as const;
      return [{ ...told, weight: "restricting", condition } as const];
    }),
});
