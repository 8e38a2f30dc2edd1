/** A number without the binary error of decimals: the distance from 5.8 to 6.8 is 1. */
export function decimal(value: number): number {
  const millionths = Math.round(value * 1e6) / 1e6;
  const size = Math.abs(value);
  if (size < 1e6 && Math.abs(value - millionths) <= size * binaryError) return millionths;
  return Number(value.toPrecision(12));
}

/** What lies no farther from a number, as a share of it, has the same first 12 digits. */
const binaryError = 4e-13;
