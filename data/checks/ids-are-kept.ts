import { basename } from "node:path/posix";
import { baseOf, gitOrNothing } from "../reading/history";
import type { Check } from "./check";

export const idsAreKept: Check = {
  name: "An id that once was leads to a record",
  async find({ root, files }) {
    const base = await baseOf(root);
    const listed =
      base && (await gitOrNothing(root, "ls-tree", "--name-only", base, "data/species/", "data/moved/"));
    const known = new Set([...files.species, ...files.moved].map(({ name }) => name));
    return (listed ?? "")
      .split("\n")
      .filter((path) => path.endsWith(".json") && !known.has(basename(path, ".json")))
      .map((path) => ({
        file: path,
        found: `${basename(path, ".json")} leads nowhere any more`,
        expected: "a record of that id, or a file in data/moved",
        mend: "Rename with npm run species rename, which leaves a file in data/moved; saved plans need it.",
      }));
  },
};
