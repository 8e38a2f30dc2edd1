import { feedingPlan } from "../../../src/advice";
import { feedingCompetition } from "../../../src/compatibility/rules/pair/feeding-competition";
import { feeding } from "../../../src/compatibility/rules/plan/feeding";
import type { Group } from "../../../src/plan";
import { animal, type Stated } from "../../compatibility/animals";
import { planOf } from "../../compatibility/judging";

/** Takes dry and live food in open water by day, neither fast nor slow. */
export const plain: Stated = {
  "diet.foods": ["dry", "live"],
  "diet.reach": ["surface", "midwater"],
  "diet.light": ["day"],
  "diet.pace": "ordinary",
};

/** Six of one kind that feeds so, and else plainly. */
export const eater = (id: string, stated: Stated = {}): Group => ({
  species: animal(id, { ...plain, ...stated }),
  unsexed: 6,
});

/** The rules about food. */
export const rules = [feeding, feedingCompetition];
/** How groups are fed in a roomy tank. */
export const fed = (...groups: readonly Group[]) => feedingPlan(planOf(groups), { rules });
