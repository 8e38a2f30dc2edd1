import type { Animals, Kin } from "../../plan";
import { mayHave } from "../../plan/inner";
import type { Act, Sex, TraitValue, Zone } from "../../species";
import { stages } from "../../species/inner";

/** Whether an act of some animals can fall on others, once grown: doer, target and occasion are there. */
export function canHappen(act: Act, from: Animals, to: Animals): boolean {
  return doersMeetTargets(act, from, to) && occasionArises(act, from);
}

/** Whether animals of a kind chase and can be chased: snails and mussels neither. */
export const isOfChase = ({ kind }: Pick<Animals, "kind">): boolean => kind !== "snail" && kind !== "mussel";

/** Whether animals are bullies by themselves. */
export const areBullies = (animals: Pick<Animals, "kind" | "temper">): boolean =>
  animals.temper === "bully" && isOfChase(animals);

/** Whether the animals are too young to do it yet. */
export function notYet({ when, from = ofBrood(when) ? "adult" : "egg" }: Act, { stage }: Animals): boolean {
  return stages.indexOf(stage ?? "adult") < stages.indexOf(from);
}

/**
 * What acts come to, one after the other; of one that is done at any time, if that comes to anything, not when crowded too.
 *
 * @param saysAll - Whether what an act comes to at any time leaves nothing to ask for when crowded; so it does if absent.
 */
export function* comingOf<Answer>(
  acts: readonly Act[],
  answersTo: (act: Act) => readonly Answer[],
  saysAll: (act: Act) => boolean = () => true,
): Generator<Answer, void> {
  let atAnyTime: Act | undefined;
  for (const act of acts) {
    if (act.when === "crowded" && atAnyTime && isSameDeed(act, atAnyTime)) continue;
    const answers = answersTo(act);
    if (act.when === undefined && answers.length > 0 && saysAll(act)) atAnyTime = act;
    yield* answers;
  }
}

const isSameDeed = (one: Act, other: Act): boolean =>
  one.does === other.does &&
  one.target === other.target &&
  one.doer === other.doer &&
  one.from === other.from;

/** Whether an act harms fins or the slime coat: of these, rules of their own say. */
export const harmsFinsOrSkin = ({ does }: Act): boolean => does === "nips-fins" || does === "rasps-mucus";

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

/** Parts of the water, in order of height. */
const heights: readonly Zone[] = ["bottom", "midwater", "surface"];

/**
 * Whether an act reaches where the other lives: a part of the water that both use; for a brood, and where room is short,
 * also the next one.
 */
export const reaches = (
  act: Act,
  mine: readonly Zone[] | undefined,
  theirs: readonly Zone[] | undefined,
): boolean => near(mine, theirs, act.when === "guarding-brood" || act.when === "crowded" ? 1 : 0);

/** When and where an animal is about. */
interface Habits {
  readonly "space.zones"?: readonly Zone[];
  readonly "diet.light"?: TraitValue<"diet.light">;
}

/** Whether an act at any time reaches the other asleep. */
export const reachesAsleep = ({ when = "always" }: Act, from: Habits, to: Habits): boolean =>
  when === "always" && comesUponAsleep(from, to);

/** Whether an animal that is about by night comes upon the other asleep: also in the next part of the water. */
export function comesUponAsleep(from: Habits, to: Habits): boolean {
  const [mine, theirs] = [from["diet.light"], to["diet.light"]];
  const isAbout = !mine || mine.includes("night");
  const sleeps = !theirs?.includes("night");
  return isAbout && sleeps && near(from["space.zones"], to["space.zones"], 1);
}

/** Whether an act at any time reaches another where one of both feeds and the other lives. */
export const reachesFeeding = (
  { when = "always" }: Act,
  reach: readonly Zone[] | undefined,
  zones: readonly Zone[] | undefined,
): boolean => when === "always" && near(reach, zones, 0);

/** Whether two use parts of the water that lie no farther apart. */
function near(mine: readonly Zone[] | undefined, theirs: readonly Zone[] | undefined, far: number): boolean {
  if (!mine || !theirs) return true;
  for (const zone of mine) {
    for (const other of theirs)
      if (Math.abs(heights.indexOf(zone) - heights.indexOf(other)) <= far) return true;
  }
  return false;
}

/** Whether an animal lives on the ground alone. What nobody stated counts as so. */
export const livesOnGround = (zones: readonly Zone[] | undefined): boolean =>
  zones?.every((zone) => zone === "bottom") ?? true;

const otherSex = { male: "female", female: "male" } as const;

/** Whether there may be two of a sex: of those of which some are stated to be of the other, two besides. */
function mayHaveTwo(animals: Animals, sex: Sex): boolean {
  const counted = sex === "male" ? animals.males : animals.females;
  if (counted !== undefined) return counted > 1;
  const { count = Number.POSITIVE_INFINITY, some = {} } = animals.kin;
  return mayHave(animals, sex) && count - (some[otherSex[sex]] ?? 0) > 1;
}

function occasionArises({ when }: Act, { kin }: Animals): boolean {
  return !ofBrood(when) || mayPair(kin);
}

/** Whether there may be a male and a female. */
function mayPair({ count, mayHave }: Kin): boolean {
  return count !== 1 && mayHave.male && mayHave.female;
}
