import { type Foods, staplesOf } from "../../compatibility/inner";
import type { Condition, Plan } from "../../plan";
import { speciesOf } from "../../plan/inner";
import { foods } from "../../species/inner";

/** What must hold of one food of a group: of that on which it lives, or of one that it is given beside it. */
export interface Appetite {
  /** The index of the group. */
  readonly of: number;
  readonly conditions: readonly Condition[];
  /** Whether faster ones would take its food unless they are kept from it. */
  readonly isOutpaced: boolean;
  /** The foods that will do; undefined where every food that it takes does. */
  readonly staples?: Foods;
}

/** What is asked for about food, group by group; apart what no food on which the group lives can meet, such as greens. */
export function appetitesOf({ groups }: Plan, asked: readonly Condition[]): readonly Appetite[] {
  return groups.flatMap((group, of): readonly Appetite[] => {
    const conditions = asked.filter(
      (condition) => condition.on === "group.offerings" && (condition.of ?? 0) === of,
    );
    if (conditions.length === 0) return [];
    const staples = staplesOf(speciesOf(group));
    const isOutpaced = conditions.some(mayBeApart);
    if (!staples) return [{ of, conditions, isOutpaced }];
    const besides = conditions.filter((condition) => isForOtherFood(condition, staples));
    const main = conditions.filter((condition) => !besides.includes(condition));
    return [
      { of, conditions: main, isOutpaced, staples },
      ...(besides.length > 0 ? [{ of, conditions: besides, isOutpaced }] : []),
    ];
  });
}

const wordsOf = ({ wanted }: Condition): readonly unknown[] => ("oneOf" in wanted ? wanted.oneOf : []);

const mayBeApart = (condition: Condition): boolean => wordsOf(condition).includes("apart");

/** Whether a condition asks for foods alone, none of which is among some. */
const isForOtherFood = (condition: Condition, some: Foods): boolean =>
  wordsOf(condition).every((word) => foods.some((food) => food === word && !some.includes(food)));
