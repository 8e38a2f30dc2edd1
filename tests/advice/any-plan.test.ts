import { describe, expect, test } from "vitest";
import {
  entryOrder,
  feedingPlan,
  leastTank,
  remedies,
  setPoint,
  suspects,
  turningPoints,
  whoCouldJoin,
} from "../../src/advice";
import { assessPlan } from "../../src/compatibility";
import type { Plan } from "../../src/plan";
import { describeIn, english } from "../../src/report";
import { german } from "../../src/report/de";
import { numbersIn } from "../compatibility/numbers-in";
import { randomPlans } from "../compatibility/promise";
import { someSpecies } from "../drawn";
import { runs, seedOf } from "../runs";

const plans = randomPlans(runs(5), seedOf(0));

/** What is asked of any plan. */
const asked: Readonly<Record<string, (plan: Plan) => unknown>> = {
  remedies: (plan) => remedies(plan),
  "turning points of the floor": (plan) => turningPoints(plan, { on: "tank.footprint" }),
  "turning points of the number": (plan) => turningPoints(plan, { on: "group.count", of: 0 }),
  "a set point": ({ groups }) => setPoint(groups.map(({ species }) => species)),
  "the least tank": ({ groups }) => leastTank(groups),
  "an order of entry": (plan) => entryOrder(plan),
  "a feeding plan": (plan) => feedingPlan(plan),
  "who could join": (plan) => whoCouldJoin(plan, someSpecies(20, 0)),
  "what is behind signs": (plan) => suspects(plan, ["torn-fins", "gasping", "hiding", "thin"]),
};

describe("any plan gets an answer, whatever its shape and company", () => {
  test.each(Object.entries(asked))("%s", (_, ask) => {
    const answers = plans.map(ask);
    for (const answer of answers) expect(answer).toBeInstanceOf(Object);
    const numbers = answers.flatMap(numbersIn);
    expect(numbers.length).toBeGreaterThan(0);
    expect(numbers.filter((number) => !Number.isFinite(number))).toEqual([]);
  });

  test("and a report without a gap, in every language and unit", () => {
    for (const plan of plans) {
      const [verdict, ways] = [assessPlan(plan), remedies(plan)];
      for (const messages of [english, german])
        for (const units of ["metric", "us", "imperial"] as const)
          expect(describeIn(messages, verdict, { units, remedies: ways })).not.toMatch(
            /undefined|null|NaN|Infinity|\[object/,
          );
    }
  });
});
