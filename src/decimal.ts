/** A number without the binary error of decimals: the distance from 5.8 to 6.8 is 1. */
export function decimal(value: number): number {
  const millionths = Math.round(value * 1e6) / 1e6;
  if (millionths === value && Math.abs(value) < 1e6) return value; // No more digits than stay.
  return Number(value.toPrecision(12));
}
