import { unformatted } from "../formatting";
import type { Check } from "./check";

export const recordsAreFormatted: Check = {
  name: "A record reads as all records do",
  async find({ root }) {
    return (await unformatted(root)).map(({ path: file }) => ({
      file,
      found: "its lines stand otherwise",
      expected: "one statement a line, and the fields in their order",
      mend: "Run npm run format.",
    }));
  },
};
