import type { Act } from "../../../species";
import type { ToldAct } from "../../messages/page-messages";

/** What a species does to others: one act a deed, a doer and an occasion, with all on whom it falls. */
export function toldActs(acts: readonly Act[]): readonly ToldAct[] {
  const told = new Map<string, ToldAct>();
  for (const { target, ...act } of acts) {
    const key = keyOf(act);
    const before = told.get(key)?.targets ?? [];
    told.set(key, { ...act, targets: before.includes(target) ? before : [...before, target] });
  }
  return [...told.values()].map((act) => ({ ...act, targets: withoutOwnSex(act.targets) }));
}

/** Whoever harms its whole kind harms its own sex too. */
const withoutOwnSex = (targets: ToldAct["targets"]) =>
  targets.includes("own-kind")
    ? targets.filter((target) => target !== "own-sex" && target !== "other-sex")
    : targets;

const keyOf = ({ does, doer, when, from }: Omit<Act, "target">) =>
  [does, doer, when ?? "always", from].join(" ");

/** Whether a statement is of an act that is told. */
export const isOf = (stated: unknown, act: ToldAct): boolean => isAct(stated) && keyOf(stated) === keyOf(act);

const isAct = (stated: unknown): stated is Act =>
  typeof stated === "object" && stated !== null && "does" in stated;

/** Whether whoever buys it must know: it wounds or kills at any time, or does lasting harm to others than its kind. */
export const isGrave = ({ does, targets, when = "always" }: ToldAct): boolean => {
  if (when !== "always") return false;
  if (does === "kills" || does === "bites") return true;
  const ofKind: readonly string[] = ["own-sex", "other-sex", "own-kind"];
  return (
    (does === "nips-fins" || does === "rasps-mucus") && targets.some((target) => !ofKind.includes(target))
  );
};
