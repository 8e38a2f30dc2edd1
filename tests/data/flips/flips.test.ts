import { describe, expect, test } from "vitest";
import { flipLine, flipsOf, tellFlips } from "../../../data/flips/flips";
import type { Judgement } from "../../../data/flips/judge";

const judged = (name: string, outcome: Judgement["outcome"], more: Partial<Judgement> = {}): Judgement => ({
  name,
  outcome,
  atBest: outcome,
  atWorst: outcome,
  against: [],
  ...more,
});
const all = (...judgements: readonly Judgement[]) =>
  new Map(judgements.map((judgement) => [judgement.name, judgement]));

describe("the gravest flip comes first", () => {
  const before = all(
    judged("a rule", "conditional", { against: ["restricting flow"] }),
    judged("a bound", "conditional"),
    judged("a step", "suitable"),
    judged("to harm", "suitable"),
    judged("to fine", "unsuitable", { against: ["blocking predation"] }),
    judged("the same", "suitable"),
  );
  const after = all(
    judged("a rule", "conditional", { against: ["restricting ph"] }),
    judged("a bound", "conditional", { atWorst: "unsuitable" }),
    judged("a step", "conditional", { against: ["restricting ph"] }),
    judged("to harm", "unsuitable", { against: ["blocking predation"] }),
    judged("to fine", "suitable"),
    judged("the same", "suitable"),
    judged("a new pair", "suitable"),
  );

  test("in words of old and new, and of the rules that made it", () => {
    expect(flipsOf(before, after).map(flipLine)).toStrictEqual([
      "to fine: unsuitable → suitable; no longer blocking predation",
      "to harm: suitable → unsuitable; now blocking predation",
      "a step: suitable → conditional; now restricting ph",
      "a bound: conditional → conditional (conditional to unsuitable)",
      "a rule: still conditional; now restricting ph; no longer restricting flow",
    ]);
  });

  test("the gravest dozen with their reasons", () => {
    const why = ({ after }: { readonly after: Judgement }) => [`  because of ${after.name}`];
    expect(tellFlips(before, after, why).slice(0, 2)).toStrictEqual([
      "to fine: unsuitable → suitable; no longer blocking predation",
      "  because of to fine",
    ]);
    const many = Array.from({ length: 15 }, (_, index) => `pair ${index}`);
    const told = tellFlips(
      all(...many.map((name) => judged(name, "suitable"))),
      all(...many.map((name) => judged(name, "unsuitable"))),
      why,
    );
    expect(told.filter((line) => line.startsWith("  because"))).toHaveLength(12);
    expect(told).toHaveLength(15 + 12 + 1);
  });

  test("the statement behind a reason is told once", () => {
    const why = ({ after }: { readonly after: Judgement }) => [
      `  because of ${after.name}`,
      "    water.pH: 7",
    ];
    const lines = tellFlips(before, after, why);
    expect(lines.filter((line) => line.startsWith("  because"))).not.toHaveLength(1);
    expect(lines.filter((line) => line === "    water.pH: 7")).toHaveLength(1);
  });

  test("what is new and what is gone is counted", () => {
    expect(tellFlips(before, after).slice(-2)).toStrictEqual([
      "5 of 7 verdicts differ.",
      "1 are new: 1 suitable.",
    ]);
    expect(tellFlips(after, before).at(-1)).toBe("1 are gone.");
  });
});

test("a new name is no flip", () => {
  const renamed = new Map([["a", judged("another name", "suitable")]]);
  expect(flipsOf(new Map([["a", judged("a name", "suitable")]]), renamed)).toStrictEqual([]);
});
