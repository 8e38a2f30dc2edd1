import { decimal } from "../../../decimal";
import { canHappen, reaches } from "../../animals/acts";
import { grownLength, preyLength } from "../../animals/lengths";
import { defineRule } from "../../engine/rule/define-rule";

/** Long fins are bitten until they are gone; who nips anyone wears out those that are slow or much smaller. */
export const finNipping = /* @__PURE__ */ defineRule({
  id: "fin-nipping",
  question: "Does it bite pieces out of the other's fins?",
  way: "each-way",
  needs: { from: ["temperament.acts", "size.adultLength"], to: ["size.adultLength"] },
  uses: { from: ["space.zones"], to: ["appearance.longFins", "diet.pace", "space.zones"] },
  decidesBy: ["muchSmaller"],
  mayYield: ["blocking", "advisory"],
  judge: ({ from, to, thresholds }) => {
    const sameForm = from.party.id === to.party.id && from.party.form === to.party.form;
    if (sameForm || to.party.kind !== "fish") return [];
    const long = to["appearance.longFins"] ?? true;
    const acts = from["temperament.acts"]
      .filter(({ does }) => does === "nips-fins")
      .filter(({ target }) => target === "any" || (target === "long-finned" && long))
      .filter((nips) => reaches(nips, from["space.zones"], to["space.zones"]))
      .filter((nips) => canHappen(nips, from.party, to.party));
    if (acts.length === 0) return [];
    const always = acts.filter(({ when = "always" }) => when === "always");
    const slow = (to["diet.pace"] ?? "slow") === "slow";
    const length = preyLength(to.party, to["size.adultLength"]) ?? 0;
    const small =
      length < decimal(thresholds.muchSmaller * grownLength(from.party, from["size.adultLength"]));
    const wearsOut = (slow || small) && always.some(({ target }) => target === "any");
    if (wearsOut) return [{ weight: "blocking", watchFor: "torn fins" }];
    if (always.length === 0 || !long) return [{ weight: "advisory", watchFor: "torn fins" }];
    const instead = { on: "group.longFins", of: "to", wanted: { oneOf: [false] } } as const;
    return [{ weight: "blocking", watchFor: "torn fins", instead }];
  },
});
