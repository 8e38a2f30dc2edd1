import type { defineRule } from "./define-rule";
import { asSound } from "./sound-rule";

/** A rule of the library. That it is complete its tests say, so that no bundle carries the check. */
export const ownRule: typeof defineRule = (rule) => asSound(rule);
