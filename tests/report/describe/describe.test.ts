import { expect, describe as suite, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { recordById } from "vivary/evidence";
import { assessPair, assessPlan, defineRule, pairRules, type Verdict } from "../../../src/compatibility";
import { InvalidInputError } from "../../../src/errors";
import { describe, english } from "../../../src/report";
import type { SpeciesProfile } from "../../../src/species";
import { someNamed, speciesFor } from "../../drawn";
import { plans } from "../../judgements/plans";
import { nameOfVerdict } from "../verdicts";

const pair = (a: SpeciesProfile, b: SpeciesProfile) => assessPair({ species: a }, { species: b });

/** Every species with itself and with a few that its name draws. */
const pairs = allSpecies.flatMap((a) =>
  [a, ...[1, 2, 3].map((draw) => speciesFor(`${a.id} ${draw}`))].map((b) => pair(a, b)),
);

const verdicts: readonly Verdict[] = [...pairs, ...Object.values(plans).map((plan) => assessPlan(plan))];

suite("every report of the catalog", () => {
  const reports = verdicts.flatMap((verdict) =>
    (["metric", "us", "imperial"] as const).flatMap((units) =>
      (["text", "markdown"] as const).map((format) => ({
        format,
        told: describe(verdict, { format, units }),
      })),
    ),
  );

  test("holds no word of the machine's", () => {
    for (const { told } of reports) expect(told).not.toMatch(/undefined|NaN|null|\[object|Infinity/);
  });

  test("holds no empty sentence and no double space within a line", () => {
    for (const { told } of reports) {
      expect(told).not.toMatch(/\(\)|: \.|\s\.|[^ \n] {2,}[^ \n]/);
    }
  });

  test("fits a terminal of 80 columns", () => {
    for (const { format, told } of reports) {
      if (format === "text")
        for (const line of told.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
    }
  });

  test("begins with the answer and ends with the advice to watch", () => {
    for (const { told } of reports) {
      expect(told).toMatch(
        /^(Suitable|Conditional|Unsuitable|Undetermined|Not in this water|Nobody can tell):/,
      );
      expect(told.trim().replaceAll("\n", " ")).toMatch(
        /individuals vary: watch them, and have a second tank ready\.$/,
      );
    }
  });
});

test("a figure of a record is the figure in the sentence, in the reader's units", () => {
  const kept = recordById("betta-splendens")?.water?.temperature?.find(({ as }) => as === "kept")?.value;
  expect(kept).toEqual({ min: 24, max: 30 });
  const verdict = pair(bettaSplendens, carassiusAuratus);
  expect(describe(verdict)).toContain("Siamese fighting fish are kept at 24 to 30 °C");
  // 24 °C × 9/5 + 32 = 75.2 °F, 30 °C = 86 °F: the definition of the Fahrenheit scale. People tell whole degrees.
  expect(describe(verdict, { units: "us" })).toContain("Siamese fighting fish are kept at 75 to 86 °F");
});

test("lengths, floors, masses and temperatures are in the units asked for", () => {
  const small = assessPlan({
    tank: { base: { shape: "rectangle", length: 60, width: 50 }, height: 110, waterBelowRim: 5 },
    water: { temperature: 25, pH: 6.5, generalHardness: 5 },
    groups: [{ species: danioRerio, unsexed: 8 }],
  });
  const rooms = danioRerio.space?.baseLength?.value ?? [];
  const { least } = rooms.find((room) => room.for >= 8) ?? rooms.at(-1) ?? { least: 0 };
  expect(describe(small)).toContain(`need a tank at least ${least} cm long; yours is 60 cm`);
  // 1 in = 2.54 cm, 1 lb = 0.45359237 kg: international yard and pound agreement of 1959.
  const inches = Math.ceil(least / 2.54); // A shorter tank is too short.
  for (const units of ["us", "imperial"] as const) {
    expect(describe(small, { units })).toContain(`need a tank at least ${inches} in long; yours is 24 in`);
    expect(describe(small, { units })).toContain(
      `about ${Math.round(390 / 0.45359237 / 10) * 10} lb with glass`,
    );
  }
  // 60 × 50 × 105 cm of water at 25 °C (0.99705 kg/L), and a quarter for glass, gravel and stand: 392.6 kg.
  expect(describe(small)).toContain("about 390 kg with glass");
});

test("no line of a list stands twice", () => {
  for (const verdict of verdicts) {
    const parts = describe(verdict, { format: "markdown" }).split(/^## /m);
    for (const part of parts.filter((text) => !text.startsWith(english.titles.parties))) {
      const items = part.match(/^- .*$/gm) ?? [];
      expect(new Set(items).size).toBe(items.length);
    }
  }
});

test("findings that differ only in whom they fall on share a sentence", () => {
  const told = describe(
    assessPlan({
      tank: { base: { shape: "rectangle", length: 100, width: 40 }, height: 45, cover: 0 },
      water: { temperature: 25, pH: 6.8, generalHardness: 7 },
      groups: [
        { species: trichogasterChuna, males: 1, females: 2 },
        { species: paracheirodonInnesi, unsexed: 12 },
        { species: danioRerio, unsexed: 10 },
      ],
    }),
  );
  expect(told.replaceAll(/\s+/g, " ")).toMatch(
    /Male honey gouramis chase (?:their own kind, )?neon tetras and zebra danios while they guard eggs or young\./,
  );
});

test("a verdict that was stored as JSON reads the same, and is not changed by reading", () => {
  for (const verdict of someNamed(verdicts, nameOfVerdict, 60, 0)) {
    const stored: Verdict = JSON.parse(JSON.stringify(verdict));
    expect(describe(stored)).toBe(describe(verdict));
    expect(stored).toEqual(verdict);
  }
});

test("a rule of an app's own is named by its id", () => {
  const rule = defineRule({
    id: "x-colour",
    way: "mutual",
    needs: { from: [], to: [] },
    mayYield: ["advisory"],
    judge: () => [{ weight: "advisory" }],
  });
  const verdict = assessPair(
    { species: danioRerio },
    { species: paracheirodonInnesi },
    { rules: [...pairRules, rule] },
  );
  expect(describe(verdict)).toContain("X-colour: zebra danios and neon tetras");
});

test("another language takes the place of English", () => {
  const messages = { ...english, headline: () => "Passt." };
  expect(describe(pair(danioRerio, danioRerio), { messages: { ...messages, closing: "Ende." } })).toMatch(
    /^Passt\.[\s\S]*Ende\.$/,
  );
});

test("an unknown format or system of units is refused", () => {
  const verdict = pair(danioRerio, danioRerio);
  for (const options of [
    { format: "html" },
    { format: "constructor" },
    { units: "cubits" },
    { units: "toString" },
  ]) {
    expect(() => Reflect.apply(describe, undefined, [verdict, options])).toThrow(InvalidInputError);
  }
});

test("hostile names cannot break out of their place", () => {
  const name = "neon](http://x) <img src=x> | `a` **b**\n# Suitable\u001b[31m";
  const hostile = { ...paracheirodonInnesi, names: { en: [name] } };
  const verdict = pair(hostile, bettaSplendens);
  const markdown = describe(verdict, { format: "markdown" });
  expect(markdown.match(/^#+ .*/gm)).toEqual(
    describe(pair(paracheirodonInnesi, bettaSplendens), { format: "markdown" }).match(/^#+ .*/gm),
  );
  expect(markdown).not.toMatch(/(?<!\\)[<>`|]|(?<!\\)\]\(/);
  expect(describe(verdict)).not.toContain("\u001b");
  expect(describe(verdict)).not.toMatch(/^# Suitable/m);
});
