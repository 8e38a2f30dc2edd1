import fc from "fast-check";
import { describe, expect, test } from "vitest";
import andinoacaraPulcher from "vivary/catalog/andinoacara-pulcher";
import bettaImbellis from "vivary/catalog/betta-imbellis";
import brachygobiusDoriae from "vivary/catalog/brachygobius-doriae";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import hypancistrusZebra from "vivary/catalog/hypancistrus-zebra";
import hyphessobryconFlammeus from "vivary/catalog/hyphessobrycon-flammeus";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import monodactylusArgenteus from "vivary/catalog/monodactylus-argenteus";
import paracheirodonAxelrodi from "vivary/catalog/paracheirodon-axelrodi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import pterophyllumAltum from "vivary/catalog/pterophyllum-altum";
import symphysodonAequifasciatus from "vivary/catalog/symphysodon-aequifasciatus";
import tropheusDuboisi from "vivary/catalog/tropheus-duboisi";
import { type SetPointOptions, setPoint } from "../../../../src/advice";
import {
  type AdviceDescribeOptions,
  describeSetPoint,
  describeSetPointIn,
  english,
} from "../../../../src/report";
import { germanAdvice } from "../../../../src/report/de";
import type { SpeciesProfile } from "../../../../src/species";
import { convert } from "../../../../src/units";
import { anySpecies } from "../../../drawn";
import { expectRefused } from "../../../refused";
import { runs } from "../../../runs";

const flat = (text: string) => text.replaceAll(/\s+/g, " ");
const told = (
  species: readonly SpeciesProfile[],
  options: SetPointOptions = {},
  writing: AdviceDescribeOptions = {},
) => flat(describeSetPoint(setPoint(species, options), species, writing));

describe("neon tetras and zebra danios", () => {
  const species = [paracheirodonInnesi, danioRerio];
  const found = setPoint(species);
  const { temperature: at = 0 } = found.conflict ? {} : found.water;
  const { temperature: moves = 0 } = found.conflict ? {} : found.margin;
  const [least, most] = [at - moves, at + moves];

  test("have a temperature to aim at, and whose ends it has to stay within", () => {
    expect(told(species)).toContain(
      `- Temperature ${at} °C, staying within ${least} to ${most} °C (bounded by neon tetras).`,
    );
  });

  test("live in fresh water", () => {
    expect(told(species)).toContain("- Fresh water, salinity at most 0.5 g/kg.");
    expect(told(species)).not.toContain("-0.5");
  });

  test("have it in degrees Fahrenheit where these are used", () => {
    const [from, to] = [least, most].map((end) => convert(end, "degC", "degF")) as [number, number];
    const inFahrenheit = `staying within ${Math.ceil(from)} to ${Math.floor(to)} °F`; // Never past an end.
    expect(told(species, {}, { units: "us" })).toContain(inFahrenheit);
  });

  test("are told to be given it in small steps, and that figures are those adopted", () => {
    expect(told(species)).toMatch(
      /small steps, over days .* Where sources differ, these are the figures adopted/,
    );
  });

  test("read alike as Markdown", () => {
    expect(describeSetPoint(setPoint(species), species, { format: "markdown" })).toContain(
      "\n- Temperature 23 °C,",
    );
  });
});

test("discus and goldfish share no temperature: who stays without whom is told, and in which water", () => {
  const text = told([symphysodonAequifasciatus, carassiusAuratus, paracheirodonAxelrodi]);
  expect(text).toMatch(
    /^No temperature serves all: discus need it higher than goldfish can have it for good\./,
  );
  expect(text).toContain("Without goldfish, the most that can stay are discus and cardinal tetras.");
  expect(text).toContain("Water for discus and cardinal tetras");
  expect(text).not.toContain("Water for discus, goldfish");
});

test("of a species that is given twice nobody else is forgotten", () => {
  expect(told([danioRerio, danioRerio, paracheirodonInnesi])).toContain(
    "Water for zebra danios and neon tetras",
  );
  expect(told([danioRerio, danioRerio])).toContain("Water for zebra danios,");
});

test("animals of brackish water are told how salt it is", () => {
  expect(told([monodactylusArgenteus, brachygobiusDoriae])).toMatch(/- Salinity \d+ g\/kg/);
});

test("of water that swings, the coolest and the hottest are told", () => {
  expect(told([paracheirodonInnesi], { swing: { temperature: 1 } })).toContain(
    "it goes from 22 to 24 °C and back",
  );
});

test("of whom it swings past what they are kept in is told, and that they bear it for a while", () => {
  expect(told([paracheirodonInnesi, danioRerio], { swing: { temperature: 2 } })).not.toContain("beyond what");
  expect(told([symphysodonAequifasciatus], { swing: { temperature: 2 } })).toMatch(
    /On the hottest day the temperature goes beyond what discus are kept in: that will do for a while, not for good\./,
  );
});

test("of a pH that swings past what an animal is kept in, the swing is told, not the figure", () => {
  const text = told([bettaImbellis], { swing: { pH: 0.6 } }); // Kept at 6 to 7.
  expect(text).toContain("As it swings, the pH goes beyond what crescent bettas are kept in, 6 to 7:");
  expect(text).not.toContain("That pH goes beyond");
});

test("where it swings too far for one, no other is blamed", () => {
  expect(told([paracheirodonInnesi], { swing: { temperature: 20 } })).toMatch(
    /^No temperature serves all: what neon tetras are kept in leaves no room for how far the water moves\. None of them can have the water asked for\./,
  );
});

test("ammonia is told to two digits, however little", () => {
  expect(told([paracheirodonInnesi], { totalAmmonia: 0.5 })).toMatch(
    /it holds 0\.00\d\d mg\/L of un-ionized ammonia and, saturated with air, \d\.?\d? mg\/L of oxygen/,
  );
});

test("of water in which both would have to give way, that nobody knows is told, and why", () => {
  expect(told([symphysodonAequifasciatus, tropheusDuboisi])).toContain(
    "Whether white-spotted cichlids and discus share any pH, nobody knows: both would have it at the edge of what they can take.",
  );
});

describe("of water that two can be given, though they are kept in none together", () => {
  const species = [pterophyllumAltum, andinoacaraPulcher]; // pH 4.8 to 6.2, and 6.5 to 8.
  const zebrasBeside = [hyphessobryconFlammeus, hypancistrusZebra];

  test("it is told past whose it is, and that they bear it at most", () => {
    expect(told(species)).toContain(
      "That pH goes beyond what altum angelfish are kept in, 4.8 to 6.2: it is at the edge of what they can take for long.",
    );
    expect(told(species)).toContain("That pH goes beyond what blue acaras are kept in, 6.5 to 8:");
    expect(told(species)).not.toContain("That temperature goes beyond");
  });

  test("of a span of which only the ends lie past it, they alone are", () => {
    const text = told(zebrasBeside); // Kept at 26 to 30 and 20 to 26 °C: 26 °C is right for both, a degree about it is not.
    expect(text).toContain("Temperature 26 °C, staying within 25.5 to 26.5 °C");
    expect(text).toContain(
      "Within that span the temperature goes beyond what zebra plecos are kept in, 26 to 30 °C: there",
    );
    expect(text).not.toContain("That temperature goes beyond");
  });

  test("in German too", () => {
    expect(told(species, {}, { messages: germanAdvice })).toMatch(
      /pH: der Wert geht über das hinaus, worin [^,]+ gehalten werden, 4,8 bis 6,2; er liegt am Rand/,
    );
  });

  test("of others nothing of the sort is told", () => {
    expect(told([paracheirodonInnesi, danioRerio])).not.toContain("beyond what");
  });
});

test("so much ammonia that no water serves is blamed on who needs it warm and alkaline", () => {
  expect(told([paracheirodonInnesi, labidochromisCaeruleus], { totalAmmonia: 50 })).toContain(
    "what is warm and alkaline enough for electric yellow cichlids would hold more un-ionized ammonia than is borne",
  );
});

describe("where something is not known", () => {
  const { water, ...others } = danioRerio;
  const { pH, ...known } = water ?? {};
  const ofUnknownPH: SpeciesProfile = { ...others, water: known };
  const ofUnknownWater: SpeciesProfile = { ...others, water: {} };

  test("the others decide alone, and it is said", () => {
    expect(told([ofUnknownPH, paracheirodonInnesi])).toContain(
      "Nobody says which pH zebra danios need: the others decide alone.",
    );
  });

  test("by nobody, there is no figure", () => {
    expect(told([ofUnknownPH])).toContain(
      "Nobody says which pH zebra danios need: there is no figure to aim at.",
    );
    expect(told([ofUnknownPH])).not.toMatch(/- pH \d/);
  });

  test("of all its water, it does not read as if any would do", () => {
    expect(told([ofUnknownWater])).toMatch(
      /^Nobody says what water any of them is kept in: find out before you buy\./,
    );
  });
});

test("in German it says the same", () => {
  const species = [symphysodonAequifasciatus, carassiusAuratus, paracheirodonAxelrodi];
  const german = describeSetPointIn(germanAdvice, setPoint(species), species);
  expect(german).toBe(describeSetPoint(setPoint(species), species, { messages: germanAdvice }));
  expect(flat(german)).toMatch(
    /^Keine Temperatur taugt für alle: für Diskus müsste der Wert höher sein, als er für Goldfische auf Dauer sein darf\. Ohne Goldfische bleiben die meisten zusammen: Diskus und Rote Neons\./,
  );
});

/** A gap where a name, a figure or a word is missing. */
const gap = /undefined|null|NaN|Infinity|\[object| {2}| [.,;:)]|\( |\(\)|[,;:] ?\.| $|-\d/;

test("of any animals nothing is left out of a sentence, and each figure is told", () => {
  const some = fc.uniqueArray(anySpecies, { minLength: 1, maxLength: 5 });
  const swings = fc.constantFrom({}, { swing: { temperature: 1, pH: 0.2 } }, { totalAmmonia: 1 });
  const tried = { conflict: 0, point: 0, doubtful: 0 };
  fc.assert(
    fc.property(some, swings, (species, options) => {
      const found = setPoint(species, options);
      if (found.conflict) tried.conflict += 1;
      else tried[found.doubtful.length > 0 ? "doubtful" : "point"] += 1;
      for (const messages of [undefined, germanAdvice]) {
        const text = describeSetPoint(found, species, { messages });
        expect(text.split("\n").filter((line) => gap.test(line.trimStart().replace(/^- /, "")))).toEqual([]);
        const point = found.conflict ? found.largest.setPoint : found;
        const figures = Object.keys(point?.water ?? {}).filter((name) => !name.endsWith("est"));
        const isFigure = /^- (?:Temp|pH|General|Gesamt|Sal|Fresh|Süß)[^:]* /;
        const lines = text.split("\n").filter((line) => isFigure.test(line));
        expect(lines).toHaveLength(figures.length);
      }
    }),
    { numRuns: runs(150) },
  );
  for (const often of Object.values(tried)) expect(often).toBeGreaterThanOrEqual(3);
});

describe("refuses", () => {
  const species = [paracheirodonInnesi, danioRerio];
  const found = setPoint(species);

  test("a set point of more species than are given", () => {
    expectRefused(() => describeSetPoint(found, [paracheirodonInnesi]), /^found\.limiting/);
  });

  test.each([
    ["nothing", undefined],
    ["a text", "24 °C"],
    ["a set point without its water", { ...found, water: undefined }],
    ["a figure that is none", { ...found, water: { temperature: Number.NaN } }],
    ["a figure of nothing that is known", { ...found, open: [{ on: "colour", of: 0 }] }],
    ["a conflict without those that stay", { conflict: { on: "pH", between: [0, 1], isCertain: true } }],
  ])("%s", (_, wrong) => {
    expectRefused(() => describeSetPoint(wrong as never, species), /found/);
  });

  test("words of reports alone", () => {
    expectRefused(() => describeSetPoint(found, species, { messages: english as never }), /advice/);
  });
});
