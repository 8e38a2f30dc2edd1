import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { describe, expect, test } from "vitest";
import type { Verdict } from "../../../src/compatibility";
import { describeIn, english, englishAdvice, profileMarkdownIn, sentenceIn } from "../../../src/report";
import { german, germanAdvice, germanLawgivers, germanPages } from "../../../src/report/de";
import { escaped } from "../../../src/report/layout";
import { classes, factAt, type SpeciesProfile, traitTable } from "../../../src/species";
import { hashOf, pick } from "../../drawn";
import { everyKind, nameOfVerdict, pairVerdicts, planVerdicts } from "../verdicts";
import { pseudo, unmarked } from "./pseudo";

/** About one in so many. */
const some = (all: readonly Verdict[], every: number) =>
  all.filter((verdict) => hashOf(nameOfVerdict(verdict)) % every === 0);
const verdicts: readonly Verdict[] = [...some(pairVerdicts, 5), ...some(planVerdicts, 3)];
const systems = ["metric", "us", "imperial"] as const;

describe("no word of a report lives outside the language", () => {
  test("in a description", () => {
    for (const verdict of verdicts) {
      for (const format of ["text", "markdown"] as const) {
        const told = describeIn(pseudo, verdict, { format, units: pick(systems, nameOfVerdict(verdict)) });
        expect(unmarked(told)).not.toMatch(/\p{L}/u);
      }
    }
  });

  test("in a sentence", () => {
    for (const verdict of verdicts) {
      for (const part of [...verdict.findings, ...verdict.met, ...verdict.open, ...verdict.conditions]) {
        expect(unmarked(sentenceIn(pseudo, verdict, part))).toBe("");
      }
    }
  });

  /** What a page shows as the record has it: names, and texts that are no words of the vocabulary. */
  const textsOf = ({ names, taxonomy, ...profile }: SpeciesProfile) => {
    const name = names.en?.[0] ?? taxonomy.name;
    return [
      ...[name, name.charAt(0).toUpperCase() + name.slice(1)],
      ...[taxonomy.name, taxonomy.authority, taxonomy.family, taxonomy.order],
      ...(["origin.regions", "reproduction.interbreedsWith"] as const).flatMap((path) => {
        const fact = factAt(profile, path);
        return fact ? [fact.value, ...(fact.also ?? [])].flat() : [];
      }),
    ].map(escaped);
  };

  test("on the page of a species", () => {
    for (const species of everyKind) {
      const page = profileMarkdownIn(pseudo, species);
      const left = textsOf(species)
        .sort((a, b) => b.length - a.length)
        .reduce((text, known) => text.replaceAll(known, ""), unmarked(page));
      expect(left.match(/\p{L}+/gu) ?? [], species.id).toEqual([]);
    }
  });

  test("and one that does would be found", () => {
    for (const verdict of some(verdicts, 40)) {
      const told = describeIn({ ...pseudo, closing: "Watch them." }, verdict);
      expect(unmarked(told).trim()).toMatch(/Watch them\.$/);
    }
  });

  test("and what English says without marks is English", () => {
    for (const verdict of some(verdicts, 20)) {
      const bare = describeIn(pseudo, verdict, { format: "markdown" }).replaceAll(/[⟦⟧]/gu, "");
      expect(bare.toLowerCase()).toBe(describeIn(english, verdict, { format: "markdown" }).toLowerCase());
    }
  });
});

const source = (path: string) => fileURLToPath(new URL(`../../../src/${path}`, import.meta.url));

/** What an app ships that imports these names of the report, and these of its German. */
async function shipped(names: readonly string[], ofGerman: readonly string[] = []): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents: `
        export { ${names.join(", ")} } from ${JSON.stringify(source("report/index.ts"))};
        export { ${ofGerman.join(", ")} } from ${JSON.stringify(source("report/de/index.ts"))};
      `,
      resolveDir: source("."),
    },
    bundle: true,
    format: "esm",
    charset: "utf8",
    minify: true,
    write: false,
  });
  return outputFiles.map(({ text }) => text).join("\n");
}

/** The texts of a table, however deep. */
const textsIn = (value: unknown): readonly string[] =>
  typeof value === "string"
    ? [value]
    : typeof value === "object" && value !== null
      ? Object.values(value).flatMap(textsIn)
      : [];

const isProse = (text: string) => text.includes(" ") && text.length > 8;
const englishTexts = [
  ...textsIn(english).filter(isProse),
  ...["have a tank ", "Past ", "residual-current device", "your plan does not say", "free to swim in"],
];
const explanations = [
  ...Object.values(traitTable).flatMap(({ label, about }) => [label, about].filter(isProse)),
  ...textsIn(Object.values(classes)).filter(isProse),
];

/** What stands in German alone. */
const germanTexts = [
  ...textsIn(german).filter(isProse),
  ...["Wo nichts anderes steht", "das Wasser bei ", "Fehlerstromschutzschalter", "garnele", "Elfenbeinküste"],
].filter((text) => !englishTexts.includes(text));

/** What stands on German pages of species alone, long enough that nothing else says it. */
const germanPageTexts = textsIn(germanPages.page).filter(
  (text) => text.length > 40 && ![...englishTexts, ...germanTexts].includes(text),
);

/** What advice alone says in German, and what it alone says in English. */
const germanAdviceTexts = textsIn(germanAdvice.advice).filter(
  (text) => text.length > 30 && ![...germanTexts, ...germanPageTexts].includes(text),
);
const englishAdviceTexts = textsIn(englishAdvice.advice).filter((text) => text.length > 30);

/** What only forms say: places apart from those that have laws of their own. */
const placesOnForms = Object.values(germanLawgivers).filter((text) => text.endsWith("anderswo"));

describe("an app in English", () => {
  test("ships no German", async () => {
    const code = await shipped(["describe", "sentence", "profileMarkdown"]);
    expect(germanTexts.length).toBeGreaterThan(30);
    expect([...germanTexts, ...germanPageTexts].filter((text) => code.includes(text))).toEqual([]);
  });
});

describe("an app in German", () => {
  test("ships German and no English, and what pages say only with pages", async () => {
    const code = await shipped(["describeIn", "sentenceIn", "profileMarkdownIn"], ["german"]);
    const ids = Object.keys(german.signs);
    expect(englishTexts.filter((text) => !ids.includes(text) && code.includes(text))).toEqual([]);
    expect(explanations.filter((text) => code.includes(text))).toEqual([]);
    expect(germanTexts.filter((text) => !code.includes(text))).toEqual([]);
    expect(germanPageTexts.length).toBeGreaterThan(10);
    expect(germanPageTexts.filter((text) => code.includes(text))).toEqual([]);
    const page = await shipped(["speciesPageIn"], ["germanPages"]);
    expect(germanPageTexts.filter((text) => !page.includes(text))).toEqual([]);
    expect(placesOnForms).toHaveLength(3);
    expect(placesOnForms.filter((text) => code.includes(text) || page.includes(text))).toEqual([]);
  });
});

describe("an app that tells verdicts", () => {
  test("ships no word of advice, in English or German", async () => {
    const code = await shipped(["describe", "sentence", "speciesPage"], ["german", "germanPages"]);
    expect(germanAdviceTexts.length).toBeGreaterThan(2);
    expect(englishAdviceTexts.length).toBeGreaterThan(2);
    expect([...germanAdviceTexts, ...englishAdviceTexts].filter((text) => code.includes(text))).toEqual([]);
  });
});

describe("an app that tells advice in German", () => {
  test("ships German and no English, and nothing that judges", async () => {
    const code = await shipped(
      ["describeFeedingPlanIn", "describeEntryOrderIn", "describeSuspectsIn"],
      ["germanAdvice"],
    );
    expect(germanAdviceTexts.filter((text) => !code.includes(text))).toEqual([]);
    const sentences = [...englishTexts, ...englishAdviceTexts].filter((text) => text.length > 30);
    expect(sentences.length).toBeGreaterThan(20);
    expect(sentences.filter((text) => code.includes(text))).toEqual([]);
    expect(code).not.toContain("likelyPrey");
  });
});

describe("an app that brings its own language", () => {
  test("ships no English", async () => {
    const code = await shipped(["describeIn", "sentenceIn", "profileMarkdownIn"]);
    expect(englishTexts.length).toBeGreaterThan(30);
    expect(englishTexts.filter((text) => code.includes(text))).toEqual([]);
    expect(explanations.filter((text) => code.includes(text))).toEqual([]);
  });

  test("and one that does not ships it, so that the test above can fail", async () => {
    const code = await shipped(["describe"]);
    for (const text of [
      english.closing,
      "Unsuitable: the tank is far too small.",
      "have a tank ",
      english.traits["space.jumps"],
    ]) {
      expect(code).toContain(text);
    }
  });
});
