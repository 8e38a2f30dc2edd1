import { expect, describe as suite, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { assessPlan, pairPlan, type Verdict } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import { describe } from "../../../src/report";
import { planVerdicts } from "../verdicts";
import { goodPairs } from "./good-pairs";

/** Plans of two that suit each other, everything given. */
const goodPlans: readonly Plan[] = goodPairs.flatMap((ids) => {
  const [a, b] = ids.flatMap((id) => speciesById(id) ?? []);
  return (a && b && pairPlan({ species: a }, { species: b })) ?? [];
});

/** The tank of such a plan is as large as can be: what it weighs is left out. */
const good = goodPlans.map((plan): Verdict => {
  const verdict = assessPlan(plan);
  return { ...verdict, findings: verdict.findings.filter(({ rule }) => rule !== "caution-floor") };
});

/** A report in one line. */
const told = (verdict: Verdict) => describe(verdict).replaceAll(/\s+/g, " ");

/** How many lines of a report are not blank. */
const linesOf = (text: string) => text.split("\n").filter(Boolean).length;

suite("a suitable plan reads as good news", () => {
  test("in some twenty lines, cautions and all", () => {
    expect(good.length).toBeGreaterThan(40);
    const lines = good.map((verdict) => linesOf(describe(verdict))).sort((a, b) => a - b);
    expect(lines[Math.floor(lines.length / 2)]).toBeLessThanOrEqual(21);
    expect(lines.at(-1)).toBeLessThanOrEqual(31);
  });

  test("with what speaks for it first, and no heading", () => {
    for (const verdict of good) {
      expect(told(verdict)).toMatch(/^Suitable: .* - In favour: /);
      expect(describe(verdict, { format: "markdown" })).not.toContain("## ");
    }
  });
});

suite("every report", () => {
  const all = [...good, ...planVerdicts].map((verdict) => ({ verdict, text: told(verdict) }));

  test("says nothing twice", () => {
    for (const { text } of all) {
      const sentences = text
        .split(/(?<=[a-z)]\.)\s+/)
        .map((said) => said.replace(/^- /, ""))
        .filter((said) => said.includes(" "));
      const once = new Set(sentences);
      expect(sentences.filter((said) => !once.delete(said))).toEqual([]);
    }
  });

  test("fills every gap, and speaks of no parties and groups", () => {
    for (const { text } of all) {
      expect(text).not.toMatch(/undefined|NaN|\bparty\b|\bparties\b|group \d|\(\)| [,;.]|\.\.|: -|;\./);
      expect(text).not.toMatch(/at least 1 (?:places|females|males)\b/);
    }
  });

  test("puts no one on an unnamed spine: a loach is no catfish", () => {
    let told = 0;
    for (const { verdict, text } of all) {
      if (verdict.parties.some(({ names }) => names.en?.some((name) => name.includes("catfish")))) continue;
      const families = verdict.findings.flatMap(({ rule, measures = {} }) => {
        const { family } = measures as { readonly family?: { readonly value: string } };
        return rule === "caution-hazards" && family ? family.value : [];
      });
      if (families.length === 0 || !families.every((family) => family === "Botiidae")) continue;
      told += 1;
      expect(text).not.toMatch(/venom|catfish/);
    }
    expect(told).toBeGreaterThan(0);
  });

  const words: Readonly<Record<string, RegExp>> = {
    "caution-floor": /Weight: .*structural engineer/,
    "caution-electricity": /residual-current device.*licensed electrician/,
    "caution-zoonoses": /wash your hands.*doctor.*weak immunity/,
    "caution-release": /Never release .*vet\./,
    "caution-law": /(?:Law: \d+ entr|Law on |Laws name ).*text in force decides/,
    "caution-devices": /bare heater|intake of a pump/,
    venom: /Venom: .*seek medical care at once.*emergency help/,
    spines: /(?:Spines|Venom): .*(?:for a doctor|medical care)/,
    bite: /Bites: .*doctor/,
  };

  test("keeps every caution that protects a person", () => {
    for (const { verdict, text } of all) {
      for (const { rule, measures = {} } of verdict.findings) {
        const { hazard } = measures as { readonly hazard?: { readonly value: string } };
        const expected = words[hazard?.value ?? rule];
        if (expected && rule.startsWith("caution-")) expect(text).toMatch(expected);
      }
    }
  });
});
