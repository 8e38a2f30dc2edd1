import { carbonDioxideDomain, carbonDioxide as dissolved } from "../../../water";
import { ownRule } from "../../engine/rule/own-rule";

/** Where the plan does not say how warm it is, °C: a few degrees more or less change little. */
const usual = 25;

/**
 * Do its pH and its carbonate hardness leave the water breathable?
 *
 * In fresh water the two tell how much carbon dioxide is dissolved, unless acids other than carbonic lower the pH. What is
 * harder or more acid than the equation holds for has more than at its limits.
 */
export const carbonDioxide = /* @__PURE__ */ ownRule({
  id: "carbon-dioxide",
  way: "once",
  reads: ["water.temperature", "water.pH", "water.carbonateHardness", "water.salinity"],
  decidesBy: ["carbonDioxide"],
  mayYield: ["advisory"],
  measures: { pH: "pH", hardness: "dH", dissolved: "mg/L", limit: "mg/L" },
  judge: ({ plan, thresholds: { carbonDioxide: limit } }) => {
    const { "water.pH": pH, "water.carbonateHardness": hardness, "water.salinity": salinity } = plan;
    const { "water.temperature": temperature = usual } = plan;
    if (pH === undefined || hardness === undefined || salinity > carbonDioxideDomain.salinity.max) return [];
    const most = dissolved({
      temperature,
      pH: within(pH, carbonDioxideDomain.pH),
      carbonateHardness: within(hardness, carbonDioxideDomain.carbonateHardness),
    });
    if (most <= limit) return [];
    const told = Number(most.toPrecision(2));
    return [{ weight: "advisory", measures: { pH, hardness, dissolved: told, limit }, watchFor: "gasping" }];
  },
});

const within = (value: number, { min, max }: { readonly min: number; readonly max: number }) =>
  Math.min(Math.max(value, min), max);
