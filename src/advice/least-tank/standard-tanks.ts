import { frozen } from "../../frozen";
import type { TankDimensions } from "../../tank";

/** Length, width, height and the thickness of the glass, cm, outside. */
const sizes = [
  [30, 20, 20, 0.3],
  [40, 25, 25, 0.4],
  [30, 30, 35, 0.4],
  [45, 30, 30, 0.5],
  [50, 30, 30, 0.5],
  [60, 30, 30, 0.5],
  [60, 30, 40, 0.6],
  [60, 45, 45, 0.8],
  [80, 35, 40, 0.6],
  [80, 40, 50, 0.8],
  [90, 45, 45, 0.8],
  [100, 40, 40, 0.8],
  [100, 40, 50, 0.8],
  [100, 50, 50, 1],
  [120, 40, 50, 1],
  [120, 50, 50, 1],
  [120, 60, 60, 1.2],
  [150, 50, 50, 1.2],
  [150, 60, 60, 1.2],
  [160, 60, 60, 1.2],
  [180, 60, 60, 1.5],
  [200, 60, 60, 1.5],
  [200, 70, 70, 1.5],
  [200, 80, 70, 1.5],
  [250, 80, 70, 1.9],
  [250, 100, 70, 1.9],
  [300, 100, 80, 1.9],
  [400, 150, 80, 2.5],
  [500, 200, 100, 3],
] as const;

/**
 * Rectangular tanks as they are commonly sold, and at the end as they are commonly built; outer measures. Common
 * practice, no source: no standard fixes them, and the thickness of the glass differs from maker to maker.
 */
export const standardTanks: readonly TankDimensions[] = /* @__PURE__ */ frozen(
  /* @__PURE__ */ sizes.map(([length, width, height, glass]) => ({
    base: { shape: "rectangle" as const, length, width },
    height,
    measured: "outer" as const,
    glass,
  })),
);
