/** What a statement is by where it is of no source: the word of the trade, and what was weighed from several. */
export const reserved: readonly string[] = ["common-practice", "curator"];
