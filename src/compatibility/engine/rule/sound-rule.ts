import { frozen } from "../../../frozen";

const sound = /* @__PURE__ */ new WeakSet<object>();

/** A rule that is known to be complete; it cannot be changed any more. */
export function asSound<Made extends object>(rule: Made): Made {
  sound.add(rule);
  return frozen(rule);
}

/** Whether it is a rule that is known to be complete. */
export const isSound = (rule: object): boolean => sound.has(rule);
