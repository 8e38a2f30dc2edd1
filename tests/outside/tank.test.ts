import { expect, test } from "vitest";
import { type TankDimensions, tankGeometry } from "vivary/tank";
import { waterDensity } from "vivary/water";
import { readFixture } from "./fixtures/read";

interface Fixture {
  shapes: { rows: { name: string; tank: TankDimensions; area: number; volume: number }[] };
  filled: {
    rows: {
      tank: TankDimensions;
      gross: number;
      inner: number;
      fill: number;
      glassMass: number;
      loadMass: number;
    }[];
  };
}

/** Source, basis and tolerance of each part stand in the fixture. */
const { shapes, filled }: Fixture = JSON.parse(readFixture("tank.json"));

test.each(shapes.rows)("$name", ({ tank, area, volume }) => {
  const found = tankGeometry(tank);
  expect(Math.abs(found.footprint - area)).toBeLessThan(0.0001);
  expect(Math.abs(found.grossVolume - volume)).toBeLessThan(0.0001);
  expect(Math.abs(found.waterVolume - volume)).toBeLessThan(0.0001);
});

test.each(filled.rows)("outer measures with glass: $gross L", ({ tank, ...expected }) => {
  const { waterBelowRim, ...full } = tank;
  const found = tankGeometry(tank);
  expect(Math.abs(found.grossVolume - expected.gross)).toBeLessThan(0.0001);
  expect(Math.abs(tankGeometry(full).waterVolume - expected.inner)).toBeLessThan(0.0001);
  expect(Math.abs(found.waterVolume - expected.fill)).toBeLessThan(0.0001);
  expect(Math.abs(found.filledMass - found.waterMass - expected.glassMass)).toBeLessThan(0.001);

  const gravel = ((found.footprint * 4) / 1000) * 0.997;
  expect(Math.abs(found.filledMass + gravel - expected.loadMass)).toBeLessThan(0.1);
});

test("water counts as fresh at 25 °C: IAPWS-95 gives 0.9970476 kg/L", () => {
  const { waterMass, waterVolume } = tankGeometry({
    base: { shape: "circle", diameter: 40 },
    height: 50,
  });
  expect(Math.abs(waterMass / waterVolume - 0.9970476)).toBeLessThan(0.00001);
  expect(Math.abs(waterMass / waterVolume - waterDensity({ temperature: 25 }))).toBeLessThan(0.00001);
});
