import { isObject } from "../is-object";

/** Where something stands in a file. */
export type Path = readonly (string | number)[];

/** An object by what it holds. */
export type Fields = Readonly<Record<string, unknown>>;

/** The fields of an object; none of anything else. */
export const fieldsOf = (value: unknown): Fields => (isObject(value) ? value : {});
