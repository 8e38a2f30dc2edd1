import { InvalidInputError } from "../../errors";
import type { Plan } from "../../plan";
import { checkedPlan } from "../../plan/inner";
import { type TankBase, tankFloor } from "../../tank";
import { convert } from "../../units";

/** The base with another longest run, in cm: of a rectangle the longer side alone is different, else all of it is scaled. */
export function longer(plan: Plan, run: number): TankBase {
  const { base, unit = "cm" } = plan.tank;
  if (base.shape !== "rectangle") return scaledTo(plan, { run });
  const side = convert(run, "cm", unit);
  return base.length >= base.width ? { ...base, length: side } : { ...base, width: side };
}

/** A floor, cm², or a longest run, cm. */
type Size = { readonly area: number } | { readonly run: number };

/** The first size, from one on and step by step, at which the walls leave the base of a plan a floor; at most what it has. */
export function leastSize(
  plan: Plan,
  of: "area" | "run",
  { from, step }: { readonly from: number; readonly step: number },
): number {
  const { footprint, longestRun } = checkedPlan(plan).floor.nominal;
  const has = of === "area" ? footprint : longestRun;
  let size = from;
  while (size < has && !leavesFloor(plan, of === "area" ? { area: size } : { run: size })) size += step;
  return Math.min(size, has);
}

function leavesFloor(plan: Plan, size: Size): boolean {
  try {
    tankFloor({ ...plan.tank, base: scaledTo(plan, size) });
    return true;
  } catch (error) {
    if (error instanceof InvalidInputError) return false;
    throw error;
  }
}

/** The base in its shape, of a size. */
export function scaledTo(plan: Plan, wanted: Size): TankBase {
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
