import { fieldOf } from "../fields";
import type { Check } from "./check";

export const movedIdsArrive: Check = {
  name: "A moved id arrives at a record in one step",
  find({ files, records }) {
    const ids = new Set<unknown>(records.map(({ record }) => record.id));
    return files.moved.flatMap(({ path, json }) => {
      const [id, to] = ["id", "to"].map((key) => fieldOf(json, key));
      const problems = [
        ...(ids.has(id) ? [{ found: `${id} has a record`, expected: "an id without one" }] : []),
        ...(ids.has(to) ? [] : [{ found: `goes to ${to}`, expected: "the id of a record" }]),
      ];
      const mend = "Forward to the id of a record, and only ids that no record has.";
      return problems.map((problem) => ({ where: path, ...problem, mend }));
    });
  },
};
