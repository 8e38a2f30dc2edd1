// Reads fields of what a file holds before anyone knows that it is well formed.

/** The field of an object, or undefined. */
export const fieldOf = (value: unknown, key: string): unknown =>
  typeof value === "object" && value !== null && Object.hasOwn(value, key)
    ? Reflect.get(value, key)
    : undefined;

/** The fields of an object, or none. */
export const fieldsOf = (value: unknown): readonly (readonly [key: string, held: unknown])[] =>
  typeof value === "object" && value !== null ? Object.entries(value) : [];
