import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "../../../src/catalog";
import { InvalidInputError } from "../../../src/errors";
import { allRecords, recordById } from "../../../src/evidence";
import { applyForm, factAt, resolve, type SpeciesRecord, traitPaths } from "../../../src/species";
import { factRows, nameRows, sourceRows, statementRows, taxonRows, traitRows } from "../../../src/tables";
import { someNamed } from "../../drawn";
import { expectRefused } from "../../refused";
import { seedOf } from "../../runs";

const recordOf = (id: string): SpeciesRecord => {
  const record = recordById(id);
  if (!record) throw new Error(`${id} is not in the catalog.`);
  return record;
};

describe("species", () => {
  test("are rows of records and of profiles alike", () => {
    expect(taxonRows(allRecords)).toStrictEqual(taxonRows(allSpecies));
    expect(nameRows(allRecords)).toStrictEqual(nameRows(allSpecies));
  });

  test("bear their name with and without its author, and their keys elsewhere", () => {
    const [row] = taxonRows([recordOf("puntigrus-tetrazona")]);
    expect(row).toMatchObject({
      taxonID: "puntigrus-tetrazona",
      scientificName: "Puntigrus tetrazona (Bleeker, 1855)",
      canonicalName: "Puntigrus tetrazona",
      genus: "Puntigrus",
      kind: "fish",
    });
    expect(row?.identifiers).toMatch(/^\w+:\w+( \| \w+:\w+)*$/);
  });

  test("have their vernacular names by rank, those of forms apart, and synonyms without a language", () => {
    const rows = nameRows([recordOf("puntigrus-tetrazona")]);
    expect(
      rows.filter(({ form, language }) => form === null && language === "en").map(({ rank }) => rank),
    ).toStrictEqual(recordOf("puntigrus-tetrazona").names.en?.map((_, index) => index + 1));
    expect(rows.some(({ form }) => form === "long-fin")).toBe(true);
    const synonyms = rows.filter(({ nameType }) => nameType === "synonym");
    expect(synonyms.map(({ name }) => name)).toContain("Barbus tetrazona");
    expect(synonyms.every(({ language }) => language === null)).toBe(true);
  });
});

test("names of a form that is applied are told as those of the form", () => {
  const species = speciesById("puntigrus-tetrazona");
  if (!species) throw new Error("The tiger barb is not in the catalog.");
  const told = nameRows([applyForm(species, "long-fin")]);
  const known = nameRows([species]);
  for (const { nameID, form, name } of told)
    expect(known.map((row) => [row.nameID, row.form, row.name])).toContainEqual([nameID, form, name]);
  expect(told.map(({ name }) => name)).toContain("long-fin tiger barb");
  const { de, ...english } = species.forms?.["long-fin"]?.names ?? {};
  const forms = { ...species.forms, "long-fin": { names: english } };
  const germanOfSpecies = nameRows([applyForm({ ...species, forms }, "long-fin")]).filter(
    ({ form, language }) => form === null && language === "de",
  );
  expect(de).toBeDefined();
  expect(germanOfSpecies.map(({ name }) => name)).toStrictEqual(species.names.de);
});

describe("traits", () => {
  test("are all there, measured ones with a unit that UCUM knows", () => {
    const rows = traitRows();
    expect(rows.map(({ trait }) => trait)).toStrictEqual(traitPaths);
    expect(rows.filter(({ unit, ucum }) => unit !== null && ucum === null)).toStrictEqual([]);
    expect(
      rows.filter(({ least }) => least !== null).map(({ trait, least }) => [trait, least]),
    ).toStrictEqual([
      ["water.generalHardness", 0],
      ["water.carbonateHardness", 0],
      ["water.salinity", 0],
    ]);
  });
});

test("figures of facts and statements have no dust of the binary system", () => {
  for (const { min, max, number } of [...factRows(allSpecies), ...statementRows(allRecords)]) {
    for (const figure of [min, max, number])
      if (figure !== null) expect(String(figure)).toBe(String(Number(figure.toPrecision(12))));
  }
});

/** A record that states one trait. */
const stating = (section: string, trait: string, statements: readonly object[]): SpeciesRecord =>
  ({
    id: "genus-epithet",
    taxonomy: { name: "Genus epithet", authority: "Author, 1900", family: "F", order: "O", kind: "fish" },
    names: {},
    sources: {
      book: { cite: "book-1990", at: "12" },
      mirror: { cite: "site", at: "x", root: "book-1990", commercial: false },
      paper: { cite: "paper-2000", memory: true },
    },
    [section]: { [trait]: statements },
  }) as SpeciesRecord;

describe("statements", () => {
  test("hold numbers apart from words", () => {
    for (const row of statementRows(someNamed(allRecords, ({ id }) => id, 20, 0))) {
      for (const number of [row.number, row.min, row.max])
        expect(number === null || Number.isFinite(number)).toBe(true);
      const held = [
        row.number ?? row.min ?? row.max,
        row.word ?? row.minWord ?? row.maxWord,
        row.truth,
        row.text,
      ];
      const isNote = row.counts === "informs" && row.remarks !== null;
      expect([isNote ? 0 : 1, 1]).toContain(held.filter((cell) => cell !== null).length);
    }
  });

  test("are in the trait's unit, and name the unit of the source", () => {
    const [row] = statementRows([
      stating("water", "temperature", [
        { by: "book", as: "kept", value: { min: 68, max: 77 }, unit: "degF" },
      ]),
    ]);
    expect(row?.min).toBeCloseTo(20, 9);
    expect(row?.max).toBeCloseTo(25, 9);
    expect(row).toMatchObject({ unit: "degC", statedUnit: "degF", sourceID: "book-1990", at: "12" });
  });

  test("of several parts have a row for each", () => {
    const rows = statementRows([
      stating("temperament", "acts", [
        { by: "book", value: { does: "chases", target: "own-sex", doer: "male" } },
      ]),
    ]);
    expect(rows.map(({ statementID, part, word }) => [statementID, part, word])).toStrictEqual([
      ["genus-epithet/temperament.acts/1", "does", "chases"],
      ["genus-epithet/temperament.acts/1", "target", "own-sex"],
      ["genus-epithet/temperament.acts/1", "doer", "male"],
    ]);
    const hides = statementRows([
      stating("space", "hides", [
        { by: "book", value: { anyOf: ["caves", "wood"], each: 1, holder: "male" } },
      ]),
    ]);
    expect(hides.map(({ part, word, number }) => [part, word ?? number])).toStrictEqual([
      ["anyOf.1", "caves"],
      ["anyOf.2", "wood"],
      ["each", 1],
      ["holder", "male"],
    ]);
  });

  test("hold in one part the words of the trait's list, and in no other part a word of it", () => {
    const listOf = new Map(traitRows().map(({ trait, words }) => [trait, words?.split(" | ") ?? []]));
    const isListed = new Map<string, Map<string, Set<boolean>>>();
    for (const { trait, part, word, minWord, maxWord } of statementRows(allRecords)) {
      const name = part.replace(/\.\d+$/, "");
      const parts = isListed.get(trait) ?? new Map<string, Set<boolean>>();
      for (const said of [word, minWord, maxWord].filter((each) => each !== null && each !== "none")) {
        const listed = listOf.get(trait)?.some((one) => one === said) ?? false;
        parts.set(name, (parts.get(name) ?? new Set()).add(listed));
      }
      isListed.set(trait, parts);
    }
    const told = [...isListed].filter(([, parts]) => parts.size > 0);
    expect(told.length).toBeGreaterThan(20);
    for (const [trait, parts] of told) {
      const ofList = [...parts.values()].map((listed) => [...listed]).filter(([first]) => first);
      expect(
        [...parts.values()].every((listed) => listed.size === 1),
        trait,
      ).toBe(true);
      expect(ofList, trait).toHaveLength(1);
    }
  });

  test("of a least room tell for how many animals it is, beside its size in the unit", () => {
    const [row] = statementRows([
      stating("space", "baseLength", [{ by: "book", value: { least: 60, for: 6 } }]),
    ]);
    expect(row).toMatchObject({ part: "least", number: 60, unit: "cm", animals: 6 });
  });

  test("say what becomes of each: used, standing beside, repeating its root, set aside, or a note alone", () => {
    const rows = statementRows([
      stating("water", "pH", [
        { by: "book", as: "kept", value: { min: 6, max: 7 } },
        { by: "paper", as: "kept", value: { min: 5.5, max: 7.5 } },
        { by: "mirror", as: "kept", value: { min: 6, max: 8 } },
        { by: "common-practice", as: "kept", value: { min: 5, max: 8 }, setAside: "Too wide." },
        { by: "curator", note: "Soft water is best." },
      ]),
    ]);
    expect(rows.map(({ by, counts, basis }) => [by, counts, basis])).toStrictEqual([
      ["book", "used", "published"],
      ["paper", "stands", "memory"],
      ["mirror", "repeats", "published"],
      ["common-practice", "set-aside", "common-practice"],
      ["curator", "informs", "curated"],
    ]);
    expect(rows.map(({ root, commercialUse }) => [root, commercialUse])[2]).toStrictEqual([
      "book-1990",
      false,
    ]);
  });

  test("agree where they say what the one that is used says, its open end closed alike", () => {
    const rows = statementRows([
      stating("water", "pH", [
        { by: "book", as: "kept", value: { min: 6, max: 7 } },
        { by: "paper", as: "kept", value: { min: 6 } },
        { by: "common-practice", as: "kept", value: { min: 6, max: 7 } },
        { by: "curator", as: "kept", value: { max: 8 } },
      ]),
      stating("social", "living", [
        { by: "book", value: "shoal" },
        { by: "paper", value: "shoal" },
        { by: "common-practice", value: "pair" },
      ]),
    ]);
    expect(rows.map(({ counts }) => counts)).toStrictEqual([
      "used",
      "agrees",
      "agrees",
      "stands",
      "used",
      "agrees",
      "stands",
    ]);
  });

  test("of the wild, of tests and of young animals inform: no fact rests on them", () => {
    const rows = statementRows([
      stating("water", "temperature", [
        { by: "book", as: "kept", value: { min: 20, max: 26 } },
        { by: "paper", as: "wild", value: { min: 15, max: 30 } },
        { by: "paper", as: "tested", value: { max: 34 } },
        { by: "book", as: "limit", value: { max: 36 }, stage: "juvenile" },
        { by: "book", as: "limit", value: { max: 38 }, stage: "adult" },
        { by: "curator", as: "tested", value: { max: 33 }, setAside: "An outlier." },
        { by: "mirror", as: "limit", value: { max: 36 }, stage: "juvenile" },
      ]),
    ]);
    expect(rows.map(({ counts }) => counts)).toStrictEqual([
      "used",
      "informs",
      "informs",
      "informs",
      "used",
      "set-aside",
      "repeats",
    ]);
  });

  test("are used where the fact of the profile names who says so", () => {
    for (const record of someNamed(allRecords, ({ id }) => id, 60, seedOf(0))) {
      const profile = resolve(record);
      for (const { counts, form, trait, by } of statementRows([record])) {
        if (counts !== "used") continue;
        const held = form === null ? profile : profile.forms?.[form];
        const [fact] = traitPaths.flatMap((path) => (path === trait && held && factAt(held, path)) || []);
        expect(fact?.said, `${record.id}, ${trait}`).toContain(by);
      }
    }
  });

  test("that fill the open end of the one that is used are used too", () => {
    const rows = statementRows([
      stating("water", "pH", [
        { by: "book", as: "limit", value: { min: 4 } },
        { by: "paper", as: "limit", value: { max: 9 } },
      ]),
    ]);
    expect(rows.map(({ counts }) => counts)).toStrictEqual(["used", "used"]);
  });

  test("of forms name the form", () => {
    const rows = statementRows([recordOf("puntigrus-tetrazona")]).filter(({ form }) => form === "long-fin");
    expect(rows.map(({ trait }) => trait)).toContain("appearance.longFins");
  });
});

describe("facts", () => {
  const danio = speciesById("danio-rerio");
  const rows = factRows(danio ? [danio] : []);
  const of = (trait: string) => rows.filter((row) => row.trait === trait && row.form === null);

  test("are those of the profile: figures by meaning, lengths with their totals, rooms by animals", () => {
    expect(of("water.temperature").map(({ meaning }) => meaning)).toStrictEqual(
      Object.keys(danio?.water?.temperature?.value ?? {}),
    );
    const totals = of("size.adultLength").filter(({ part }) => part === "total");
    expect(totals.map(({ min, max }) => ({ min, max }))).toStrictEqual(
      danio?.size?.adultLength?.value.map(({ total }) => total),
    );
    expect(
      of("space.baseLength").map(({ animals, number }) => ({ least: number, for: animals })),
    ).toStrictEqual(danio?.space?.baseLength?.value);
    expect(of("water.flow")[0]).toMatchObject({ minWord: danio?.water?.flow?.value.min, min: null });
  });

  test("tell of a list that is known to be empty", () => {
    const [row] = factRows([resolve(stating("predation", "eats", [{ by: "book", value: "none" }]))]);
    expect(row).toMatchObject({ trait: "predation.eats", word: "none", basis: "published", saidBy: "book" });
  });

  test("name their sources where the profile does, and whether another value stands", () => {
    const record = recordOf("puntigrus-tetrazona");
    const pH = factRows([resolve(record)]).find(({ trait, form }) => trait === "water.pH" && form === null);
    expect(pH).toMatchObject({ saidBy: "fishbase", disputed: true, min: 6, max: 8 });
  });

  test("of the wild and of tests name no source and no basis, for those of the fact are not theirs", () => {
    const rows = factRows([
      resolve(
        stating("water", "temperature", [
          { by: "book", as: "kept", value: { min: 20, max: 26 } },
          { by: "paper", as: "wild", value: { min: 15, max: 30 } },
          { by: "common-practice", as: "tested", value: { max: 34 } },
        ]),
      ),
    ]);
    expect(rows.map(({ meaning, basis, saidBy }) => [meaning, basis, saidBy])).toStrictEqual([
      ["kept", "published", "book"],
      ["wild", null, null],
      ["tested", null, null],
    ]);
  });

  test("say where the optimum stands in, and which ends are a handbook's", () => {
    const [kept] = factRows([
      resolve(
        stating("water", "generalHardness", [{ by: "book", as: "optimum", value: { min: 2, max: 8 } }]),
      ),
    ]);
    expect(kept).toMatchObject({ meaning: "kept", standsIn: true, basis: "derived" });
    const [bound] = factRows([
      resolve(
        stating("water", "generalHardness", [
          { by: "book", as: "kept", value: { max: 8 }, precision: "class" },
        ]),
      ),
    ]);
    expect(bound).toMatchObject({ min: null, max: 8, classEnds: "max", standsIn: false });
  });
});

describe("sources", () => {
  test("are rows with authors, year and place, and with what the licence says", () => {
    const source = {
      id: "froese-2020",
      type: "dataset",
      title: "FishBase",
      author: [{ family: "Froese", given: "R." }, { literal: "FishBase team" }, { family: "Pauly" }],
      issued: { "date-parts": [[2020, 5]] },
      DOI: "10.1000/1",
      custom: { commercial: false },
    };
    expect(sourceRows({ "froese-2020": source, gone: undefined })).toStrictEqual([
      {
        sourceID: "froese-2020",
        type: "dataset",
        title: "FishBase",
        authors: "Froese, R.; FishBase team; Pauly",
        year: 2020,
        container: null,
        volume: null,
        issue: null,
        pages: null,
        publisher: null,
        doi: "10.1000/1",
        url: null,
        commercialUse: false,
        remark: null,
      },
    ]);
  });
});

test.each(Object.entries({ taxonRows, nameRows, statementRows, factRows, sourceRows }))(
  "%s refuses what is none",
  (_, rowsOf) => {
    for (const given of [undefined, null, 7, "danio-rerio"]) {
      expect(() => Reflect.apply(rowsOf, undefined, [given])).toThrow(InvalidInputError);
    }
  },
);

test("facts are of profiles: records, whose traits hold statements, are refused", () => {
  expect(() => Reflect.apply(factRows, undefined, [[recordOf("danio-rerio")]])).toThrow(InvalidInputError);
  expect(() => Reflect.apply(factRows, undefined, [[null]])).toThrow(InvalidInputError);
});

const danio = recordOf("danio-rerio");
const withTaxonomy = (changed: object) => ({ ...danio, taxonomy: { ...danio.taxonomy, ...changed } });

test.each([
  ["nothing", null, ""],
  ["an empty object", {}, ".id"],
  ["an id alone", { id: "danio-rerio" }, ".taxonomy"],
  ["no author", withTaxonomy({ authority: undefined }), ".taxonomy.authority"],
  ["synonyms that are a text", withTaxonomy({ synonyms: "Brachydanio" }), ".taxonomy.synonyms"],
  ["names that are a text", { ...danio, names: { en: "zebra danio" } }, ".names.en"],
  ["a form that is nothing", { ...danio, forms: { veil: null } }, ".forms.veil"],
])("a table of species refuses %s by its place", (_, given, at) => {
  const list = [danio, given];
  expectRefused(() => Reflect.apply(nameRows, undefined, [list]), `species[1]${at}`);
  expectRefused(() => Reflect.apply(taxonRows, undefined, [list]), `species[1]${at}`);
  expectRefused(() => Reflect.apply(statementRows, undefined, [list]), `records[1]${at}`);
});

test.each([
  ["without sources", { ...danio, sources: undefined }, "records[0].sources"],
  ["whose pH is a number", { ...danio, water: { pH: 7 } }, "records[0].water.pH"],
  ["with a statement that is nothing", { ...danio, water: { pH: [null] } }, "records[0].water.pH[0]"],
])("statements are of records, and not of one %s", (_, record, at) => {
  expectRefused(() => Reflect.apply(statementRows, undefined, [[record]]), at);
});

test("a source without a title is refused", () => {
  expectRefused(
    () => Reflect.apply(sourceRows, undefined, [{ a: { id: "a", type: "book" } }]),
    "sources.a.title",
  );
  expectRefused(() => Reflect.apply(sourceRows, undefined, [{ a: 5 }]), "sources.a");
});
