/** Every number anywhere in a value. */
export function numbersIn(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}
