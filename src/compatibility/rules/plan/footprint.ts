import { decimal } from "../../../decimal";
import { grownLength } from "../../animals/lengths";
import { floorNeeded } from "../../animals/room";
import { besideWanted, wantedBy, wantedKin } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";
import { isNearlyEnough } from "../shared/nearly-enough";

/**
 * Is the floor large enough for the group, and wide enough to turn?
 *
 * Grown, and as many as belong together: a floor far too small is refused, and so is a tank narrower than the animal is
 * long, in which it cannot turn; to one as supple as an eel a part of its length will do. A floor that is hardly too small
 * is worth knowing.
 */
export const footprint = /* @__PURE__ */ ownRule({
  id: "footprint",
  way: "each-group",
  needs: { from: ["space.footprint", "size.adultLength"] },
  uses: { from: /* @__PURE__ */ besideWanted("space.furtherFootprint", "size.bodyShape") },
  mayAdd: wantedBy,
  reads: ["tank.footprint", "tank.width"],
  decidesBy: ["farTooSmall", "nearlyWide", "bendingRoom"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: { needed: "cm2", planned: "cm2", length: "cm", width: "cm" },
  judge: ({ from, plan, thresholds }) => {
    const { count } = wantedKin(from);
    const needed = Math.round(floorNeeded(from["space.footprint"], from["space.furtherFootprint"], count));
    const planned = plan["tank.footprint"];
    const [length, width] = [grownLength(from.party, from["size.adultLength"]), plan["tank.width"]];
    const turns = from["size.bodyShape"] === "eel-like" ? decimal(thresholds.bendingRoom * length) : length;
    const cannotTurn = turns > width;
    const tooSmall = planned < decimal(thresholds.farTooSmall * needed);
    const measures = { needed, planned };
    const turning = cannotTurn ? [{ weight: "blocking" as const, measures: { length, width } }] : [];
    if (tooSmall) return [...turning, { weight: "blocking", measures }];
    if (isNearlyEnough(planned, needed, thresholds.nearlyWide))
      return [...turning, { weight: "advisory", measures }];
    const condition = { on: "tank.footprint", wanted: { min: needed } } as const;
    return [...turning, { weight: "restricting", measures, condition }];
  },
});
