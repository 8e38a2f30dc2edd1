import type { Act } from "../../../species";
import type { ToldAct } from "../../messages/page-messages";
import type { Telling } from "../telling";

/** What a species does to others: one act a deed, a doer and an occasion, with all on whom it falls. */
export function toldActs(acts: readonly Act[]): readonly ToldAct[] {
  const told = new Map<string, ToldAct>();
  for (const { target, ...act } of acts) {
    const key = [act.does, act.doer, act.when, act.from].join(" ");
    const before = told.get(key)?.targets ?? [];
    told.set(key, { ...act, targets: before.includes(target) ? before : [...before, target] });
  }
  return [...told.values()];
}

/** Whether it wounds or kills others than its own kind, outside the care of its brood. */
export const graveActs = ({ known }: Telling): boolean =>
  (known("temperament.acts") ?? []).some(
    ({ does, target, when = "always" }) =>
      (does === "kills" || does === "bites") &&
      !["own-sex", "other-sex", "own-kind"].includes(target) &&
      when === "always",
  );
