import { expect, describe as suite, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import bettaSplendens from "vivary/catalog/betta-splendens";
import paracheirodonAxelrodi from "vivary/catalog/paracheirodon-axelrodi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import trichogasterLalius from "vivary/catalog/trichogaster-lalius";
import { englishInRegions } from "../../../data/checks/german-is-whole";
import {
  assessPair,
  assessPlan,
  type Finding,
  pairRules,
  planRules,
  type Verdict,
} from "../../../src/compatibility";
import { facts } from "../../../src/plan";
import { describe, english, profileMarkdown, sentence } from "../../../src/report";
import { german } from "../../../src/report/de";
import { regionIn } from "../../../src/report/messages/german-regions";
import { traitPaths } from "../../../src/species";
import { speciesFor } from "../../drawn";
import { samplePlans } from "../../plan/arbitrary";
import { onEachRule } from "../each-rule";

const verdicts: readonly Verdict[] = [
  ...onEachRule,
  ...samplePlans(60).map((plan) => assessPlan(plan)),
  ...allSpecies
    .filter(({ water }) => water?.coolSeason)
    .map((species) =>
      assessPlan({
        tank: { base: { shape: "rectangle", length: 100, width: 40 } },
        water: { temperature: 24 },
        groups: [{ species, unsexed: 1 }],
      }),
    ),
  ...allSpecies.map((a) => assessPair({ species: a }, { species: speciesFor(`beside ${a.id}`) })),
  ...allSpecies.flatMap((a) =>
    (a.reproduction?.interbreedsWith?.value ?? []).flatMap((id) => {
      const b = speciesById(id);
      return b ? [assessPair({ species: a, sex: "male" }, { species: b })] : [];
    }),
  ),
];

const partsOf = ({ findings, met, open, conditions }: Verdict) => [
  ...findings,
  ...met,
  ...open,
  ...conditions,
];

/** A gap where a name, a figure or a word is missing, or a word of the machine's. */
const gap = /undefined|null|NaN|Infinity|\[object| {2}| [.,;:)]|\( |\(\)|[,;:] ?\.|^ | $/;

/** Words that German and English write alike. */
const alike = new Set(
  "an art bar cm detritus dh die dies filter hand harem in kg koi mg ml optimum oval ph plan plankton sand so stand still".split(
    " ",
  ),
);

const wordsOf = (text: string) => text.toLowerCase().match(/\p{L}{2,}/gu) ?? [];

/** A text without the names of some animals, in German and of science. */
function unnamed(text: string, { parties }: Pick<Verdict, "parties">): string {
  const names = parties.flatMap(({ name, names }) => {
    const own = names.de ?? [];
    const forms = own.flatMap((one) => [
      german.several(one),
      ...(["subject", "object"] as const).map((place) => german.this(one, place).slice(4)),
      one,
    ]);
    return [name, ...forms];
  });
  return names
    .sort((a, b) => b.length - a.length)
    .reduce((left, name) => left.replaceAll(name, ""), text.replaceAll(/\s+/g, " "));
}

/** The words of a German text that its English counterpart has too. */
function leftInEnglish(text: string, counterpart: string): readonly string[] {
  const known = new Set(wordsOf(counterpart));
  return wordsOf(text).filter((word) => known.has(word) && !alike.has(word));
}

suite("no English is left", () => {
  test("in a report", () => {
    for (const verdict of verdicts) {
      const told = unnamed(describe(verdict, { messages: german }), verdict);
      expect(leftInEnglish(told, describe(verdict)), told).toEqual([]);
    }
  });

  test("in a word, a trait, a sign or a title", () => {
    const textsOf = ({ words, traits, signs, titles, basis, profile }: typeof german) =>
      JSON.stringify({ words, traits, signs, titles, basis, columns: profile.columns, of: profile.sections })
        .match(/(?<=:|\[|,)"[^"]*"(?!:)/g)
        ?.join(" ") ?? "";
    expect(leftInEnglish(textsOf(german), textsOf(english))).toEqual([]);
  });

  test("on the page of a species, but for what its record says in words", () => {
    for (const species of allSpecies) {
      const plain = { ...species, origin: {}, care: { ...species.care, rehoming: undefined } };
      const page = (messages: typeof german) =>
        profileMarkdown(plain as typeof species, { messages })
          .split("\n")
          .slice(3)
          .join("\n");
      const party = { name: species.taxonomy.name, names: species.names };
      const partners = (species.reproduction?.interbreedsWith?.value ?? []).flatMap((id) =>
        wordsOf(id.replaceAll("-", " ")),
      );
      const told = unnamed(page(german), { parties: [party] } as never);
      expect(
        leftInEnglish(told, page(english)).filter((word) => !partners.includes(word)),
        species.id,
      ).toEqual([]);
    }
  });

  test("in a region of the catalog", () => {
    const regions = new Set(allSpecies.flatMap(({ origin }) => origin?.regions?.value ?? []));
    expect([...regions].map(regionIn).filter((name) => englishInRegions.test(name))).toEqual([]);
    expect(regions.size).toBeGreaterThan(150);
  });

  test("and English is found where it is", () => {
    const [verdict] = verdicts;
    if (!verdict) throw new Error("no verdict");
    const half = { ...german, closing: english.closing };
    const told = unnamed(describe(verdict, { messages: half }), verdict);
    expect(leftInEnglish(told, describe(verdict))).toContain("advice");
  });
});

suite("every part of a verdict", () => {
  test("is a sentence without a gap", () => {
    for (const verdict of verdicts) {
      for (const part of partsOf(verdict)) {
        const text = sentence(verdict, part, { messages: german });
        expect(text, JSON.stringify(part)).not.toMatch(gap);
        expect(text, JSON.stringify(part)).toMatch(/^[\p{Lu}\d].*[.)]$/u);
      }
    }
  });

  test("is told of every rule", () => {
    const told = new Set(
      verdicts.flatMap(({ findings, met }) => [...findings, ...met].map(({ rule }) => rule)),
    );
    const rules = [...pairRules, ...planRules].map(({ id }) => id as Finding["rule"]);
    expect(rules.filter((rule) => !told.has(rule))).toEqual([]);
  });

  test("and every trait and fact has its name", () => {
    for (const path of traitPaths) expect(german.traits[path].length).toBeGreaterThan(1);
    expect(Object.keys(german.conditions).sort()).toEqual(Object.keys(facts).sort());
    expect(german.sayWhatToDo).toEqual(english.sayWhatToDo);
  });
});

suite("a report in German", () => {
  const verdict = assessPlan({
    tank: { base: { shape: "rectangle", length: 80.5, width: 35 }, height: 40, cover: 0.1 },
    water: { temperature: 25.5 },
    groups: [
      { species: paracheirodonInnesi, unsexed: 10 },
      { species: trichogasterLalius, males: 1 },
    ],
  });
  const told = describe(verdict, { messages: german });

  test("has decimal commas, and no line breaks between a figure and its unit", () => {
    const warm = { on: "water.temperature", wanted: { min: 22.5, max: 24, unit: "degC" } } as const;
    expect(sentence(verdict, warm, { messages: german })).toBe("Das Wasser bei 22,5 bis 24\u202f°C halten.");
    expect(told).not.toMatch(/\d (?:°C|cm|%|kg|l)(?!\p{L})/u);
  });

  test("declines one animal as subject and as object, and tells several without an article", () => {
    const finding = (from: number, to: number): Finding =>
      ({
        rule: "acts-others",
        weight: "advisory",
        from,
        to,
        measures: { act: { value: "chases" } },
        basis: "common-practice",
        traits: [],
      }) as never;
    const say = (from: number, to: number) => sentence(verdict, finding(from, to), { messages: german });
    expect(say(1, 0)).toBe("Der Zwergfadenfisch jagt Neonsalmler.");
    expect(say(0, 1)).toBe("Neonsalmler jagen den Zwergfadenfisch.");
  });

  test("keeps an animal without a German name under its scientific one", () => {
    const nameless = { ...paracheirodonAxelrodi, names: { en: ["cardinal tetra"] } };
    const pair = assessPair({ species: nameless }, { species: bettaSplendens });
    const report = describe(pair, { messages: german });
    expect(report).toContain("Paracheirodon axelrodi");
    expect(report).not.toContain("cardinal");
  });

  const figureless = { basis: "common-practice", traits: [] } as const;

  test("says that animals bear a figure of which only the upper end is told", () => {
    const finding = (kept: object) =>
      ({
        rule: "water-temperature",
        weight: "restricting",
        from: 0,
        measures: { kept: { ...kept, unit: "degC" } },
        ...figureless,
      }) as unknown as Finding;
    const say = (kept: object) => sentence(verdict, finding(kept), { messages: german });
    expect(say({ max: 30 })).toBe("Neonsalmler vertragen höchstens 30\u202f°C.");
    expect(say({ min: 20, max: 30 })).toBe("Neonsalmler brauchen 20 bis 30\u202f°C.");
    expect(sentence(verdict, finding({ max: 30 }))).toMatch(/^Neon tetras bear at most 30\s°C\.$/);
  });

  test("tells of no company beside those that share their room", () => {
    const groups = ["corydoras-paleatus", "pangio-kuhlii"].map((id) => ({
      species: speciesById(id) ?? expect.fail(id),
      unsexed: 8,
    }));
    const tank = { base: { shape: "rectangle", length: 80, width: 35 } } as const;
    const report = describe(assessPlan({ tank, groups }), { messages: german }).replaceAll(/\s+/g, " ");
    expect(report).toContain("und dort summiert sich der Bedarf aller.");
    expect(report).not.toMatch(/teil\w+ sich den Raum|mit anderen, und der Bedarf/);
  });

  test("puts no name behind a preposition, and nobody outdoors", () => {
    const text = verdicts
      .map((one) => describe(one, { messages: german }))
      .join(" ")
      .replaceAll(/\s+/g, " ");
    expect(text).toContain("an den Stacheln der Beute kann der Jäger ersticken");
    expect(text).toContain("nie in die Natur bringen");
    expect(text).not.toMatch(/Stacheln von|ins Freie/);
  });
});
