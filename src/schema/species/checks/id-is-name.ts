import type { Check } from "../../checked";
import { fieldsOf } from "../../fields";

/** The id is the accepted name in lower case, joined by hyphens. */
export const idIsName: Check = (record) => {
  const name = fieldsOf(record.taxonomy).name;
  if (typeof name !== "string") return [];
  const expected = name.toLowerCase().replaceAll(" ", "-");
  return record.id === expected
    ? []
    : [
        {
          path: ["id"],
          code: "conflict",
          found: record.id,
          expected: `"${expected}", from the accepted name`,
          explanation:
            "The accepted name in lower case, words joined by hyphens: correct whichever of the two is misspelt.",
        },
      ];
};
