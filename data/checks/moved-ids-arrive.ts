import { fieldOf } from "../reading/fields";
import { guess } from "../reading/spelling";
import type { Check } from "./check";

export const movedIdsArrive: Check = {
  name: "A moved id arrives at a record in one step",
  find({ files, records }) {
    const ids = new Set<string>(records.map(({ record }) => record.id));
    return files.moved.flatMap(({ path, json }) => {
      const [id, to] = ["id", "to"].map((key) => fieldOf(json, key));
      const problems = [
        ...(ids.has(String(id))
          ? [{ at: ["id"], found: `${id} has a record`, expected: "an id without one" }]
          : []),
        ...(ids.has(String(to))
          ? []
          : [
              {
                at: ["to"],
                found: `goes to ${to}`,
                expected: "the id of a record",
                guess: guess(String(to), ids),
              },
            ]),
      ];
      const mend = "Forward to the id of a record, and only ids that no record has.";
      return problems.map((problem) => ({ file: path, ...problem, mend }));
    });
  },
};
