import fc from "fast-check";
import { expect, test } from "vitest";
import { solve } from "yalps";
import { mixWater } from "../../../src/advice";
import { runs } from "../../runs";

const figure = fc.integer({ min: 0, max: 30 });
const waters = fc.array(fc.record({ generalHardness: figure, carbonateHardness: figure }), {
  minLength: 1,
  maxLength: 5,
});
const span = fc
  .tuple(figure, fc.integer({ min: 0, max: 8 }))
  .map(([min, width]) => ({ min, max: min + width }));

test("misses by what a linear programme misses by, and has the first water that it has", () => {
  fc.assert(
    fc.property(waters, span, span, (sources, generalHardness, carbonateHardness) => {
      const wanted = { generalHardness, carbonateHardness };
      const mixed = mixWater({ sources, wanted });
      const missed = mixed.outOfReach.reduce((sum, { by }) => sum + Math.abs(by), 0);
      const names = ["generalHardness", "carbonateHardness"] as const;
      const shares = sources.map((source, index) => [
        `share${index}`,
        {
          whole: 1,
          ...(index === 0 && { first: 1 }),
          ...Object.fromEntries(
            names.flatMap((name) => [
              [`${name}Least`, source[name]],
              [`${name}Most`, source[name]],
            ]),
          ),
        },
      ]);
      const misses = names.flatMap((name) => [
        [`${name}Lacks`, { [`${name}Least`]: 1, miss: 1 }],
        [`${name}Exceeds`, { [`${name}Most`]: -1, miss: 1 }],
      ]);
      const constraints = {
        whole: { equal: 1 },
        ...Object.fromEntries(
          names.flatMap((name) => [
            [`${name}Least`, { min: wanted[name].min }],
            [`${name}Most`, { max: wanted[name].max }],
          ]),
        ),
      };
      const variables = Object.fromEntries([...shares, ...misses]);
      const nearest = solve({ direction: "minimize", objective: "miss", constraints, variables });
      fc.pre(nearest.status !== "cycled"); // The library gives up on one programme in some thousands.
      expect(nearest.status).toBe("optimal");
      expect(missed).toBeCloseTo(nearest.result, 6);
      const most = solve({
        direction: "maximize",
        objective: "first",
        constraints: { ...constraints, miss: { max: nearest.result + 1e-7 } },
        variables,
      });
      expect(mixed.shares[0]).toBeCloseTo(most.result, 4);
      expect(mixed.shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    }),
    { numRuns: runs(300) },
  );
});
