import type { Animals, Kin } from "../../plan";
import { mayHave } from "../../plan/inner";
import { type Act, classes, type Sex, type Stage } from "../../species";

/** Whether an act of some animals can fall on others, once grown: doer, target and occasion are there. */
export function canHappen(act: Act, from: Animals, to: Animals): boolean {
  return doersMeetTargets(act, from, to) && occasionArises(act, from);
}

/** Whether the animals are too young to do it yet. */
export function notYet({ when, from = ofBrood(when) ? "adult" : "egg" }: Act, { stage }: Animals): boolean {
  return stages.indexOf(stage ?? "adult") < stages.indexOf(from);
}

/** Whether an act belongs to breeding. */
export const ofBrood = (when: Act["when"]) => when === "breeding" || when === "guarding-brood";

function doersMeetTargets({ doer, target }: Act, from: Animals, to: Animals): boolean {
  const doers: readonly Sex[] = doer ? [doer] : ["male", "female"];
  if (target === "own-sex") {
    return doers.some((sex) =>
      from === to ? mayHaveTwo(from, sex) : mayHave(from, sex) && mayHave(to, sex),
    );
  }
  if (target === "other-sex") return doers.some((sex) => mayHave(from, sex) && mayHave(to, otherSex[sex]));
  return doers.some((sex) => mayHave(from, sex));
}

const otherSex = { male: "female", female: "male" } as const;

function mayHaveTwo(animals: Animals, sex: Sex): boolean {
  const counted = sex === "male" ? animals.males : animals.females;
  return counted === undefined ? mayHave(animals, sex) : counted > 1;
}

const stages = /* @__PURE__ */ Object.keys(classes.stage) as readonly Stage[];

function occasionArises({ when }: Act, { kin }: Animals): boolean {
  return !ofBrood(when) || mayPair(kin);
}

/** Whether there may be a male and a female. */
function mayPair({ count, mayHave }: Kin): boolean {
  return count !== 1 && mayHave.male && mayHave.female;
}
