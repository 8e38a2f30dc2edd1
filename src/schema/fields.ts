/** Where something stands in a file. */
export type Path = readonly (string | number)[];

/** An object by what it holds. */
export type Fields = Readonly<Record<string, unknown>>;

export const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The fields of an object; none of anything else. */
export const fieldsOf = (value: unknown): Fields => (isFields(value) ? value : {});
