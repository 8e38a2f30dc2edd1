import { expect, describe as suite, test } from "vitest";
import { describe, reportParts, reportPartsIn } from "../../../src/report";
import { german } from "../../../src/report/de";
import { planVerdicts } from "../verdicts";

const verdicts = planVerdicts.slice(0, 100);
const words = (text: string) =>
  text
    .replaceAll(/\s+|^- /gm, " ")
    .replaceAll(/\s+/g, " ")
    .trim();

suite("the parts of a report", () => {
  test("are what the report says, in its order", () => {
    for (const verdict of verdicts) {
      const told = reportParts(verdict).flatMap(({ title, items }) => [title ?? [], items].flat(2));
      expect(words(told.join(" "))).toBe(words(describe(verdict)));
    }
  });

  test("begin with the answer, end with what they rest on, and each has something to say", () => {
    for (const verdict of verdicts) {
      const parts = reportPartsIn(german, verdict, { units: "us" });
      expect([parts[0]?.part, parts.at(-1)?.part]).toEqual(["answer", "closing"]);
      expect(parts.filter(({ items }) => items.length === 0)).toEqual([]);
      expect(new Set(parts.map(({ part }) => part)).size).toBe(parts.length);
    }
  });
});
