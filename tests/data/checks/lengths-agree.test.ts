import { expect, test } from "vitest";
import { lengthsAgree } from "../../../data/checks/lengths-agree";
import { leastRecord } from "../../species/records";
import { foundBy } from "./found";

const measured = (
  kind: "fish" | "shrimp" | "snail" | "frog",
  measure: "TL" | "body" | "shell" | "unstated",
) =>
  foundBy(lengthsAgree, {
    taxonomy: { ...leastRecord.taxonomy, kind },
    size: { adultLength: [{ by: "common-practice", value: 4, as: "usual", measure }] },
  });

test.each([
  ["fish", "TL"],
  ["fish", "unstated"],
  ["shrimp", "body"],
  ["snail", "shell"],
  ["frog", "body"],
] as const)("a %s may be measured by its %s", async (kind, measure) => {
  expect(await measured(kind, measure)).toStrictEqual([]);
});

test.each([
  ["fish", "shell"],
  ["snail", "TL"],
  ["shrimp", "shell"],
] as const)("a %s has no %s to measure", async (kind, measure) => {
  expect(await measured(kind, measure)).toStrictEqual([
    `data/species/danio-rerio.json: the measure ${measure} of a ${kind}`,
  ]);
});
