import type { Lawgiver } from "../../plan";

/** What the places are called where a tank may stand, in the order in which a form offers them. */
export type LawgiverNames = Readonly<Record<Lawgiver, string>>;
