import type { TraitWay } from "../../species";

/** The fields that a statement needs beside its value, by the way in which its trait resolves. */
export const neededFields: Readonly<Record<TraitWay, readonly ("as" | "measure")[]>> = {
  one: [],
  all: [],
  rooms: [],
  figures: ["as"],
  ages: ["as"],
  lengths: ["as", "measure"],
};
