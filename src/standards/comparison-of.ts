import type { Measurable, Requirement } from "./jurisdiction";
import { bodyLengths } from "./kinds/body-lengths";
import { frontEdge } from "./kinds/front-edge";
import { hardnessFloor } from "./kinds/hardness-floor";
import { largeFishFloor } from "./kinds/large-fish-floor";
import { leastVolume } from "./kinds/least-volume";
import { noSphere } from "./kinds/no-sphere";
import { ownGroup } from "./kinds/own-group";
import { permit } from "./kinds/permit";
import { shoalers } from "./kinds/shoalers";
import { straightWalls } from "./kinds/straight-walls";
import { summedLitres } from "./kinds/summed-litres";
import { untold } from "./kinds/untold";
import type { Comparison } from "./official-requirement";
import type { SurveyedPlan } from "./surveyed-plan";

/** What a rule of a text about some animals says of a plan; undefined where it is not about it. */
export function comparisonOf(
  rule: Measurable,
  plan: SurveyedPlan,
  covers: Requirement["covers"] = "fish",
): Comparison | undefined {
  switch (rule.kind) {
    case "least-volume":
      return leastVolume(rule, plan);
    case "litres-each-centimetre":
    case "litres-each-fish":
      return summedLitres(rule, plan, covers);
    case "body-lengths":
      return bodyLengths(rule, plan);
    case "large-fish-floor":
      return largeFishFloor(rule, plan);
    case "front-edge":
      return frontEdge(rule, plan);
    case "own-group":
      return ownGroup(rule, plan);
    case "shoalers":
      return shoalers(plan);
    case "hardness-floor":
      return hardnessFloor(rule, plan);
    case "straight-walls":
      return straightWalls(plan);
    case "no-sphere":
      return noSphere(plan);
    case "permit":
      return permit(rule, plan);
    case "untold":
      return untold(rule, plan);
  }
}
