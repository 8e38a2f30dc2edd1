import { decimal } from "../../../decimal";
import type { Animals } from "../../../plan";
import { grown, hunterLength, isYoung, preyLength, roomLength } from "../../animals/lengths";
import { defineRule } from "../../engine/rule/define-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { gravity } from "../../engine/rule/weight";
import { judgeMeal, type Meal, type MealAnswer, type MealMeasures, mealMeasures } from "../shared/meal";

type Hunter = SeenParty<"predation.eats" | "size.adultLength", "diet.light" | "diet.reach">;
type Prey = SeenParty<
  "size.adultLength",
  "size.bodyDepthShare" | "reproduction.mode" | "space.zones" | "care.hazards"
>;
interface Deciding {
  readonly likelyPrey: number;
  readonly possiblePrey: number;
  readonly preyDepth: number;
}

export const predation = defineRule({
  id: "predation",
  question: "Does one eat the other, its young or its eggs?",
  way: "each-way",
  needs: { from: ["predation.eats", "size.adultLength"], to: ["size.adultLength"] },
  uses: {
    from: ["diet.light", "diet.reach"],
    to: ["size.bodyDepthShare", "reproduction.mode", "space.zones"],
  },
  tells: { to: ["care.hazards"] },
  decidesBy: ["likelyPrey", "possiblePrey", "preyDepth", "coverForYoung"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: mealMeasures,
  judge: ({ from, to, thresholds }) => {
    const swallowed = judgeSwallowed(from, to, thresholds);
    if (swallowed && withinReach(from, to)) return [swallowed];
    const young = judgeYoung(from, to, thresholds.coverForYoung);
    return young.length > 0 ? young : judgeEggs(from, to);
  },
});

/** A hunter that feeds at the surface alone does not come down to what never leaves the ground. */
function withinReach({ "diet.reach": reach }: Hunter, { "space.zones": zones }: Prey): boolean {
  const fromAbove = reach?.every((place) => place === "surface");
  const onTheGround = zones?.every((zone) => zone === "bottom");
  return !(fromAbove && onTheGround);
}

/** Prey past the fry stage, at the lengths of today, and at those of grown animals where one has still to grow. */
function judgeSwallowed(from: Hunter, to: Prey, thresholds: Deciding): MealAnswer | undefined {
  const { kind } = to.party;
  const eats = from["predation.eats"].filter(({ prey }) => prey === kind);
  if (eats.length === 0) return undefined;
  const stated = eats.map(({ greatest }) => greatest).filter((length) => length !== undefined);
  const mealOf = (hunter: Animals, prey: Animals): Meal => ({
    hunter: hunterLength(hunter, from["size.adultLength"]),
    hunterIsGrown: !isYoung(hunter),
    prey: preyLength(prey, to["size.adultLength"]),
    preyIsFish: kind === "fish",
    preyReaches: Math.max(hunterLength(grown(prey), to["size.adultLength"]), prey.length ?? 0),
    hunterUsually: roomLength(grown(hunter), from["size.adultLength"]),
    depthShare: () => to["size.bodyDepthShare"],
    greatest: stated.length > 0 ? Math.max(...stated) : undefined,
  });
  const today = mealOf(from.party, to.party);
  const now = judgeMeal(today, thresholds);
  if (!isYoung(from.party) && !isYoung(to.party)) return withSigns(now, from, to);
  const later = mealOf(grown(from.party), grown(to.party));
  const then = judgeMeal(later, thresholds);
  if (gravity[then?.weight ?? "advisory"] > gravity[now?.weight ?? "advisory"])
    return withSigns(then, from, to, outgrown(today, later, thresholds.possiblePrey));
  return withSigns(now, from, to, then ? {} : safeLater(later, thresholds.possiblePrey));
}

/** The hunter's length today, and the one from which it can swallow the grown prey. */
function outgrown(today: Meal, { prey }: Meal, possiblePrey: number): MealMeasures {
  const turnsAt = prey === undefined ? undefined : decimal(prey / possiblePrey);
  return { today: today.hunter, turnsAt };
}

/** The length from which young prey is safe. */
function safeLater({ greatest, hunter }: Meal, possiblePrey: number): MealMeasures {
  return { safeFrom: greatest ?? decimal(possiblePrey * hunter) };
}

/** An answer with what makes it worse: a hunter that comes by night, spines that choke it. */
function withSigns(
  answer: MealAnswer | undefined,
  from: Hunter,
  to: Prey,
  further: MealMeasures = {},
): MealAnswer | undefined {
  if (!answer) return undefined;
  const byNight = from["diet.light"]?.includes("night");
  const spines = to["care.hazards"]?.includes("spines");
  const measures: MealMeasures = {
    ...answer.measures,
    ...further,
    hunts: byNight ? "night" : undefined,
    defence: spines ? "spines" : undefined,
  };
  return { ...answer, measures };
}

/** Young that are born or hatch among the others, and young that are stocked. */
function judgeYoung(from: Hunter, to: Prey, coverForYoung: number): readonly MealAnswer[] {
  const eats = from["predation.eats"].map(({ prey }) => prey);
  const young = to.party.kind === "fish" ? (["fry", "fish"] as const) : (["shrimplet", "shrimp"] as const);
  if (!young.some((prey) => eats.includes(prey))) return [];
  const stocked = to.party.stage === "fry" || to.party.stage === "egg";
  const ownKind = from.party.id === to.party.id;
  if (!stocked && (ownKind || !raisesYoung(to))) return [];
  const condition = { on: "tank.cover", wanted: { min: coverForYoung } } as const;
  return [{ weight: "restricting", condition, watchFor: "eggs or young" }];
}

/** Whether its young are born or hatch complete among the others, small enough to be swallowed. */
function raisesYoung({ party, "reproduction.mode": mode }: Prey): boolean {
  if (party.stage === "juvenile" || party.sex === "male" || party.kin.count === 1) return false;
  if (party.kind === "fish") return mode === undefined || mode === "livebearer";
  return party.kind === "shrimp" && (mode === undefined || mode === "broods-young");
}

/** Guarded eggs are lost at night, when the parents rest and others feed. */
function judgeEggs(from: Hunter, to: Prey): readonly MealAnswer[] {
  const { id, kin } = to.party;
  if (from.party.id === id || kin.count === 1) return [];
  if (!kin.mayHave.male || !kin.mayHave.female) return [];
  if (!from["predation.eats"].some(({ prey }) => prey === "egg")) return [];
  const guards = to["reproduction.mode"] === "guards-eggs";
  if (!guards || !from["diet.light"]?.includes("night")) return [];
  return [{ weight: "advisory", measures: { of: "egg" }, watchFor: "eggs or young" }];
}
