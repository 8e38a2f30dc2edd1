import { expect, describe as suite, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import { assessPair, assessPlan, type Verdict } from "../../../src/compatibility";
import { describe, english } from "../../../src/report";
import { german } from "../../../src/report/de";
import { someNamed } from "../../drawn";
import { seedOf } from "../../runs";
import { nameOfVerdict, pairVerdicts, planVerdicts } from "../verdicts";

const verdicts: readonly Verdict[] = [
  ...someNamed(pairVerdicts, nameOfVerdict, 80, seedOf(0)),
  ...someNamed(planVerdicts, nameOfVerdict, 80, seedOf(0)),
];

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
/** A report in one line. */
const told = (verdict: Verdict) => describe(verdict).replaceAll(/\s+/g, " ");

const itemsIn = (verdict: Verdict, title: string) =>
  (listsOf(verdict)[title] ?? []).filter((line) => line.startsWith("- "));

suite("what speaks for it is told", () => {
  test("of a suitable pair, the water it shares in one sentence", () => {
    const verdict = assessPair({ species: danioRerio }, { species: tanichthysAlbonubes });
    expect(verdict.outcome).toBe("suitable");
    expect(told(verdict)).toMatch(
      /^Suitable: zebra danios \(Danio rerio\) and white cloud mountain minnows \([^)]+\) go well together\. - In favour: water of 18 to 22 °C, pH [^;]* suits both\. /,
    );
  });

  test("of several groups, what each two share, and what of the plan is right", () => {
    const verdict = assessPlan({
      tank: { base: { shape: "rectangle", length: 120, width: 40 }, height: 40 },
      groups: [danioRerio, paracheirodonInnesi, osteogasterAenea].map((species) => ({
        species,
        unsexed: 10,
      })),
    });
    expect(told(verdict)).toContain("In favour: water of 22 to ");
    expect(told(verdict)).toContain("suits all; right as planned: tank and numbers.");
  });
});

suite("what a report rests on", () => {
  const explained = "reckoned means worked out from what is nearest known";

  test("is explained where something is marked as reckoned, and only there", () => {
    const reports = verdicts.map(told);
    const marked = reports.filter((report) => / \(reckoned\)/.test(report));
    expect(marked.length).toBeGreaterThan(0);
    expect(marked.length).toBeLessThan(reports.length);
    for (const report of reports) expect(report.includes(explained)).toBe(marked.includes(report));
  });

  test("is explained in German", () => {
    const report = describe(
      assessPlan({
        tank: { base: { shape: "rectangle", length: 120, width: 40 }, height: 40 },
        groups: [{ species: danioRerio, unsexed: 10 }],
      }),
      { messages: german },
    ).replaceAll(/\s+/g, " ");
    expect(report).toContain("(erschlossen)");
    expect(report).toContain("erschlossen heißt: aus dem Nächstbekannten hergeleitet.");
  });
});

suite("every verdict", () => {
  test("tells each sign to look for once, but for what one animal alone would do to its kind", () => {
    for (const verdict of verdicts) {
      const seen = verdict.findings.filter(
        ({ from, to }) => from === undefined || from !== to || verdict.parties[from]?.count !== 1,
      );
      const [, looked = ""] = / (?:Watch|Meanwhile watch) for: ([^.]*)\./.exec(told(verdict)) ?? [];
      for (const sign of new Set(seen.flatMap(({ watchFor }) => watchFor ?? []))) {
        expect(looked.split(english.signs[sign])).toHaveLength(2);
      }
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

  test("tells each matter that must change once, and what the plan does not say apart", () => {
    for (const verdict of verdicts) {
      const items = [titles.restricting, titles.besides, titles.unsaid].flatMap((title) =>
        itemsIn(verdict, title),
      );
      expect(items.length).toBeLessThanOrEqual(verdict.conditions.length);
      if (verdict.outcome === "conditional") expect(items.length).toBeGreaterThan(0);
    }
  });

  test("names at most four questions of a sort and counts the others", () => {
    for (const verdict of verdicts) {
      for (const [line] of told(verdict).matchAll(/- Sources differ[^:]*: (?:[^.]|\.\d)*\./g)) {
        expect(line.split("; ").length, line).toBeLessThanOrEqual(5);
      }
    }
  });

  test("says between which outcomes it lies, unless it is certain", () => {
    for (const verdict of verdicts) {
      const { atBest, atWorst } = verdict.bounds;
      const certain = atBest === atWorst && atBest === verdict.outcome;
      const [lead = ""] = describe(verdict).split("\n\n");
      expect(/\. At (?:best|worst) /.test(lead.replaceAll("\n", " "))).toBe(!certain);
    }
  });

  test("has no empty title", () => {
    for (const verdict of verdicts) {
      for (const items of Object.values(listsOf(verdict))) expect(items.length).toBeGreaterThan(0);
    }
  });
});
