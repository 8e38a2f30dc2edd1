import fc from "fast-check";
import { expect, test } from "vitest";
import { assessPlan } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import type { TraitValue } from "../../../src/species";
import { runs } from "../../runs";
import { eater, fed, rules } from "./eaters";

/** What still speaks against how a plan is fed. */
const hungry = (plan: Plan) =>
  assessPlan(plan, { rules }).findings.filter(({ weight }) => weight === "restricting");

const some = <Word extends string>(...words: readonly Word[]) => fc.subarray([...words], { minLength: 1 });
const diets = fc.record({
  "diet.foods": some("dry", "live", "algae"),
  "diet.reach": some("surface", "midwater", "bottom"),
  "diet.light": some("day", "night"),
  "diet.pace": fc.constantFrom<TraitValue<"diet.pace">>("slow", "ordinary", "fast"),
});
const companies = fc
  .array(diets, { minLength: 1, maxLength: 4 })
  .map((list) => list.map((diet, index) => eater(`eater-${index}`, diet)));

test("whatever they eat, the rules about food have nothing more to ask", () => {
  fc.assert(
    fc.property(companies, (groups) => {
      const { plan, unreached, offerings, groups: told } = fed(...groups);
      expect(unreached).toEqual([]);
      expect(hungry(plan)).toEqual([]);
      for (const [of, { offerings: got }] of told.entries()) {
        expect(got.length).toBeGreaterThan(0);
        for (const index of got) expect(offerings[index]?.reaches).toContain(of);
      }
    }),
    { numRuns: runs(60) },
  );
});

test("no offering can be left out", () => {
  fc.assert(
    fc.property(companies, (groups) => {
      const { offerings } = fed(...groups);
      for (const left of offerings) {
        const others = offerings.filter((one) => one !== left);
        const reached = new Set(others.flatMap(({ reaches }) => reaches));
        expect(reached.size).toBeLessThan(groups.length);
      }
    }),
    { numRuns: runs(60) },
  );
});
