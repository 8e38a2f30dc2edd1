import { expect, test } from "vitest";
import { check } from "../../../data/commands/check";
import { project, textOf } from "../project";

/** What a command said, without lines and columns. */
const placeless = (answer: Parameters<typeof textOf>[0]) => textOf(answer).replaceAll(/:\d+:\d+: /g, ": ");

const danio = "data/species/danio-rerio.json";
const schema = "data/schemas/species.schema.json";

test("a schema that is missing is stale like an old one", async () => {
  const { root, read, write, remove } = project();
  const current = read(schema);
  remove(schema);
  expect(textOf(await check(root))).toContain(`${schema}:1:1: is stale`);
  write(schema, `${current} `);
  expect(await check(root)).toMatchObject({ failed: true });
  write(schema, current);
  expect(await check(root)).toMatchObject({ failed: false });
});

test("what is wrong between records is told all at once: what, where, what was expected, how to mend it", async () => {
  const { root, read, write } = project();
  const record = JSON.parse(read(danio));
  const { living, ...social } = record.social;
  const interbreedsWith = [
    ...record.reproduction.interbreedsWith,
    { by: "common-practice", value: "tanichthys-albonubes" },
  ];
  const changed = { ...record, social, reproduction: { ...record.reproduction, interbreedsWith } };
  changed.sources.usgs = { cite: "a-lost-book", at: "page 1" };
  changed.care.rehoming = [{ by: "usgs", value: { en: "Shoals may join." } }];
  write(danio, JSON.stringify(changed));
  write("data/species/zebra.json", JSON.stringify(record));
  write("data/sources/a-spare-book.json", JSON.stringify({ id: "another-book" }));
  const moved = { id: "danio-rerio", to: "danio-nowhere" };
  write("data/moved/danio-rerio.json", JSON.stringify(moved));
  const answer = await check(root);
  const said = placeless(answer);
  expect(answer.failed).toBe(true);
  for (const problem of [
    "data/species/zebra.json: id is danio-rerio; expected zebra.",
    "data/sources/a-spare-book.json: id is another-book",
    `${danio}: data/sources/a-lost-book.json is cited and missing`,
    "data/sources/a-spare-book.json: is cited by no record",
    `${danio}: interbreeds with tanichthys-albonubes, whose record does not name danio-rerio`,
    `${danio}: social.living is essential and unknown`,
    `${danio}: the scientific name "Danio rerio" stands in data/species/zebra.json too`,
    "data/moved/danio-rerio.json: danio-rerio has a record",
    "data/moved/danio-rerio.json: goes to danio-nowhere",
    "Rename the file or correct the id.",
  ]) {
    expect(said).toContain(problem);
  }
});

test("one record may be checked by itself, whatever of its names is given", async () => {
  const { root, read, write } = project();
  write("data/species/zebra.json", read(danio));
  expect(await check(root, "betta-splendens")).toMatchObject({ failed: false });
  for (const name of [
    "danio-rerio",
    "Danio rerio",
    "danio-rerio.json",
    danio,
    `./${danio}`,
    danio.replaceAll("/", "\\"),
    "zebra danio",
    "Brachydanio rerio",
    "leopard danio",
  ])
    expect(await check(root, name), name).toMatchObject({ failed: true });
  expect(textOf(await check(root, "Danio reiro"))).toBe(
    "data has no file of the name Danio reiro. Did you mean Danio rerio?",
  );
  expect(await check(root, "unicorn")).toStrictEqual({
    lines: ["data has no file of the name unicorn."],
    failed: true,
  });
});

test("several files may be checked at once, and one may be called by a name of several words", async () => {
  const { root, read, write } = project();
  write("data/species/zebra.json", read(danio));
  const asked = (...words: readonly string[]) => check(root, ...words);
  expect(await asked("betta-splendens", "danio-choprae")).toStrictEqual({
    lines: ["data/species/betta-splendens.json, data/species/danio-choprae.json: 0 problems."],
    failed: false,
  });
  expect(await asked("betta-splendens", "danio-rerio")).toMatchObject({ failed: true });
  expect(textOf(await asked("neon", "tetra"))).toBe("data/species/paracheirodon-innesi.json: 0 problems.");
  expect(textOf(await asked("betta-splendens", "unicorn"))).toBe("data has no file of the name unicorn.");
  expect(textOf(await asked("Danio", "reiro"))).toContain("Did you mean Danio rerio?");
  expect(textOf(await asked())).toMatch(/problems?\.$/);
});

test("what a record cites is checked with it", async () => {
  const { root, remove } = project();
  remove("data/sources/yanar-2019.json");
  expect(textOf(await check(root, "puntigrus-tetrazona"))).toContain("yanar-2019.json is cited and missing");
});

test("a record is told what another one says of it", async () => {
  const { root, read, write } = project();
  const record = JSON.parse(read(danio));
  record.reproduction.interbreedsWith.push({ by: "common-practice", value: "tanichthys-albonubes" });
  write(danio, JSON.stringify(record));
  expect(textOf(await check(root, "tanichthys-albonubes"))).toContain(
    "interbreeds with tanichthys-albonubes, whose record does not name danio-rerio",
  );
});

test("an empty or missing field is told once, with what belongs there", async () => {
  const { root, read, write } = project();
  const text = read(danio);
  const empty = text
    .replace(/"authority": "[^"]*"/, '"authority": ""')
    .replace(/"family": "[^"]*"/, '"family": ""')
    .replace(/"order": "[^"]*"/, '"order": ""')
    .replace(/"cite": "[^"]*"/, '"cite": ""');
  write(danio, empty.replace(/\{ "by": "[^"]*", /, "{ "));
  const told = textOf(await check(root, "danio-rerio"));
  for (const field of ["authority", "family", "order", "cite"])
    expect(told.match(new RegExp(`${field} is "";`, "g")), field).toHaveLength(1);
  expect(told).toContain('authority is ""; expected author and year');
  expect(told.match(/by is missing; .*/g)).toStrictEqual([
    expect.stringMatching(/^by is missing; expected one of .*usgs.*, common-practice, curator\./),
  ]);
});

test("a mend leads to the file that is wrong", async () => {
  const { root, read, write } = project();
  const text = read(danio);
  write(danio, text.replace("Danionidae", "Osphronemidae"));
  expect(textOf(await check(root, "danio-rerio"))).toContain(
    "Correct the family or the order; if data/families.csv is",
  );
  write(danio, text.replace(/("usgs": \{ "cite": "[^"]+").*?\}/, '$1, "observed": true }'));
  expect(textOf(await check(root, "danio-rerio"))).toContain(
    "Take observed away, or cite a file of your own: npm run species new observation <id>.",
  );
});

const said = (value: unknown) => [{ by: "common-practice", value }];

type Lines = { by: string; value?: unknown; adopt?: string }[];

/** Puts a line above what the sources said. */
const adopt = (section: Record<string, Lines>, trait: string, value: unknown) => {
  section[trait] = [
    { by: "common-practice", value, adopt: "A test." },
    ...(section[trait] ?? []).map(({ adopt: _, ...line }) => line),
  ];
};

/** What a check must tell, and a change of a record that brings it about. */
const slips: readonly (readonly [string, (record: ReturnType<typeof JSON.parse>) => void])[] = [
  ["a shoal of fewer than five", ({ social }) => adopt(social, "group", { least: 1 })],
  ["an animal that lives alone in a group of several", ({ social }) => adopt(social, "living", "alone")],
  [
    "an air breather in a strong current",
    ({ water }) => {
      adopt(water, "airBreathing", { kind: "obligate" });
      adopt(water, "flow", { min: "moderate", max: "strong" });
    },
  ],
  [
    "a nest of bubbles in moving water",
    ({ reproduction, water }) => {
      adopt(reproduction, "mode", "bubble-nest");
      adopt(water, "flow", { min: "moderate", max: "strong" });
    },
  ],
  [
    "much oxygen needed in water that only stands still",
    ({ water }) => {
      adopt(water, "oxygenNeed", "high");
      adopt(water, "flow", { min: "still", max: "still" });
    },
  ],
  ["company that settles it, though it is not shy", ({ social }) => adopt(social, "settledBy", true)],
  [
    "a calm swimmer of the open water that lives on the ground alone",
    ({ social, space }) => {
      adopt(social, "settles", true);
      Object.assign(space, { zones: said("bottom") });
    },
  ],
  [
    "a floor that does not belong to the tank's length",
    ({ space }) => adopt(space, "footprint", { least: 90_000, for: 6 }),
  ],
  [
    "a longest length of 250 cm",
    ({ size }) =>
      size.adultLength.push({
        by: "common-practice",
        value: 250,
        as: "greatest",
        measure: "TL",
        sex: "male",
      }),
  ],
  [
    "without a word on how it is known",
    ({ temperament }) =>
      temperament.acts.push({ by: "common-practice", value: { does: "kills", target: "own-sex" } }),
  ],
];

test("facts that contradict each other are told, each with its record", async () => {
  const { root, read, write } = project();
  const shoals = [
    "danio-rerio",
    "tanichthys-albonubes",
    "puntigrus-tetrazona",
    "danio-choprae",
    "rasbora-trilineata",
  ];
  const further = [
    "puntius-titteya",
    "pethia-padamya",
    "pethia-conchonius",
    "sahyadria-denisonii",
    "epalzeorhynchos-bicolor",
  ];
  const told = slips.map(([problem, change], index) => {
    const file = `data/species/${[...shoals, ...further][index]}.json`;
    const record = JSON.parse(read(file));
    change(record);
    write(file, JSON.stringify(record));
    return { file, problem };
  });
  const answer = await check(root);
  const said = textOf(answer);
  expect(answer.failed).toBe(true);
  for (const { file, problem } of told) {
    const lines = said.split("\n").filter((line) => line.includes(file));
    expect(lines.join("\n"), file).toContain(problem);
  }
});

test("files that hold no record are told as such, and do not keep the others from being checked", async () => {
  const { root, write, remove } = project();
  const held = [
    "null",
    "[]",
    "7",
    '{ "sources": { "book": null }, "reproduction": { "interbreedsWith": "none" } }',
  ];
  held.forEach((text, index) => {
    write(`data/species/unicorn-${index}.json`, text);
  });
  remove("data/sources/usgs-nas.json");
  const answer = await check(root);
  const said = textOf(answer);
  expect(answer.failed).toBe(true);
  for (const index of held.keys()) expect(said).toContain(`unicorn-${index}.json:1:1: `);
  expect(said).toContain("data/sources/usgs-nas.json is cited and missing");
});

test("a file that is no JSON is named with its line, a key that stands twice too, and the rest is checked", async () => {
  const { root, read, write } = project();
  write("data/species/unicorn.json", "{\n  id: 1 }");
  write(
    "data/sources/yanar-2019.json",
    read("data/sources/yanar-2019.json").replace('"id"', '"id": "x",\n"id"'),
  );
  write(danio, read(danio).replace('"kind": "fish"', '"kind": "fihs"'));
  const said = textOf(await check(root));
  expect(said).toContain("data/species/unicorn.json:2:3: id where it does not belong");
  expect(said).toContain('data/sources/yanar-2019.json:4:1: the key "id" a second time');
  expect(said).toMatch(
    /danio-rerio.json:\d+:13: taxonomy.kind is "fihs"; expected one of .* Did you mean fish\?/,
  );
});
