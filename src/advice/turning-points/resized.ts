import type { Plan } from "../../plan";
import { checkedPlan } from "../../plan/inner";
import type { TankBase } from "../../tank";
import { convert } from "../../units";

/** The base with another longest run, in cm: of a rectangle the longer side alone is different, else all of it is scaled. */
export function longer(plan: Plan, run: number): TankBase {
  const { base, unit = "cm" } = plan.tank;
  if (base.shape !== "rectangle") return scaledTo(plan, { run });
  const side = convert(run, "cm", unit);
  return base.length >= base.width ? { ...base, length: side } : { ...base, width: side };
}

/** The base in its shape, so large that it has this floor, cm², or this longest run, cm. */
export function scaledTo(plan: Plan, wanted: { readonly area: number } | { readonly run: number }): TankBase {
  const { footprint, longestRun } = checkedPlan(plan).floor.nominal;
  const times = "area" in wanted ? Math.sqrt(wanted.area / footprint) : wanted.run / longestRun;
  const { base } = plan.tank;
  switch (base.shape) {
    case "rectangle":
      return { ...base, length: base.length * times, width: base.width * times };
    case "circle":
      return { ...base, diameter: base.diameter * times };
    case "sector":
      return { ...base, radius: base.radius * times };
    case "bowed":
      return { ...base, length: base.length * times, width: base.width * times, bow: base.bow * times };
    case "polygon":
      return { ...base, points: base.points.map(([x, y]) => [x * times, y * times] as const) };
  }
}
