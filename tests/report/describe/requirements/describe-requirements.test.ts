import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import balantiocheilosMelanopterus from "vivary/catalog/balantiocheilos-melanopterus";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { readFolder, root } from "../../../../data/reading/files";
import type { Group, Plan, PlannedTank } from "../../../../src/plan";
import { describeRequirements, describeRequirementsIn, englishRequirements } from "../../../../src/report";
import { germanRequirements } from "../../../../src/report/de";
import { type OfficialRequirement, officialRequirements } from "../../../../src/standards";
import type { Jurisdiction } from "../../../../src/standards/inner";
import { samplePlans } from "../../../plan/arbitrary";
import { runs } from "../../../runs";
import { pseudoRequirements, unmarked } from "../../messages/pseudo";

const flat = (text: string) => text.replaceAll(/\s+/g, " ");
const danios: Group = { species: danioRerio, unsexed: 10, length: 3 };
const planOf = (groups: readonly Group[], tank: Partial<PlannedTank> = {}): Plan => ({
  tank: { base: { shape: "rectangle", length: 60, width: 30 }, height: 30, measured: "outer", ...tank },
  water: { temperature: 24, pH: 7, generalHardness: 8 },
  groups,
});
const rowsOf = (plan: Plan, id = "") => officialRequirements(plan).filter((row) => row.id.startsWith(id));
/** What is told of the requirements of a plan whose ids begin so. */
const told = (plan: Plan, id: string, options = {}) =>
  flat(describeRequirements(rowsOf(plan, id), plan, options));
const inGerman = { messages: germanRequirements };

describe("a keeper of ten zebra danios in 60 × 30 × 30 cm reads", () => {
  const plan = planOf([danios]);

  test("that 54 L is reached in Germany and 60 L is not, the gravest first", () => {
    const text = told(plan, "germany/");
    expect(text).toContain(
      "- Not met: An aquarium for lasting keeping should not fall below 60 L. Asked: at least 60 L. The plan: 54 L (gross volume, by sizes outside the glass). Where it stands: Smallest aquarium; read.",
    );
    expect(text).toContain("- Met: 54 L is the least volume");
    expect(text.indexOf("Not met:")).toBeLessThan(text.indexOf("- Met:"));
  });

  test("what is asked of zebra danios by name, with the line of the table", () => {
    expect(told(plan, "germany/group")).toContain(
      "- Met (zebra danios): The species is kept in a group of as many as stated for it or more. Asked: at least 5 animals. The plan: 10 animals. Where it stands: Species table, column Comments, line 9277; read.",
    );
  });

  test("how far a law binds, from when it is, and where the text in force is found", () => {
    const text = told(plan, "austria/");
    expect(text).toContain("Austria: 2. Tierhaltungsverordnung, BGBl. II 486/2004");
    expect(text).toContain("(2006-01-27; binding)");
    expect(text.split("The text in force is at ris.bka.gv.at")).toHaveLength(2);
    expect(told(plan, "italy-turin/")).toContain("(date not known; municipal, binding in that city)");
  });

  test("where advice and law stand in one instrument, which is which", () => {
    const text = told(plan, "sweden/");
    expect(text).toContain("(2005; some binding, some not, as told of each)");
    expect(text).toContain("Where it stands: Chapter 13, section 3; binding; read.");
    expect(text).toContain("Where it stands: Chapter 13, section 5, advice; not binding; read.");
  });

  test("from which length a figure was worked out", () => {
    expect(told(plan, "italy-rome/litres")).toContain(
      "Asked: at least 60 L, worked out from the length of the fish now, with the tail fin (as the plan gives it). The plan: 54 L",
    );
    expect(told(planOf([{ ...danios, length: undefined }] as never), "italy-rome/litres")).toContain(
      "(where the plan gives none, that of grown fish)",
    );
    const young: Group = { species: danioRerio, juveniles: 10 };
    expect(told(planOf([young]), "italy-rome/litres")).toContain("and for young any up to that)");
  });

  test("that the text in force decides, and whom to ask, once at the end", () => {
    for (const [options, closing] of [
      [{}, englishRequirements.requirements.closing],
      [inGerman, germanRequirements.requirements.closing],
    ] as const) {
      const text = told(plan, "", options);
      expect(text.endsWith(closing)).toBe(true);
      expect(text.split(closing)).toHaveLength(2);
    }
    expect(englishRequirements.requirements.closing).toContain("veterinary office");
    expect(germanRequirements.requirements.closing).toContain("Veterinäramt");
  });

  test("nowhere that the plan complies", () => {
    expect(told(plan, "")).not.toMatch(/compl(y|ies|iant)|lawful|legal\b|allowed/i);
    expect(told(plan, "", inGerman)).not.toMatch(/konform|zulässig|rechtmäßig|gesetzmäßig|entspricht dem/i);
  });

  test("a note that several requirements share once, with its number", () => {
    const text = told(plan, "switzerland/");
    expect(text.split("See note 1.")).toHaveLength(4);
    expect(text.split("Note 1: Body length is taken")).toHaveLength(2);
  });
});

describe("every answer", () => {
  test("depends: on how long the fish are", () => {
    const short = planOf([{ ...danios, length: 4 }], {
      base: { shape: "rectangle", length: 10, width: 9.8 },
    });
    expect(told(short, "switzerland/length")).toContain(
      "- Depends: The tank is at least 3 body lengths of the largest fish long. Asked: 9.8 to 10.2 cm,",
    );
    expect(told(short, "switzerland/length")).toContain(
      "It depends on how long the fish are without the tail fin: at one end it is met, at the other not.",
    );
    expect(told(short, "switzerland/length", inGerman)).toContain(
      "Es kommt darauf an, wie lang die Fische ohne Schwanzflosse sind: am einen Ende ist es erfüllt, am anderen nicht.",
    );
  });

  test("depends: on whether glass and the air below the rim count", () => {
    const plan = planOf([{ ...danios, unsexed: 9 }], { glass: 0.5, waterBelowRim: 3 });
    const text = told(plan, "italy-rome/litres");
    expect(text).toMatch(
      /Asked: at least 54 L, .* The plan: 45 to 54 L \(volume of the water or of the tank/,
    );
    expect(text).toContain("It depends on whether the volume of the water or of the tank counts:");
    const floor = planOf([{ species: carassiusAuratus, unsexed: 1, length: 15 }], {
      base: { shape: "rectangle", length: 37, width: 30 },
      glass: 0.5,
    });
    expect(told(floor, "switzerland/length")).toContain("without the tail fin and whether the glass counts:");
  });

  test("cannot be told: a length that nobody knows, and of which species", () => {
    const { size: _, ...unsized } = danioRerio;
    const plan = planOf([{ species: unsized, unsexed: 10 }]);
    const text = told(plan, "italy-rome/litres");
    expect(text).toContain("- Cannot be told: The volume of an aquarium");
    expect(text).toContain(
      "How much that is cannot be worked out from the length of the fish now, with the tail fin.",
    );
    expect(text).toContain("Not known: adult length (zebra danios).");
    expect(told(plan, "italy-rome/litres", inGerman)).toContain("Nicht bekannt: Endgröße (Zebrabärblinge).");
    const beside = planOf([danios, { species: { ...unsized, id: "danio-nova" }, unsexed: 2 }]);
    expect(told(beside, "italy-rome/litres")).toContain(
      "Asked: at least 60 L, and more for what is not known,",
    );
  });

  test("cannot be told: what the plan does not give", () => {
    const { tank, groups } = planOf([danios]);
    const { height: _, ...low } = tank;
    const plan = { tank: low, groups };
    expect(told(plan, "germany/least-volume")).toContain(
      "Asked: at least 54 L. The plan does not give the height of the tank.",
    );
    expect(told(plan, "austria/hardness-floor")).toContain(
      "Asked: at least 4 to 5 °dH. The plan does not give the general hardness.",
    );
    expect(told(plan, "austria/water-test")).toContain("A plan does not tell it.");
    expect(
      told(planOf([danios], { base: { shape: "circle", diameter: 60 } }), "italy-turin/sphere"),
    ).toContain("The plan: a round base. A plan does not tell it.");
  });

  test("cannot be told: no figure, or none that was read, which is not said to be read", () => {
    const plan = planOf([danios]);
    expect(told(plan, "finland/water")).toContain("The text states no figure by which to tell.");
    const unread = told(plan, "austria/species-table");
    expect(unread).toContain(
      "The figures of the text have not been read. Where it stands: Annex 5, 1.1 (8) and 1.2.",
    );
    expect(told(plan, "sweden/own-kind")).toContain("Asked: at least 2 animals. The plan: 10 animals.");
    expect(told(planOf([{ ...danios, unsexed: 1 }]), "sweden/own-kind")).toContain("The plan: 1 animal.");
  });

  test("cannot be told: the length of shrimps beside fish, where a city counts all animals", () => {
    const beside = planOf([
      { ...danios, unsexed: 4 },
      { species: neocaridinaDavidi, unsexed: 30 },
    ]);
    expect(told(beside, "italy-rome/litres")).toMatch(
      /Cannot be told: .* Asked: at least 24 L, and more for what is not known, .* The plan: 54 L/,
    );
    const shrimps = planOf([{ species: neocaridinaDavidi, unsexed: 30 }]);
    expect(told(shrimps, "italy-rome/litres")).toContain(
      "summed length of the animals. The text states no figure by which to tell. Where it stands: Art. 51 (1); read.",
    );
    expect(told(shrimps, "italy-rome/litres", inGerman)).toContain(
      "was andere Tiere beitragen, bleibt offen.",
    );
  });

  test("of several shoaling fish only those that are alone are told to be", () => {
    const alone = planOf([danios, { species: paracheirodonInnesi, unsexed: 1 }]);
    expect(told(alone, "sweden/own-kind")).toMatch(/Not met \(the neon tetra\): .* The plan: 1 animal\./);
    const shoals = planOf([danios, { species: paracheirodonInnesi, unsexed: 6 }]);
    expect(told(shoals, "sweden/own-kind")).toMatch(
      /Cannot be told \(zebra danios and neon tetras\): .* The plan: 6 to 10 animals\./,
    );
    expect(told(shoals, "sweden/own-kind", inGerman)).toContain("Im Plan: 6 bis 10 Tiere.");
  });

  test("from memory is told as such", () => {
    const plan = planOf([danios]);
    const recalled = rowsOf(plan, "germany/least-volume").map(
      (row) => ({ ...row, basis: "memory" }) as const,
    );
    expect(flat(describeRequirements(recalled, plan))).toContain("Smallest aquarium; recalled, not read.");
    expect(flat(describeRequirements(recalled, plan, inGerman))).toContain(
      "aus dem Gedächtnis, nicht gelesen.",
    );
  });

  test("an edge that must be longer than 150 cm is not told as reached at it", () => {
    const plan = planOf([{ species: balantiocheilosMelanopterus, unsexed: 6 }], {
      base: { shape: "rectangle", length: 150, width: 60 },
    });
    expect(told(plan, "germany/front-edge")).toMatch(
      /Not met \(.*Asked: more than 150 cm\. The plan: 150 cm/,
    );
    expect(told(plan, "germany/front-edge", inGerman)).toContain(
      "Verlangt: mehr als 150 cm. Im Plan: 150 cm",
    );
  });
});

describe("units are the reader's", () => {
  const plan = planOf([danios]);

  test("US gallons, inches and ppm", () => {
    const text = told(plan, "", { units: "us" });
    expect(text).toContain("Asked: at least 14 US gal. The plan: 14 US gal (gross volume");
    expect(text).toContain("Asked: at least 16 US gal. The plan: 14 US gal (gross volume");
    expect(text).toMatch(/front edge .*The plan: 24 in \(front edge/);
    expect(text).toMatch(/The plan: 14\d ppm \(general hardness\)/);
  });

  test("imperial gallons, in German", () => {
    expect(told(plan, "germany/least-volume", { units: "imperial", ...inGerman })).toContain("imp. Gallonen");
  });

  test("figures that differ are not told alike", () => {
    const near = planOf([danios], { height: 29.9 });
    expect(told(near, "austria/least-volume")).toContain("Asked: at least 54 L. The plan: 53.8 L");
    expect(told(near, "austria/least-volume", { units: "us" })).toMatch(
      /Asked: at least 14\.3 US gal\. The plan: 14\.2 US gal/,
    );
  });
});

describe("of no requirements", () => {
  const plan = planOf([{ species: neocaridinaDavidi, unsexed: 10 }]);

  test("it says that nothing is known, which is no leave", () => {
    expect(flat(describeRequirements([], plan))).toBe(
      "Nothing is known here of what a law or official guidance asks. That is no leave: the law where the tank stands decides, and it may ask much. The text in force decides: ask the competent authority, as a rule the veterinary office.",
    );
  });

  test("in German too", () => {
    expect(flat(describeRequirements([], plan, inGerman))).toMatch(
      /ist hier nicht bekannt\. Das ist keine Erlaubnis: /,
    );
  });
});

const standards = (await readFolder(root, "standards")).map(({ json }) => json as Jurisdiction);

test("the least volume of Germany is that of its file", () => {
  const [germany] = standards.filter(({ id }) => id === "germany");
  const rule = germany?.instruments[0]?.requirements[0]?.rule;
  expect(rule).toMatchObject({ kind: "least-volume", litres: 54 });
  expect(told(planOf([danios]), "germany/least-volume", inGerman)).toContain(
    "Verlangt: mindestens 54 l. Im Plan: 54 l",
  );
});

/** A gap where a name, a figure or a word is missing, or a word of the machine's. */
const gap = /undefined|null|NaN|Infinity|\[object| {2}| [.,;:)]|\( |\(\)|[,;:] ?\./;

/** Plans in which all fish of the catalogue live, grown and young, in tanks of every sort. */
const tanks: readonly Partial<PlannedTank>[] = [
  {},
  { base: { shape: "circle", diameter: 40 }, measured: "inner" },
  { base: { shape: "bowed", length: 200, width: 60, bow: 10 }, height: 60, glass: 1.2, waterBelowRim: 4 },
];
const crowds = [...Array(Math.ceil(allSpecies.length / 40)).keys()].flatMap((crowd) =>
  tanks.map((tank, index) =>
    planOf(
      allSpecies.slice(crowd * 40, crowd * 40 + 40).map((species) => ({
        species,
        [index === 1 ? "juveniles" : "unsexed"]: index + 1,
      })),
      tank,
    ),
  ),
);

describe.each([
  ["English", englishRequirements],
  ["German", germanRequirements],
])("every requirement that is known, in %s", (_, messages) => {
  const seen = new Set<string>();

  test("is told without a gap, in sentences", () => {
    for (const plan of [...crowds, ...samplePlans(runs(20))]) {
      const rows = officialRequirements(plan);
      for (const { id } of rows) seen.add(id);
      const text = describeRequirementsIn(messages, rows, plan);
      const items = text.replaceAll("\n  ", " ").split("\n").filter(Boolean);
      for (const line of items) expect(line).not.toMatch(gap);
      expect(items.filter((line) => line.startsWith("- "))).toHaveLength(rows.length);
      for (const item of items.filter((line) => line.startsWith("- ")))
        expect(item).toMatch(/^- \p{Lu}.*\.$/u);
    }
  });

  test("none is left out", () => {
    const left = standards.flatMap(({ id, instruments }) =>
      instruments
        .flatMap(({ requirements }) => requirements)
        .map((requirement) => `${id}/${requirement.id}`)
        .filter((known) => ![...seen].some((one) => one === known || one.startsWith(`${known}/`))),
    );
    expect(left).toEqual([]);
  });
});

test("German is whole", () => {
  for (const plan of crowds)
    expect(describeRequirements(officialRequirements(plan), plan, inGerman)).not.toContain("auf Englisch");
});

test("a text that is not translated is told as English", () => {
  const plan = planOf([danios]);
  const own = rowsOf(plan, "germany/better").map((row) => ({ ...row, asks: "Fish are not kept in hats." }));
  expect(told(plan, "germany/better", inGerman)).not.toContain("auf Englisch");
  expect(flat(describeRequirements(own, plan, inGerman))).toContain(
    "Nicht erfüllt: auf Englisch: Fish are not kept in hats.",
  );
});

test("the same in German by either function", () => {
  const plan = planOf([danios]);
  const rows = officialRequirements(plan);
  expect(describeRequirementsIn(germanRequirements, rows, plan)).toBe(
    describeRequirements(rows, plan, inGerman),
  );
});

test("no word lives outside the language, and Markdown has its headings", () => {
  const plan = planOf([danios]);
  const rows = officialRequirements(plan);
  const text = describeRequirementsIn(pseudoRequirements, rows, plan).replaceAll(
    danioRerio.names.en?.[0] ?? "",
    "",
  );
  expect(unmarked(text)).not.toMatch(/\p{L}/u);
  expect(describeRequirements(rows, plan, { format: "markdown" })).toMatch(/^## Austria: 2\. /m);
});

describe("what cannot be told is refused, with its place", () => {
  const plan = planOf([danios]);
  const rows = rowsOf(plan, "germany/group");
  const [one] = rows;
  const volume = rowsOf(plan, "germany/least-volume")[0];
  const changed =
    (change: object, of = one) =>
    () =>
      describeRequirements([{ ...of, ...change } as OfficialRequirement], plan);

  test.each([
    ["no text", { asks: 3 }, "requirements[0].asks"],
    ["no caution", { caution: undefined }, "requirements[0].caution"],
    ["a force that is none", { force: "by habit" }, "requirements[0].force"],
    ["a basis that is none", { basis: "rumour" }, "requirements[0].basis"],
    ["an answer that is none", { answer: "fine" }, "requirements[0].answer"],
    ["a species of another plan", { species: ["betta-splendens"] }, "requirements[0].species[0]"],
    ["a figure that is none", { asked: { min: Number.NaN } }, "requirements[0].asked.min"],
    ["ends the wrong way round", { asked: { min: 3, max: 2 } }, "requirements[0].asked"],
    ["a unit that is none", { asked: { min: 3, max: 3, unit: "in" } }, "requirements[0].asked.unit"],
    ["a length that is none", { asked: { min: 3, max: 3, by: "girth" } }, "requirements[0].asked.by"],
    ["a measure that is none", { has: { of: "price", min: 3, max: 3 } }, "requirements[0].has.of"],
    ["litres of a length", { has: { of: "length", min: 3, max: 3, unit: "L" } }, "requirements[0].has.unit"],
    [
      "a shape that is none",
      { has: { of: "shape of the base", value: "star" } },
      "requirements[0].has.value",
    ],
    ["no answer without why", { answer: "undetermined" }, "requirements[0].open"],
    [
      "a reason that is none",
      { answer: "undetermined", open: { reason: "mood" } },
      "requirements[0].open.reason",
    ],
    [
      "a trait that is none",
      { answer: "undetermined", open: { reason: "missing", trait: "size.hat", species: [] } },
      "requirements[0].open.trait",
    ],
    ["not met by nothing", { answer: "not-met", has: undefined }, "requirements[0].has"],
  ])("%s", (_, change, at) => {
    expect(changed(change)).toThrow(at);
  });

  test("sizes that are none, no list, an unknown option", () => {
    expect(changed({ has: { ...volume?.has, sizes: "both" } }, volume)).toThrow("requirements[0].has.sizes");
    expect(() => describeRequirements(one as never, plan)).toThrow("requirements");
    expect(() => describeRequirements(rows, plan, { unit: "us" } as never)).toThrow("options.unit");
  });
});
