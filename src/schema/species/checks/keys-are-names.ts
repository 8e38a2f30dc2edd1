import type { Check } from "../../checked";
import { fieldsOf, type Path } from "../../fields";

/** No key that the record chooses itself is `__proto__`, which the schema passes over in silence. */
export const keysAreNames: Check = (record) => {
  const forms = Object.entries(fieldsOf(record.forms)).map(([id, form]): [Path, unknown] => [
    ["forms", id, "names"],
    fieldsOf(form).names,
  ]);
  const chosen = ["names", "identifiers", "sources", "forms"].map((field): [Path, unknown] => [
    [field],
    record[field],
  ]);
  return [...chosen, ...forms].flatMap(([path, held]) =>
    Object.hasOwn(fieldsOf(held), "__proto__")
      ? [{ path: [...path, "__proto__"], code: "word", found: "__proto__", expected: "another key" }]
      : [],
  );
};
