import { frozen } from "../../../frozen";
import type { defineRule } from "./define-rule";
import type { Rule } from "./rule";

const own = /* @__PURE__ */ new WeakSet<object>();

/** A rule of the library, which passes for one where an app's does not. That it is complete its tests say. */
export const ownRule: typeof defineRule = (rule) => {
  own.add(rule);
  return frozen(rule);
};

export const isOwn = (rule: Rule): boolean => own.has(rule);
