import { listOf } from "../../checks";
import { ofPart, refusal } from "../../errors";
import { type FloorMeasures, lengthInCm, type TankDimensions, tankFloor, tankGeometry } from "../../tank";

/** A tank to choose from, with what it measures. */
export interface MeasuredTank {
  readonly shape: TankDimensions;
  /** As it was given, cm. */
  readonly floor: FloorMeasures;
  /** As it was given, cm. */
  readonly height: number;
  /** As it was given, L. */
  readonly litres: number;
  /** kg. */
  readonly filledMass: number;
}

/** Tanks to choose from, the smallest floor first, of equal floors the smallest volume; or an InvalidInputError. */
export function bySize(shapes: readonly TankDimensions[]): readonly MeasuredTank[] {
  if (listOf(shapes, "options.shapes").length === 0)
    throw refusal("options.shapes", "at least one tank", shapes, "range");
  return shapes
    .map((shape, index) => ofPart(["options", "shapes", index], () => measured(shape)))
    .sort((one, other) => one.floor.footprint - other.floor.footprint || one.litres - other.litres);
}

function measured(shape: TankDimensions): MeasuredTank {
  const { grossVolume, filledMass } = tankGeometry(shape);
  const height = lengthInCm(shape.height, shape.unit);
  return { shape, floor: tankFloor(shape).nominal, height, litres: grossVolume, filledMass };
}

/** Whether one tank is no longer, wider, higher or larger than another. */
export const fitsInto = (one: MeasuredTank, other: MeasuredTank): boolean =>
  one.floor.longestRun <= other.floor.longestRun &&
  one.floor.width <= other.floor.width &&
  one.floor.footprint <= other.floor.footprint &&
  one.height <= other.height;
