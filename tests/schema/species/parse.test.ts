import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { describeProblem, InvalidInputError, parseSpecies, safeParseSpecies } from "../../../src/schema";
import { resolve } from "../../../src/species";
import { runs } from "../../runs";
import { freeze } from "../../species/freeze";
import { mutants } from "../../species/mutants";
import { files, leastRecord } from "../../species/records";
import { problemsOf } from "../problems";

describe("what is no record", () => {
  test("an empty object lacks an id, a name, vernacular names and sources", () => {
    expect(problemsOf({})).toMatchObject([
      { path: "id", found: undefined, expected: "string" },
      { path: "taxonomy", found: undefined, expected: "object" },
      { path: "names", found: undefined },
      { path: "sources", found: undefined },
    ]);
  });

  test.each([
    undefined,
    null,
    true,
    0,
    Number.NaN,
    10n,
    "danio-rerio",
    Symbol("danio"),
    [],
    [leastRecord],
    parseSpecies,
  ])("%o is no object with fields", (input) => {
    expect(problemsOf(input)).toMatchObject([{ path: "", code: "type", found: input }]);
    expect(() => parseSpecies(input)).toThrow(InvalidInputError);
  });
});

describe("what is a record", () => {
  test("a name, an id made of it, and lists of vernacular names and sources are enough", () => {
    expect(parseSpecies(leastRecord)).toStrictEqual(leastRecord);
  });

  test("every file of data/species is one", () => {
    expect(files.length).toBeGreaterThan(20);
    for (const { id, json } of files) expect(parseSpecies(json).id).toBe(id);
  });

  test("the line that tells editors of the schema is left out, all else is kept", () => {
    for (const { json } of files) {
      const record = parseSpecies(json);
      expect(record).not.toHaveProperty("$schema");
      expect({ $schema: "../schemas/species.schema.json", ...record }).toStrictEqual(json);
    }
  });

  test("a figure may be stated on one side only", () => {
    const acid = [{ by: "common-practice", value: { max: 7 }, as: "kept" }];
    expect(parseSpecies({ ...leastRecord, water: { pH: acid } }).water?.pH).toStrictEqual(acid);
  });
});

/** A record as a first contribution might bring it, with every mistake at once. */
const broken: unknown = JSON.parse(`{
  "id": "danio-reiro",
  "taxonomy": { "name": "Danio rerio", "authority": "", "family": "Danionidae", "order": "Cypriniformes", "kind": "fisch" },
  "names": { "en": ["zebra danio"], "English": ["zebrafish"], "__proto__": ["danio"] },
  "sources": { "study": { "cite": "a-study", "at": "p. 4" }, "unread": { "cite": "a-survey", "at": "p. 5" }, "nowhere": { "cite": "a-survey" }, "__proto__": { "cite": "a-study", "at": "p. 4" } },
  "colour": "<b onclick=alert(1)>blue</b>",
  "__proto__": { "id": "danio-rerio" },
  "constructor": { "prototype": {} },
  "size": {
    "adultLength": [
      { "by": "study", "value": 4, "measure": "TL" },
      { "by": "study", "value": 5, "as": "greatest" },
      { "by": "study", "value": "4", "as": "usual", "measure": "TL" }
    ],
    "lifespan": [{ "by": "curator", "value": 5, "as": "usual" }, { "by": "study", "value": 6 }]
  },
  "water": {
    "temprature": [{ "by": "study", "value": { "min": 18, "max": 24 }, "as": "kept" }],
    "temperature": [
      { "by": "handbook", "value": { "min": 18, "max": 24 }, "as": "kept" },
      { "by": "study", "value": { "min": 22, "max": 26 }, "as": "optimum" },
      { "by": "study", "value": { "min": 16, "max": 78 }, "as": "tolerated" },
      { "by": "study", "value": { "max": 39 }, "as": "limit", "unit": "celsius" }
    ],
    "pH": [{ "by": "study", "value": { "min": 8, "max": 6 }, "as": "kept" }],
    "generalHardness": [{ "by": "study", "value": { "min": 5, "max": 19 }, "as": "keeping" }]
  },
  "space": {
    "zones": [{ "by": "study", "value": "middle" }],
    "cover": [{ "by": "study" }],
    "height": [{ "by": "study", "value": 30 }, { "by": "study", "value": 40 }],
    "openWater": [{ "by": "nowhere", "value": 0.4 }],
    "jumps": [{ "by": "study", "value": "startled", "adopt": "Seen often.", "setAside": "Seen once." }]
  },
  "temperament": {
    "acts": [
      { "by": "study", "value": "none" },
      { "by": "common-practice", "value": { "does": "chases", "target": "own-kind" } }
    ]
  },
  "social": {
    "living": [
      { "by": "study", "value": "shoal", "adopt": "Seen." },
      { "by": "common-practice", "value": "group", "adopt": "Seen too." }
    ]
  },
  "forms": {
    "Long Fin": { "names": { "en": ["long-fin zebra danio"] } },
    "leopard": { "names": { "en": [] }, "stripes": false, "appearance": { "longFins": [{ "by": "study", "value": "no" }] } }
  }
}`);

/** Where, what stood there, what would have been accepted, and what the field means. */
const mistakes: readonly (readonly [path: string, found: unknown, expected: RegExp, explanation?: RegExp])[] =
  [
    ["id", "danio-reiro", /"danio-rerio", from the accepted name/, /The accepted name in lower case/],
    ["taxonomy.authority", "", /at least 1 character/, /Who described it, and when/],
    ["taxonomy.authority", "", /author and year, such as Hora, 1928/, /Who described it, and when/],
    [
      "taxonomy.kind",
      "fisch",
      /one of fish, shrimp, crayfish, crab, snail, mussel, frog/,
      /frog: A frog that/,
    ],
    ["names.English", ["zebrafish"], /language tag such as en/, /the commonest first/],
    ["names.__proto__", "__proto__", /another key/, /the commonest first/],
    ["sources.unread", "unread", /a source that some statement names/, /The sources of its statements/],
    [
      "sources.nowhere",
      { cite: "a-survey" },
      /at: the page, row or address; or memory: true/,
      /The sources of its statements/,
    ],
    ["sources.__proto__", "__proto__", /another key/, /The sources of its statements/],
    ["sources.__proto__", "__proto__", /a source that some statement names/, /The sources of its statements/],
    ["colour", "<b onclick=alert(1)>blue</b>", /no such field/],
    ["__proto__", { id: "danio-rerio" }, /no such field/],
    ["constructor", { prototype: {} }, /no such field/],
    ["size.adultLength[0].as", undefined, /usual or greatest/, /greatest: The greatest on record\./],
    [
      "size.adultLength[1].measure",
      undefined,
      /what was measured, or unstated/,
      /SL: Standard length: tip of the snout/,
    ],
    [
      "size.adultLength[2].value",
      "4",
      /number/,
      /Length of grown animals, by sex and by what was measured\. In cm/,
    ],
    ["size.lifespan[0].note", undefined, /how the sources were weighed/, /What a reader should know/],
    ["size.lifespan[1].as", undefined, /usual or greatest/, /usual: What most adults reach in aquaria\./],
    [
      "water.temprature",
      [{ by: "study", value: { min: 18, max: 24 }, as: "kept" }],
      /no such field/,
      /The water that it is kept in/,
    ],
    [
      "water.temperature[0].by",
      "handbook",
      /one of study, .*common-practice, curator/,
      /A key of this record's sources/,
    ],
    [
      "water.temperature",
      { kept: { min: 18, max: 24 }, optimum: { min: 22, max: 26 } },
      /optimum within kept/,
      /Mend the meaning, or set the statement aside/,
    ],
    [
      "water.temperature[2].value.max",
      78,
      /-2 to 48 degC/,
      /If the source uses another unit, name it in the statement's unit\./,
    ],
    [
      "water.temperature[3].unit",
      "celsius",
      /one of degC, degF, K/,
      /The source's unit, if it is not degC\./,
    ],
    ["water.pH[0].value", { min: 8, max: 6 }, /min not above max/, /Acidity of the water\./],
    [
      "water.generalHardness[0].as",
      "keeping",
      /one of kept, optimum, tolerated, limit, wild, tested/,
      /kept: The span a handbook or database gives for keeping it over years\./,
    ],
    [
      "space.zones[0].value",
      "middle",
      /one of surface, midwater, bottom/,
      /midwater: The middle third of the water\./,
    ],
    ["space.cover[0]", { by: "study" }, /a value, or a note/, /The least share of the plan area/],
    [
      "space.height[1]",
      40,
      /one of them with adopt; space\.height\[0\] is as well supported/,
      /Give the statement to use an adopt with the reason/,
    ],
    ["space.jumps[0].setAside", "Seen once.", /adopt or setAside, not both/, /Why this statement is not/],
    [
      "temperament.acts",
      ["none", { does: "chases", target: "own-kind" }],
      /"none" alone, or the others alone/,
      /"none" if it is known to leave all others alone/,
    ],
    [
      "social.living[1].adopt",
      "Seen too.",
      /one adopted statement; social\.living\[0\] is adopted too/,
      /Why this statement is the one to use/,
    ],
    [
      "forms.Long Fin",
      { names: { en: ["long-fin zebra danio"] } },
      /another key: lower-case words joined by hyphens/,
      /Forms that were bred/,
    ],
    ["forms.leopard.names.en", [], /at least 1 entry/, /the commonest first/],
    ["forms.leopard.stripes", false, /no such field/, /Forms that were bred/],
    ["forms.leopard.appearance.longFins[0].value", "no", /boolean/, /A fin, wild or bred, trails/],
  ];

describe("a record with many mistakes", () => {
  const problems = problemsOf(freeze(broken));

  for (const [path, found, expected, explanation] of mistakes) {
    test(`${path}: ${expected} is told, with what stood there`, () => {
      const [problem, ...more] = problems.filter(
        (candidate) => candidate.path === path && expected.test(candidate.expected),
      );
      expect(more).toStrictEqual([]);
      expect(problem?.found).toStrictEqual(found);
      if (explanation) expect(problem?.explanation).toMatch(explanation);
      else expect(problem?.explanation).toBeUndefined();
    });
  }

  test("nothing else is told, and all of it at once", () => {
    expect(problems.map(({ path }) => path).sort()).toStrictEqual(mistakes.map(([path]) => path).sort());
  });

  test("the error that parseSpecies throws says a sentence for each", () => {
    const parsed = safeParseSpecies(broken);
    const lines = parsed.success ? [] : parsed.problems.map(describeProblem);
    expect(lines).toHaveLength(mistakes.length);
    expect(() => parseSpecies(broken)).toThrow(InvalidInputError);
    expect(() => parseSpecies(broken)).toThrow(lines.join("\n"));
  });
});

describe("what should never come", () => {
  const nested = (depth: number): unknown => JSON.parse("[".repeat(depth) + "]".repeat(depth));
  const circle: Record<string, unknown> = {};
  circle.self = circle;
  const noText = JSON.parse('{ "toString": 1, "valueOf": 1, "toJSON": 1 }');
  const junk = {
    nested: nested(50_000),
    circle,
    noText,
    bigint: 10n,
    symbol: Symbol("danio"),
    call: () => 4,
    notANumber: Number.NaN,
    endless: Number.POSITIVE_INFINITY,
    nothing: null,
  };
  const statement = { by: "common-practice", value: { min: 64, max: 75 }, unit: "degF", as: "kept" };
  const fields = ["by", "value", "unit", "as", "stage", "at", "note", "adopt", "setAside"];

  test.each(Object.entries(junk))("%s anywhere in a statement is a problem, not a crash", (_, thing) => {
    for (const field of fields) {
      const temperature = [
        { ...statement, [field]: thing },
        { ...statement, [field]: thing },
      ];
      const told = problemsOf({ ...leastRecord, water: { temperature } });
      expect(told.map(({ path }) => path)).toContainEqual(expect.stringContaining(`temperature[0].${field}`));
      expect(() => parseSpecies({ ...leastRecord, water: { temperature } })).toThrow(InvalidInputError);
    }
  });

  test.each(Object.entries(junk))(
    "%s in place of a part of the record is a problem, not a crash",
    (_, thing) => {
      for (const part of ["id", "taxonomy", "names", "sources", "identifiers", "water", "size", "forms"]) {
        expect(() => parseSpecies({ ...leastRecord, [part]: thing }), part).toThrow(InvalidInputError);
      }
    },
  );

  test.each([
    [
      "water.temperature[0].value",
      { water: { temperature: [{ ...statement, value: { min: 75, max: 64 } }] } },
    ],
    [
      "water.flow[0].value",
      { water: { flow: [{ by: "common-practice", value: { min: "strong", max: "still" } }] } },
    ],
    [
      "social.group[0].value.avoid",
      { social: { group: [{ by: "common-practice", value: { least: 8, avoid: { min: 5, max: 2 } } }] } },
    ],
  ])("%s runs from the lower end to the higher", (path, fields) => {
    expect(problemsOf({ ...leastRecord, ...fields })).toMatchObject([
      { path, expected: "min not above max" },
    ]);
  });

  test("an endless figure is told once, where it stands", () => {
    const endless = { ...statement, value: { min: Number.POSITIVE_INFINITY } };
    expect(problemsOf({ ...leastRecord, water: { temperature: [endless] } })).toMatchObject([
      { path: "water.temperature[0].value.min", expected: "a finite number" },
    ]);
  });

  test("a figure too large to convert is a problem, even set aside", () => {
    const huge = {
      by: "common-practice",
      value: { min: 1e308 },
      unit: "mmol/L-CaCO3",
      as: "kept",
      setAside: "A slip.",
    };
    expect(problemsOf({ ...leastRecord, water: { generalHardness: [huge] } })).toMatchObject([
      { path: "water.generalHardness[0].unit" },
    ]);
  });

  test("whatever is given, the answer is a list of problems", () => {
    fc.assert(
      fc.property(
        fc.anything({ withBigInt: true, withNullPrototype: true, withMap: true, withDate: true }),
        (input) => {
          expect(problemsOf(input)).not.toStrictEqual([]);
        },
      ),
    );
  });
});

test("a true record with something changed anywhere either resolves, or is refused with reasons", () => {
  const count = { accepted: 0, refused: 0 };
  fc.assert(
    fc.property(mutants, (mutant) => {
      const parsed = safeParseSpecies(freeze(mutant));
      count[parsed.success ? "accepted" : "refused"] += 1;
      if (parsed.success) {
        const profile = resolve(freeze(parsed.record));
        expect(isDeepStrictEqual(JSON.parse(JSON.stringify(profile)), profile)).toBe(true);
      } else {
        expect(parsed.problems.map(describeProblem)).not.toStrictEqual([]);
      }
    }),
    { numRuns: runs(150) },
  );
  expect(Math.min(count.accepted, count.refused)).toBeGreaterThan(5);
});
