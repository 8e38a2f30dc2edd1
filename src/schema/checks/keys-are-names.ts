import { fieldsOf } from "../walk";
import type { Check } from "./check";

/** No key that the record chooses itself is `__proto__`, which the schema passes over in silence. */
export const keysAreNames: Check = (record) => {
  const forms = Object.entries(fieldsOf(record.forms)).map(
    ([id, form]) => [`forms.${id}.names`, fieldsOf(form).names] as const,
  );
  const chosen = (["names", "identifiers", "sources", "forms"] as const).map(
    (field) => [field, record[field]] as const,
  );
  return [...chosen, ...forms].flatMap(([path, held]) =>
    Object.hasOwn(fieldsOf(held), "__proto__")
      ? [{ path: `${path}.__proto__`, found: "__proto__", expected: "another key" }]
      : [],
  );
};
