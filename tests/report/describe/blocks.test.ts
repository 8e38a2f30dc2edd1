import { expect, describe as suite, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import { assessPair, assessPlan, type Verdict } from "../../../src/compatibility";
import { describe, english } from "../../../src/report";
import { pairVerdicts, planVerdicts } from "../verdicts";

const verdicts: readonly Verdict[] = [...pairVerdicts.slice(0, 200), ...planVerdicts.slice(0, 200)];

/** The titled lists of a report in Markdown, each item a line. */
function listsOf(verdict: Verdict): Readonly<Record<string, readonly string[]>> {
  const parts = describe(verdict, { format: "markdown" }).split(/^## /m).slice(1);
  return Object.fromEntries(
    parts.map((part) => {
      const [title = "", ...lines] = part.split("\n");
      return [title, lines.filter((line) => /^(- | {2})/.test(line))];
    }),
  );
}

const { titles } = english;
const itemsIn = (verdict: Verdict, title: string) =>
  (listsOf(verdict)[title] ?? []).filter((line) => line.startsWith("- "));

suite("what speaks for it is told", () => {
  test("of a suitable pair, one sentence a rule", () => {
    const verdict = assessPair({ species: danioRerio }, { species: tanichthysAlbonubes });
    expect(verdict.outcome).toBe("suitable");
    const favourable = verdict.findings.filter(({ weight }) => weight === "favourable");
    expect(favourable.length).toBeGreaterThan(3);
    expect(itemsIn(verdict, titles.favourable)).toHaveLength(favourable.length);
    expect(itemsIn(verdict, titles.favourable)[0]).toMatch(/are both kept at a temperature of 18 to 22 °C/);
  });

  test("of several groups, in one sentence a rule that favours each two of them", () => {
    const verdict = assessPlan({
      tank: { base: { shape: "rectangle", length: 120, width: 40 }, height: 40 },
      groups: [danioRerio, paracheirodonInnesi, osteogasterAenea].map((species) => ({
        species,
        unsexed: 10,
      })),
    });
    const told = itemsIn(verdict, titles.favourable).join("\n");
    expect(told).toContain("suits each two of zebra danio, neon tetra, and bronze corydoras");
    expect(told.match(/general hardness/g)?.length).toBe(1);
  });
});

suite("every verdict", () => {
  test("tells each sign to look for once, with a party where it falls on one", () => {
    for (const verdict of verdicts) {
      const signs = new Set(verdict.findings.flatMap(({ watchFor }) => watchFor ?? []));
      expect(itemsIn(verdict, titles.watchFor)).toHaveLength(signs.size);
    }
  });

  test("says why not where something blocks, and only there", () => {
    for (const verdict of verdicts) {
      const blocks = verdict.findings.some(({ weight }) => weight === "blocking");
      expect(itemsIn(verdict, titles.blocking).length > 0).toBe(blocks);
      const heads = Object.keys(listsOf(verdict));
      expect(heads.includes(titles.besides) && heads.includes(titles.restricting)).toBe(false);
      if (verdict.outcome === "unsuitable") expect(heads).not.toContain(titles.restricting);
    }
  });

  test("tells each condition after a reason for it", () => {
    for (const verdict of verdicts) {
      const lines = [
        ...(listsOf(verdict)[titles.restricting] ?? []),
        ...(listsOf(verdict)[titles.besides] ?? []),
      ];
      const works = lines.filter((line) => line.includes("Works if"));
      expect(works.length).toBeLessThanOrEqual(verdict.conditions.length);
      expect(works.length > 0).toBe(verdict.conditions.length > 0);
      for (const line of works) expect(line).toMatch(/^ {2}Works if/);
    }
  });

  test("names at most five questions and counts the others", () => {
    for (const verdict of verdicts) {
      const questions = itemsIn(verdict, titles.open);
      expect(questions.length).toBeLessThanOrEqual(6);
      if (questions.length === 6) expect(questions[5]).toMatch(/\d+ less decisive questions? (is|are) open/);
    }
  });

  test("says between which outcomes it lies, unless it is certain", () => {
    for (const verdict of verdicts) {
      const { atBest, atWorst } = verdict.bounds;
      const certain = atBest === atWorst && atBest === verdict.outcome;
      expect(describe(verdict).includes("the answer lies between")).toBe(!certain);
    }
  });

  test("has no empty title", () => {
    for (const verdict of verdicts) {
      for (const items of Object.values(listsOf(verdict))) expect(items.length).toBeGreaterThan(0);
    }
  });
});
