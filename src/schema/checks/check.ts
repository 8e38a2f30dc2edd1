import type { Problem } from "../problem";

/** Looks for what the shape of a record cannot tell. Sees the record as it came, whatever else is wrong with it. */
export type Check = (record: Readonly<Record<string, unknown>>) => readonly Problem[];
