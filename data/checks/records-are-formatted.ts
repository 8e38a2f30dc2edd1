import { unformattedOf } from "../writing/formatting";
import type { Check } from "./check";

export const recordsAreFormatted: Check = {
  name: "A record reads as all records do",
  find: ({ files }) =>
    unformattedOf(files.species).map(({ path: file }) => ({
      file,
      found: "its lines stand otherwise",
      expected: "one statement a line, and the fields in their order",
      mend: "Run npm run format.",
    })),
};
