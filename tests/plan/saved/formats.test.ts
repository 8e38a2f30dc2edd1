import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { assessPlan } from "../../../src/compatibility";
import { parsePlan, planData } from "../../../src/plan";
import { format, inTodaysFormat } from "../../../src/plan/saved/formats";

test("a plan saved in the first format opens, with every field it has", () => {
  const saved = JSON.parse(readFileSync(new URL("format-1.json", import.meta.url), "utf8"));
  const { plan, renamed } = parsePlan(saved, speciesById);
  expect(renamed).toEqual([
    { path: ["groups", 1, "species"], from: "corydoras-paleatus", to: "hoplisoma-paleatum" },
  ]);
  expect(plan.groups.map(({ species, form }) => [species.id, form])).toEqual([
    ["puntigrus-tetrazona", "long-fin"],
    ["hoplisoma-paleatum", undefined],
  ]);
  const [barbs, catfish] = saved.groups;
  expect(planData(plan)).toEqual({
    ...saved,
    format,
    groups: [barbs, { ...catfish, species: "hoplisoma-paleatum" }],
  });
  expect(assessPlan(plan).parties.map(({ groupId }) => groupId)).toEqual(["barbs", "catfish"]);
});

describe("an older format, were there one", () => {
  /** In the first the lid was a word, in the second the groups were called stock. */
  const formats = {
    today: 3,
    older: {
      1: (saved: { lid?: string }) => ({ ...saved, lid: saved.lid === "closed" }),
      2: ({ stock, ...saved }: { stock?: unknown }) => ({ ...saved, groups: stock }),
    },
  };

  test("is brought up to today's step by step", () => {
    expect(inTodaysFormat({ format: 1, lid: "closed", stock: [] }, formats)).toEqual({
      saved: { lid: true, groups: [] },
      problems: [],
    });
    expect(inTodaysFormat({ format: 2, lid: true, stock: [] }, formats).saved).toEqual({
      lid: true,
      groups: [],
    });
  });

  test("does not change what was saved", () => {
    const saved = Object.freeze({ format: 1, lid: "open", stock: Object.freeze([]) });
    inTodaysFormat(saved, formats);
    expect(saved).toEqual({ format: 1, lid: "open", stock: [] });
  });

  test("is today's where none is said, since it may have been written by hand", () => {
    expect(inTodaysFormat({ lid: true }, formats)).toEqual({ saved: { lid: true }, problems: [] });
  });

  test.each([0, 4, 1.5, -1, "1", null, Number.NaN, "toString", [1]])("%j is none", (given) => {
    expect(inTodaysFormat({ format: given }, formats).problems).toMatchObject([
      { path: ["format"], code: "unknown-format", found: given },
    ]);
  });

  test.each([
    [4, true],
    ...[0, 1.5, 4.5, -1, "1", "4", null, Number.POSITIVE_INFINITY].map((given) => [given, false] as const),
  ] as const)("%j is said to need a later version: %j", (given, isLater) => {
    const [problem] = inTodaysFormat({ format: given }, formats).problems;
    expect(problem?.expected).toMatch(/^the number 1 or 2 or 3/);
    expect(/later version/.test(problem?.expected ?? "")).toBe(isLater);
  });
});
