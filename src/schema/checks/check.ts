import type { Problem } from "../../errors";

/** Looks for what the shape of a file cannot tell. Sees the file as it came, whatever else is wrong with it. */
export type Check = (file: Readonly<Record<string, unknown>>) => readonly Problem[];
