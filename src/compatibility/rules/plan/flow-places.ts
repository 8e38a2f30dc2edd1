import type { FactName } from "../../../plan";
import type { FlowClass } from "../../../species";
import { currents, currentsBetween, currentsFrom, currentsUpTo } from "../../../species/inner";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is there a place with a current in which it is at ease?
 *
 * A tank has places: one that is calm enough for it, and one that moves enough.
 */
export const flowPlaces = /* @__PURE__ */ ownRule({
  id: "flow-places",
  way: "each-group",
  needs: { from: ["water.flow"] },
  mayYield: ["restricting"],
  measures: { calmest: "flow", strongest: "flow" },
  judge: ({ from }) => {
    const { min, max } = from["water.flow"];
    const span = currentsBetween(min, max);
    return [
      ...place("tank.flow.calmest", currentsUpTo(max)),
      ...place("tank.flow.strongest", currentsFrom(min)),
    ].map((condition) => ({
      weight: "restricting",
      measures: { calmest: span[0], strongest: span.at(-1) },
      watchFor: "hiding",
      condition,
    }));
  },
});

/** A place that not every tank has. */
const place = (on: FactName, oneOf: readonly FlowClass[]) =>
  oneOf.length === currents.length ? [] : [{ on, wanted: { oneOf } }];
