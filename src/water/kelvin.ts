/** A temperature in kelvin, from °C. */
export function kelvin(celsius: number): number {
  return celsius + 273.15;
}
