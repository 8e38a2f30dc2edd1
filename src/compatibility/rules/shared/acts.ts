import { classes, type Sex, type Stage, type TraitValue as Value } from "../../../species";
import { type Kin, mayHave } from "../../kin";
import type { AssessedParty } from "../../party";

/** One thing an animal does to others. */
export type Act = Value<"temperament.acts">[number];

/** Whether an act of one party can fall on the other, once grown: doer, target and occasion are there. */
export function canHappen(act: Act, from: AssessedParty, to: AssessedParty): boolean {
  return doersMeetTargets(act, from, to) && occasionArises(act, from);
}

/** Whether the party is too young to do it yet. */
export function notYet({ when, from = ofBrood(when) ? "adult" : "egg" }: Act, party: AssessedParty): boolean {
  return stages.indexOf(party.stage ?? "adult") < stages.indexOf(from);
}

/** Whether an act belongs to breeding. */
export const ofBrood = (when: Act["when"]) => when === "breeding" || when === "guarding-brood";

function doersMeetTargets({ doer, target }: Act, from: AssessedParty, to: AssessedParty): boolean {
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

function mayHaveTwo(party: AssessedParty, sex: Sex): boolean {
  const counted = sex === "male" ? party.males : party.females;
  return counted === undefined ? mayHave(party, sex) : counted > 1;
}

const stages = /* @__PURE__ */ Object.keys(classes.stage) as readonly Stage[];

function occasionArises({ when }: Act, from: AssessedParty): boolean {
  return !ofBrood(when) || mayPair(from.kin);
}

/** Whether there may be a male and a female. */
function mayPair({ count, mayHave }: Kin): boolean {
  return count !== 1 && mayHave.male && mayHave.female;
}
