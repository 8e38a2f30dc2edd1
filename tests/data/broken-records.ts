/** A record that went wrong by a few keystrokes. */
export interface Broken {
  /** What went wrong. */
  readonly mistake: string;
  /** What stands in the file, once or more; its first place is meant. */
  readonly from: string;
  /** What the keeper typed instead. */
  readonly to: string;
  /** What is told. */
  readonly told: RegExp;
  /** The beginning of the line that is named, where it is another one. */
  readonly at?: string;
  /** Nothing could show better how it should be. */
  readonly example?: false;
}

type Row = readonly [mistake: string, from: string, to: string, told: RegExp, at?: string];

const rows = (list: readonly Row[], example?: false): readonly Broken[] =>
  list.map(([mistake, from, to, told, at]) => ({
    mistake,
    from,
    to,
    told,
    ...(at !== undefined && { at }),
    ...(example === false && { example }),
  }));

const usual = '"value": 4, "as": "usual", "measure": "TL" }';
const kept = '"value": { "min": 18, "max": 24 }, "as": "kept" }';
const living = '{ "by": "common-practice", "value": "shoal" }';
const practice = '{ "by": "common-practice", "value": ';

/** Mistakes of typing: the file is no JSON any more, or not everyone reads it alike. */
const typing = rows(
  [
    ["a comma after the last statement", `${living}\n`, `${living},\n`, /a comma after the last entry/],
    ["a comma after the last field", '"as": "kept" }', '"as": "kept", }', /a comma after the last entry/],
    [
      "no comma between fields",
      '"id": "danio-rerio",',
      '"id": "danio-rerio"',
      /no comma between two entries/,
    ],
    ["no comma between statements", `${kept},`, kept, /no comma between two entries/],
    ["curly quotes", '"kind": "fish"', '"kind": “fish”', /the quote “/],
    ["single quotes", '"kind": "fish"', "\"kind\": 'fish'", /the quote '/],
    ["no quotes", '"kind": "fish"', '"kind": fish', /fish where it does not belong/],
    ["a quote that stays open", '"kind": "fish"', '"kind": "fish', /a quote that does not close/],
    ["a decimal comma", usual, usual.replace("4", "4,5"), /a comma in a number, before 5/],
    [
      "a number that begins with a point",
      usual,
      usual.replace("4", ".4"),
      /a number that JSON does not know/,
    ],
    ["a number with a plus", usual, usual.replace("4", "+4"), /a number that JSON does not know/],
    ["a number that begins with nought", usual, usual.replace("4", "04"), /a number that JSON does not know/],
    ["a word in capitals", '"value": false', '"value": False', /the word False/],
    ["a comment", '"names": {', '// Trade names\n  "names": {', /a comment, which JSON does not know/],
    ["no colon", '"kind": "fish"', '"kind" "fish"', /no colon after a key/],
    ["a bracket that stays open", `${living}\n    ],`, living, /no comma between two entries/],
    ["a brace too many", '  "names": {', '  },\n  "names": {', /a comma after the last entry/, "  },"],
    [
      "a trait twice",
      '"water": {',
      `"water": {\n"pH": [{ "by": "bch", "note": "Acid." }],`,
      /"pH" a second time/,
      '    "pH": [',
    ],
    [
      "a field twice in a statement",
      '"as": "usual"',
      '"as": "usual", "as": "greatest"',
      /"as" a second time/,
    ],
    ["an invisible mark at the beginning", "{\n", "\uFEFF{\n", /an invisible mark/],
  ],
  false,
);

/** A sort of value, a word, a unit or a field that is none. */
const shape = rows([
  [
    "an unknown kind of animal",
    '"kind": "fish"',
    '"kind": "fihs"',
    /one of fish, shrimp.* Did you mean fish\?/,
  ],
  ["no authority", '    "authority": "(Hamilton, 1822)",\n', "", /authority is missing/, '  "taxonomy"'],
  ["an authority without a year", "(Hamilton, 1822)", "Hamilton", /author and year, such as Hora, 1928/],
  ["an authority of one word", "(Hamilton, 1822)", "me", /author and year/],
  ["a family in English", '"family": "Danionidae"', '"family": "danios"', /a family such as Danionidae/],
  ["an order in lower case", "Cypriniformes", "cypriniformes", /an order such as Cypriniformes/],
  [
    "a scientific name of one word",
    '"name": "Danio rerio"',
    '"name": "Danio"',
    /a scientific name such as Danio rerio/,
  ],
  ["a language in words", '"en": ["zebra danio"', '"English": ["zebra danio"', /a language tag such as en/],
  [
    "a name that is no list",
    '["zebra danio", "zebrafish", "zebra fish"]',
    '"zebra danio"',
    /a list between \[ and \]/,
  ],
  ["a number for an identifier", '"ncbi": "7955"', '"ncbi": 7955', /text in quotes/],
  [
    "an address for an identifier",
    '"ncbi": "7955"',
    '"ncbi": "https://ncbi.nlm.nih.gov/7955"',
    /not an address/,
  ],
  ["a source without a cite", '{ "cite": "adw", "at"', '{ "at"', /cite is missing/],
  ["a source that nobody read", '"at": "page 24"', '"of": "Danio"', /at: the page, row or address/],
  [
    "a source that no line names",
    '    "adw": {',
    '    "book": { "cite": "adw", "at": "page 3" },\n    "adw": {',
    /a source that some statement names/,
  ],
  ["a memory that is false", '"memory": true', '"memory": false', /expected/],
  ["a statement of a source that is not listed", '"by": "rspca"', '"by": "rscpa"', /Did you mean rspca\?/],
  ["one figure for a span", kept, kept.replace('{ "min": 18, "max": 24 }', "22"), /fields between \{ and \}/],
  ["a span as text", kept, kept.replace('{ "min": 18, "max": 24 }', '"18-24"'), /fields between \{ and \}/],
  ["figures as text", kept, kept.replace("18", '"18"'), /a number without quotes/],
  [
    "a span with a third figure",
    kept,
    kept.replace('"max": 24', '"max": 24, "mean": 21'),
    /mean is no field of/,
  ],
  ["a span the wrong way round", kept, kept.replace("18", "25"), /min not above max/],
  ["a span without ends", kept, kept.replace('{ "min": 18, "max": 24 }', "{}"), /at least one end/],
  [
    "a figure that does not say what it means",
    kept,
    kept.replace(', "as": "kept"', ""),
    /as is missing; expected what the figure means/,
  ],
  ["an unknown meaning", kept, kept.replace('"kept"', '"keeping"'), /one of kept, optimum/],
  ["°F without saying so", kept, kept.replace("18", "65").replace("24", "75"), /expected -2 to 48 degC/],
  [
    "°F by a sign",
    kept,
    `${kept.slice(0, -2)}, "unit": "°F" }`,
    /one of degC, degF, K\. Did you mean degF\?/,
  ],
  ["F by a letter", kept, `${kept.slice(0, -2)}, "unit": "F" }`, /Did you mean degF\?/],
  ["°C by a sign", kept, `${kept.slice(0, -2)}, "unit": "°C" }`, /Did you mean degC\?/],
  ["ppm as a unit", '"unit": "mg/L-CaCO3"', '"unit": "ppm"', /Did you mean mg\/L-CaCO3\?/],
  ["dGH as a unit", '"unit": "mg/L-CaCO3"', '"unit": "dGH"', /Did you mean dH\?/],
  ["inches in a word", usual, `${usual.slice(0, -2)}, "unit": "inch" }`, /Did you mean in\?/],
  ["a length of nothing", usual, usual.replace("4", "0"), /more than 0/],
  ["a length in mm", usual, usual.replace("4", "400"), /expected 0.5 to 300 cm/],
  [
    "a length without what was measured",
    usual,
    usual.replace(', "measure": "TL"', ""),
    /measure is missing; expected what was measured/,
  ],
  [
    "a length without what it means",
    usual,
    usual.replace(', "as": "usual"', ""),
    /as is missing; expected usual or greatest/,
  ],
  ["an unknown measure", usual, usual.replace('"TL"', '"tl"'), /one of TL, SL.* Did you mean TL\?/],
  [
    "a sex of a temperature",
    kept,
    `${kept.slice(0, -2)}, "sex": "male" }`,
    /sex is no field of water.temperature\[0\]/,
  ],
  ["a misspelt field", kept, kept.replace('"value"', '"valeu"'), /valeu is no field .* Did you mean value\?/],
  [
    "an age of two figures",
    '"value": 5.5, "as"',
    '"value": { "min": 4, "max": 5.5 }, "as"',
    /a number without quotes/,
  ],
  ["an unknown zone", `${practice}"midwater"`, `${practice}"middle"`, /one of surface, midwater, bottom/],
  [
    "a group as a number",
    '"value": { "least": 5 } },\n      { "by": "white"',
    '"value": 5 },\n      { "by": "white"',
    /fields between \{ and \}/,
  ],
  ["half an animal", '"least": 6, "avoid"', '"least": 6.5, "avoid"', /a whole number/],
  ["a share in percent", `${practice}0.2 }`, `${practice}20 }`, /at most 1/],
  [
    "a word for yes",
    '"varies": [\n      { "by": "common-practice", "value": false }',
    '"varies": [\n      { "by": "common-practice", "value": "no" }',
    /true or false/,
  ],
  ["a prey as a word", '"value": { "prey": "fry" }', '"value": "fry"', /fields between \{ and \}/],
  ["an unknown prey", '"prey": "shrimplet"', '"prey": "shrimplets"', /Did you mean shrimplet\?/],
  [
    "an act as a word",
    '"value": { "does": "chases", "target": "own-kind" }, "note"',
    '"value": "chases", "note"',
    /fields between \{ and \}/,
  ],
  [
    "an act without a target",
    '{ "does": "chases", "target": "own-kind" }',
    '{ "does": "chases" }',
    /target is missing/,
  ],
  ["an unknown act", '"does": "nips-fins"', '"does": "nips"', /one of chases, bites/],
  ["an unknown target", '"target": "long-finned"', '"target": "long-fins"', /Did you mean long-finned\?/],
  [
    "a current with one end",
    '"value": { "min": "still", "max": "moderate" }',
    '"value": { "max": "moderate" }',
    /min is missing/,
  ],
  [
    "a current the wrong way round",
    '{ "min": "still", "max": "moderate" }',
    '{ "min": "strong", "max": "still" }',
    /min not above max/,
  ],
  ["a room without a number of animals", '{ "least": 60, "for": 5 }', '{ "least": 60 }', /for is missing/],
  [
    "a partner by its scientific name",
    '"danio-albolineatus"',
    '"Danio albolineatus"',
    /lower-case words joined by hyphens/,
  ],
  [
    "a statement that says nothing",
    `"flow": [\n      { "by": "common-practice", "value": { "min": "still", "max": "moderate" } }`,
    `"flow": [\n      { "by": "common-practice" }`,
    /a value, or a note/,
  ],
  [
    "a trait that is no list",
    '"type": [\n      { "by": "spence", "value": "omnivore" }\n    ]',
    '"type": { "by": "spence", "value": "omnivore" }',
    /a list between \[ and \]/,
  ],
  ["a form in capitals", '"long-fin": {', '"LongFin": {', /lower-case words joined by hyphens/],
  ["a year of no assessment", '{ "status": "LC" }', '{ "status": "LC", "year": 19 }', /at least 1960/],
  [
    "half a year among months",
    '"size": {\n',
    '"size": {\n    "grownAt": [\n      { "by": "common-practice", "value": 0.5 }\n    ],\n',
    /size\.grownAt: an age of 0\.5 months; expected at least 1 month, or the unit/,
  ],
  [
    "a synonym of an abbreviated genus",
    '"Danio frankei"',
    '"B. rerio"',
    /synonyms\[1\] is "B\. rerio"; expected a scientific name/,
  ],
  ["a synonym in small letters", '"Danio frankei"', '"danio frankei"', /expected a scientific name/],
  ["a genus for a synonym", '"Danio frankei"', '"Brachydanio"', /expected a scientific name/],
  ["a Red List word", '{ "status": "LC" }', '{ "status": "Least Concern" }', /one of EX, EW/],
]);

/** What no example would mend. */
const meaning = rows(
  [
    [
      "a misspelt trait",
      '"temperature": [',
      '"temprature": [',
      /water.temprature is no field of water\. Did you mean temperature\?/,
    ],
    [
      "a trait in another section",
      '"light": [',
      '"jumps": [',
      /diet.jumps is no field of diet\. Did you mean space.jumps\?/,
    ],
    ["an unknown section", '"effects": {', '"efects": {', /Did you mean effects\?/],
    ["a misspelt id", '"id": "danio-rerio"', '"id": "danio-reiro"', /"danio-rerio", from the accepted name/],
    [
      "a schema that is gone",
      '  "$schema": "../schemas/species.schema.json",\n',
      "",
      /the address of the schema is missing/,
      "{",
    ],
    [
      "no English name",
      '"en": ["zebra danio", "zebrafish", "zebra fish"]',
      '"de": ["Zebrabärbling"]',
      /no English name/,
      '  "names"',
    ],
    ["a name twice", '"zebrafish", "zebra fish"', '"zebrafish", "Zebra Danio"', /stands here twice/],
    [
      "a name of another species",
      '"zebrafish", "zebra fish"',
      '"zebrafish", "neon tetra"',
      /stands in data\/species\/paracheirodon-innesi.json too/,
    ],
    [
      "a synonym of another species",
      '"Danio frankei"',
      '"Barbus tetrazona"',
      /stands in data\/species\/puntigrus-tetrazona.json too/,
    ],
    [
      "a number of another species",
      '"ncbi": "7955"',
      '"ncbi": "299714"',
      /identifier of ncbi .*danio-choprae/,
    ],
    [
      "a form that is called like its species",
      '"en": ["leopard danio"]',
      '"en": ["zebra danio"]',
      /stands here twice/,
    ],
    ...["ger", "dt", "de-DE", "dee"].map(
      (language): Row => [
        `a language called ${language}`,
        '"en": ["leopard danio"]',
        `"en": ["leopard danio"],\n        "${language}": ["Leopardbärbling"]`,
        new RegExp(`names in the language ${language}; expected one of de, en. Did you mean de\\?`),
      ],
    ),
    [
      "a language that no species has a name in",
      '"en": ["leopard danio"]',
      '"en": ["leopard danio"],\n        "fi": ["leopardiseeprakala"]',
      /names in the language fi; expected one of de, en\.$/m,
    ],
    ["a misspelt family", "Danionidae", "Danoinidae", /Did you mean Danionidae\?/],
    [
      "a family in another order",
      "Cypriniformes",
      "Characiformes",
      /Danionidae in the order Characiformes; expected Cypriniformes/,
    ],
    [
      "a source whose file is missing",
      '"cite": "usgs-nas"',
      '"cite": "usgs-nsa"',
      /is cited and missing.* Did you mean usgs-nas\?/,
    ],
    [
      "a source under a name that is no synonym",
      '"at": "page 24"',
      '"at": "page 24", "under": "Danio reiro"',
      /records it under Danio reiro/,
    ],
    [
      "a source said to be of the species itself",
      '"at": "page 24"',
      '"at": "page 24", "of": "Danio rerio"',
      /is a name of this species/,
    ],
    [
      "a source by the name of its file",
      '"cite": "usgs-nas"',
      '"cite": "usgs-nas.json"',
      /Did you mean usgs-nas\?/,
    ],
    ["an animal of another kind", '"kind": "fish"', '"kind": "shrimp"', /a shrimp among Danionidae/],
    ["a reminder to oneself", '"at": "page 24"', '"at": "TODO"', /a reminder to oneself, TODO/],
    [
      "spaces too many",
      '"zebrafish", "zebra fish"',
      '"zebrafish", "zebra fish "',
      /spaces too many in "zebra fish "/,
    ],
    ...["?", "-", "n/a", "tbd", "unknown", "..."].map(
      (nothing): Row => [
        `${nothing} for a page`,
        '"at": "page 24"',
        `"at": "${nothing}"`,
        /nothing but ".*"; expected the page, row or address where it stands/,
      ],
    ),
    [
      "umlauts misread on the way",
      '"en": ["leopard danio"]',
      '"en": ["leopard danio"],\n        "de": ["LeopardbÃ¤rbling"]',
      /letters that were misread on the way, LeopardbÃ¤rbling; expected Leopardbärbling/,
    ],
    ["a letter lost on the way", "Native waters from", "Nat\ufffdve waters from", /a letter that was lost/],
    ["a letter of a web page", "Native waters from", "Native b&auml;che from", /web pages write it, &auml;/],
    ["a space that does not break", '"zebra fish"', '"zebra\u00a0fish"', /a space that does not break/],
    ["a year to come", '{ "status": "LC" }', '{ "status": "LC", "year": 2099 }', /the date 2099/],
    ["the measure of a snail", usual, usual.replace("TL", "shell"), /the measure shell of a fish/],
    [
      "a prey longer than its hunter",
      '"value": { "prey": "fry" } }',
      '"value": { "prey": "fry" } },\n      { "by": "common-practice", "value": { "prey": "fish", "greatest": 9 } }',
      /fish of up to 9 cm.* at most its length/,
    ],
    ["a cross with itself", '"danio-albolineatus"', '"danio-rerio"', /interbreeds with itself/],
    ["a form without a name", '"en": ["leopard danio"]\n', "", /a form without a name/, '    "leopard"'],
    ["an observation that is none", '"at": "page 24"', '"observed": true', /is no observation/],
    [
      "a record without an essential trait",
      `    "living": [\n      ${living}\n    ],\n`,
      "",
      /social.living is essential and unknown/,
      '  "social"',
    ],
    [
      "a figure of two sources, undecided",
      ', "adopt": "The middle one of the fish measured."',
      "",
      /one of them with adopt/,
      '      { "by": "fishbase-2018-shares", "value": 0.788',
    ],
    [
      "adopted and set aside",
      `"flow": [\n      { "by": "common-practice",`,
      `"flow": [\n      { "by": "common-practice", "adopt": "Seen.", "setAside": "Not seen.",`,
      /adopt or setAside, not both/,
    ],
    [
      "an optimum outside of what is kept",
      `${kept},`,
      `${kept},\n      { "by": "rspca", "value": { "min": 15, "max": 17 }, "as": "optimum" },`,
      /optimum within kept/,
      '    "temperature"',
    ],
    [
      "a test that does not say how it ended",
      '"as": "tested", "endpoint": "choice"',
      '"as": "tested"',
      /without an endpoint/,
    ],
    [
      "two limits of animals used to whatever",
      '"endpoint": "balance", "acclimatedAt": 20',
      '"endpoint": "balance"',
      /without the temperature that the animals were used to/,
    ],
    [
      "a usual length above the greatest",
      usual,
      usual.replace("4", "12"),
      /usually 12.0 cm, and at most/,
      '    "adultLength"',
    ],
    [
      "a decimal point too many in a temperature",
      kept,
      kept.replace("18", "1.8"),
      /1\.8 degC, at which few animals are kept; expected 10 to 32 degC, or a note/,
    ],
    ["a digit lost in a temperature", kept, kept.replace("24", "29").replace("18", "8"), /8 degC, at which/],
    ["a digit mistyped in a temperature", kept, kept.replace("24", "34"), /34 degC, at which few/],
    [
      "a digit mistyped in a pH",
      '"value": { "min": 6, "max": 8 }, "as": "kept"',
      '"value": { "min": 3.5, "max": 8 }, "as": "kept"',
      /3\.5, at which few animals are kept; expected 4 to 9\.5, or a note/,
    ],
    ["inches taken for centimetres", usual, usual.replace("4", "1.75"), /as many inches/],
    [
      "a tank for another animal",
      '"least": 80, "for": 8 }',
      '"least": 15, "for": 8 }',
      /a smaller tank for more animals/,
      '    "footprint"',
    ],
    [
      "a hardness in ppm",
      '"value": { "min": 5, "max": 19 }',
      '"value": { "min": 20, "max": 50 }',
      /more than 35 °dH/,
      '    "generalHardness"',
    ],
    [
      "an age of months",
      '"value": 5.5, "as": "greatest"',
      '"value": 50, "as": "greatest"',
      /an age that no animal of its length reaches/,
      '    "lifespan"',
    ],
    [
      "a shoal of one",
      '"least": 6, "avoid"',
      '"least": 1, "avoid"',
      /a shoal of fewer than five/,
      '    "group"',
    ],
    [
      "a shoal of eight hundred",
      '"least": 6, "avoid"',
      '"least": 800, "avoid"',
      /a least group of more than thirty/,
      '    "group"',
    ],
    [
      "a shoal that kills its own",
      '{ "does": "chases", "target": "own-kind" }, "note"',
      '{ "does": "kills", "target": "own-kind" }, "note"',
      /kills it at any time/,
      '    "acts"',
    ],
    [
      "an eater of fish that spares fry",
      '"value": { "prey": "fry" } }',
      '"value": { "prey": "fish" }, "note": "Seen." }',
      /grown fish eaten, and fry left alone/,
      '    "eats"',
    ],
    [
      "an eater of fish that spares shrimps",
      '"value": { "prey": "fry" } }',
      '"value": { "prey": "fry" } },\n      { "by": "common-practice", "value": { "prey": "fish" }, "note": "Seen." }',
      /fish eaten, and shrimps left alone/,
      '    "eats"',
    ],
    [
      "an eater of shrimps that spares shrimplets",
      '"prey": "shrimplet"',
      '"prey": "shrimp"',
      /grown shrimps eaten/,
      '    "eats"',
    ],
    [
      "a misspelt partner",
      '"danio-albolineatus"',
      '"danio-chopre"',
      /which no record is called.* Did you mean danio-choprae\?/,
    ],
    [
      "a partner under its old id",
      '"danio-albolineatus"',
      '"barbus-tetrazona"',
      /Did you mean puntigrus-tetrazona\?/,
    ],
    [
      "a partner that does not know of it",
      '"danio-albolineatus"',
      '"tanichthys-albonubes"',
      /whose record does not name danio-rerio/,
    ],
    [
      "a question left open",
      '"note": "Native waters from winter to summer."',
      '"note": "To fill in: the temperature."',
      /a question of the new file/,
    ],
    [
      "an accent beside its letter",
      "Native waters from",
      "Cafe\u0301 waters from",
      /a letter and its accent as two characters/,
    ],
    [
      "a mark that turns the direction of reading",
      "Native waters from",
      "Native \u202ewaters from",
      /without control characters/,
    ],
    [
      "the end of a comment in a name",
      '"zebrafish", "zebra fish"',
      '"zebrafish", "zebra */ fish"',
      /without control characters/,
    ],
    ["a note without end", "Native waters from", "x".repeat(2001), /at most 2000 characters/],
    [
      "an animal of the sea",
      '"value": "fresh"',
      '"value": "marine"',
      /an animal of the sea alone/,
      '    "waters"',
    ],
    [
      "an empty section",
      '  "names": {',
      '  "effects": {},\n  "names": {',
      /effects" a second time|effects is empty/,
      '  "effects": {',
    ],
    [
      "a form that repeats its species",
      '"en": ["leopard danio"]\n      }',
      '"en": ["leopard danio"]\n      },\n      "diet": { "pace": [{ "by": "common-practice", "value": "fast" }] }',
      /diet.pace says of the form what the record says/,
    ],
    [
      "a form in other water",
      '"en": ["leopard danio"]\n      }',
      '"en": ["leopard danio"]\n      },\n      "water": { "temperature": [{ "by": "common-practice", "value": { "min": 32, "max": 36 }, "as": "kept" }] }',
      /nothing in common with that of the species/,
    ],
    [
      "none beside something",
      '"hazards": [\n',
      '"hazards": [\n      { "by": "common-practice", "value": "spines" },\n',
      /"none" alone, or the others alone/,
      '    "hazards"',
    ],
    [
      "a line said twice",
      '{ "by": "spence", "value": "omnivore" }',
      '{ "by": "spence", "value": "omnivore" },\n      { "by": "spence", "value": "omnivore" }',
      /does not say already/,
    ],
  ],
  false,
);

/** The record of a zebra danio, as it went wrong. */
export const brokenRecords: readonly Broken[] = [...typing, ...shape, ...meaning];
