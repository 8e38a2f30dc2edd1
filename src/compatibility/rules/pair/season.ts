import { overlap } from "../../../ranges";
import { ownRule } from "../../engine/rule/own-rule";
import { borneSeason } from "../shared/borne-season";

/**
 * Does the other bear the cool season that one needs?
 *
 * Who thrives only with cool months goes without beside what would be too cold then. It bears that, so it is worth knowing
 * of two that share water in the other months.
 */
export const season = /* @__PURE__ */ ownRule({
  id: "season",
  way: "each-way",
  between: "two-species",
  uses: { from: ["water.coolSeason"] },
  tells: { from: ["water.temperature"], to: ["water.temperature"] },
  mayYield: ["advisory"],
  measures: { season: "degC", to: "degC" },
  judge: ({ from, to }) => {
    const { "water.coolSeason": needed = "none", "water.temperature": own } = from;
    if (needed === "none") return [];
    const { kept } = to["water.temperature"] ?? {};
    if (kept?.min === undefined || (own && !overlap(own.kept, kept)) || borneSeason(needed, kept.min))
      return [];
    return [{ weight: "advisory", measures: { season: needed, to: kept } }];
  },
});
