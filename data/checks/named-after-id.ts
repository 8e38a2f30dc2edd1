import { fieldOf } from "../reading/fields";
import type { Check } from "./check";

export const namedAfterId: Check = {
  name: "A file is named after its id",
  find: ({ files: { species, sources, moved } }) =>
    [...species, ...sources, ...moved]
      .map(({ path, name, json }) => ({ path, name, id: fieldOf(json, "id") }))
      .filter(({ name, id }) => id !== undefined && id !== name)
      .map(({ path, name, id }) => ({
        file: path,
        at: ["id"],
        found: `id is ${id}`,
        expected: name,
        mend: "Rename the file or correct the id.",
      })),
};
