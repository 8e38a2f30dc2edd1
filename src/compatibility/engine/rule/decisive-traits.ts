import { remembered } from "../../../made-once";
import { essentialTraits, type TraitPath } from "../../../species";
import type { Rule } from "./rule";

/** Traits that leave the answer undetermined where nobody knows them: essential ones, and those that rules need to rule out. */
export const decisiveTraits = /* @__PURE__ */ remembered((rules: readonly Rule[]): readonly TraitPath[] => [
  ...new Set([...essentialTraits, ...rules.filter(mayRuleOut).flatMap(needed)]),
]);

/** Whether a rule may rule something out. */
export const mayRuleOut = ({ mayYield }: Rule): boolean => mayYield.includes("blocking");

const needed = ({ needs, sums }: Rule): readonly TraitPath[] => [
  ...(needs?.from ?? []),
  ...(needs?.to ?? []),
  ...(sums?.needs ?? []),
];
