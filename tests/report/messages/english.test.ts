import { expect, test } from "vitest";
import { pairRules, planRules } from "../../../src/compatibility";
import { english } from "../../../src/report";
import { traitPaths } from "../../../src/species";

const told = { from: "guppy", to: "platy", measure: () => "9 cm", value: () => "chases" } as const;
const sentence = /^\S.*[.?]$/s;

test("every rule has a sentence for each weight it may have", () => {
  for (const rule of [...pairRules, ...planRules]) {
    for (const weight of rule.mayYield) {
      expect(english.rules[rule.id]({ ...told, weight }), rule.id).toMatch(sentence);
    }
  }
});

test("every fact of a plan has its clause", () => {
  for (const [fact, clause] of Object.entries(english.conditions)) {
    for (const most of [undefined, 0, 1, 3]) {
      const text = clause({ of: "guppy", wanted: "at least 3", choices: ["still", "gentle"], most });
      expect(text, fact).toMatch(/^[a-z\d]/);
      if (most !== undefined || !["group.males", "group.females"].includes(fact)) {
        expect(text, fact).not.toMatch(/undefined/);
      }
    }
  }
});

test("every trait has its name", () => {
  for (const path of traitPaths) expect(english.traits[path]?.length).toBeGreaterThan(1);
});

test("a list is read as a list", () => {
  expect(english.list([])).toBe("");
  expect(english.list(["guppy"])).toBe("guppy");
  expect(english.list(["guppy", "platy", "molly"])).toBe("guppy, platy and molly");
});
