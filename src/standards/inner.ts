/** What the schema shares of official requirements; no part of the public surface. */
export type { Jurisdiction } from "./jurisdiction";
