import { expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import { longestRun } from "../../../../src/compatibility/rules/plan/longest-run";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const swimmer = animal("swimmer", { "space.baseLength": [{ least: 80, for: 6 }] });
const inTank = (length: number, width: number, species = swimmer) =>
  planBy(longestRun, [{ species, unsexed: 8 }], {
    tank: { base: { shape: "rectangle", length, width }, height: 40 },
  });

test("a tank as long as is stated is long enough", () => {
  expect(weighed(inTank(80, 35))).toEqual({ findings: [], met: ["restricting"] });
  expect(inTank(71, 35).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "tank.longestRun", wanted: { min: 80 } },
      measures: { needed: { value: 80, unit: "cm" }, planned: { value: 71, unit: "cm" } },
    },
  ]);
});

test("one that is hardly shorter is worth knowing", () => {
  for (const length of [72, 79.9])
    expect(inTank(length, 35)).toMatchObject({
      outcome: "suitable",
      findings: [{ weight: "advisory", measures: { needed: { value: 80 }, planned: { value: length } } }],
    });
});

test("of several stated lengths that for the number of animals counts, or for the next greater one", () => {
  const growing = animal("growing", {
    "space.baseLength": [
      { least: 60, for: 1 },
      { least: 100, for: 6 },
    ],
  });
  const askedFor = (unsexed: number) =>
    planBy(longestRun, [{ species: growing, unsexed }], {
      tank: { base: { shape: "rectangle", length: 50, width: 40 }, height: 40 },
    }).findings.flatMap((finding) => (finding.weight === "restricting" ? [finding.condition] : []));
  expect(askedFor(1)).toMatchObject([{ wanted: { min: 60 } }]);
  for (const many of [2, 6, 20]) expect(askedFor(many)).toMatchObject([{ wanted: { min: 100 } }]);
});

test("the length is that for the number that belongs together", () => {
  const shoal = animal("shoal", {
    "space.baseLength": [
      { least: 60, for: 1 },
      { least: 100, for: 6 },
    ],
    "social.living": "shoal",
    "social.group": { least: 6 },
  });
  const alone = planBy(longestRun, [{ species: shoal, unsexed: 1 }], {
    tank: { base: { shape: "rectangle", length: 80, width: 40 } },
  });
  expect(alone.findings).toMatchObject([{ condition: { wanted: { min: 100 } } }]);
});

test("less than 0.45 of it is far too short: no furnishing helps", () => {
  expect(weighed(inTank(36, 35)).findings).toEqual(["restricting"]);
  expect(inTank(35.9, 35)).toMatchObject({
    outcome: "unsuitable",
    findings: [{ weight: "blocking", measures: { needed: { value: 80 }, planned: { value: 35.9 } } }],
    conditions: [],
  });
});

test("the longer side counts, whichever it is called", () => {
  expect(weighed(inTank(35, 80)).findings).toEqual([]);
});

test("a tank is as long as it is sold: the glass does not count", () => {
  const sold = { base: { shape: "rectangle", length: 80, width: 35 }, height: 40 } as const;
  const tank = { ...sold, measured: "outer", glass: 0.8 } as const;
  expect(weighed(planBy(longestRun, [{ species: swimmer, unsexed: 8 }], { tank })).findings).toEqual([]);
});

test("a bowl is no tank for danios", () => {
  const tank = { base: { shape: "circle", diameter: 30 }, height: 30 } as const;
  expect(planBy(longestRun, [{ species: danioRerio, unsexed: 8 }], { tank }).outcome).toBe("unsuitable");
  expect(inTank(120, 40, danioRerio).outcome).toBe("suitable");
});
