import { InvalidInputError, type Problem } from "../../../errors";
import { remembered } from "../../../made-once";
import type { Rule } from "./rule";
import { isSound } from "./sound-rule";

/**
 * The rules of an assessment, or an {@link InvalidInputError} where they are no list of rules, each once. That one is
 * complete was checked where it was defined.
 */
export const checkedRules = /* @__PURE__ */ remembered((rules: readonly Rule[]): readonly Rule[] => {
  if (!Array.isArray(rules)) {
    throw new InvalidInputError([
      { path: ["rules"], code: "type", expected: "a list of rules", found: rules },
    ]);
  }
  const problems = Array.from(rules, (rule, index): readonly Problem[] => {
    const expected = "a rule of the library, or one that defineRule made";
    return isSound(Object(rule)) ? [] : [{ path: ["rules", index], code: "type", expected, found: rule }];
  }).flat();
  if (problems.length > 0) throw new InvalidInputError(problems);
  const twice = rules.flatMap((rule, index): readonly Problem[] => {
    const first = rules.findIndex(({ id }) => id === rule.id);
    const expected = `another id than that of rules[${first}]`;
    return first === index
      ? []
      : [{ path: ["rules", index, "id"], code: "conflict", expected, found: rule.id }];
  });
  if (twice.length > 0) throw new InvalidInputError(twice);
  return rules;
});
