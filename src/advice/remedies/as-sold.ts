import type { PlannedTank } from "../../plan";
import { type FloorMeasures, tankFloor } from "../../tank";
import { convert } from "../../units";
import { standardTanks } from "../least-tank/standard-tanks";

/** By how much the floor of a tank exceeds another at most that is not much larger, as a factor: common practice, no source. */
export const notMuchLarger = 1.5;

const floorOf = (tank: PlannedTank) => tankFloor(tank).nominal.footprint;

/** Whether a tank is much larger than another, by the floor. */
export const isMuchLarger = (tank: PlannedTank, than: PlannedTank): boolean =>
  floorOf(tank) > notMuchLarger * floorOf(than);

/**
 * A tank with each of the standard bases that it could have instead, the least first: as long and as wide as a floor, and not
 * much larger than its own. None in inches and feet, in which tanks are sold by other measures.
 */
export function asSold(
  tank: PlannedTank,
  { longestRun, width }: Pick<FloorMeasures, "longestRun" | "width">,
): readonly PlannedTank[] {
  const { unit = "cm" } = tank;
  if (unit === "in" || unit === "ft") return [];
  const most = notMuchLarger * floorOf(tank);
  const sized = (cm: number) => convert(cm, "cm", unit);
  return standardTanks
    .flatMap(({ base }) => (base.shape === "rectangle" ? [base] : []))
    .filter((sold) => sold.length >= longestRun && sold.width >= width)
    .filter((sold) => sold.length * sold.width <= most)
    .sort((one, other) => one.length * one.width - other.length * other.width)
    .map((sold) => ({ ...tank, base: { ...sold, length: sized(sold.length), width: sized(sold.width) } }));
}
