import { describe, expect, test } from "vitest";
import { allSpecies, findSpecies } from "../../src/catalog";
import { InvalidInputError } from "../../src/errors";

const idsOf = (name: string) => findSpecies(name).map(({ id, form }) => (form ? `${id}, ${form}` : id));
const ways = (name: string) => [
  name,
  name.toUpperCase(),
  name.toLowerCase(),
  `  ${name.replaceAll(" ", "  ")}\t`,
  name.replaceAll(" ", "-"),
  name.replaceAll("-", " "),
];

describe.each(allSpecies)("$id is found", ({ id, taxonomy, names }) => {
  test("by its id and its accepted name, in any case, before any other", () => {
    for (const name of [id, taxonomy.name].flatMap(ways)) expect(idsOf(name)[0], name).toBe(id);
  });

  test("by every synonym and vernacular name, however hyphens and spaces are set", () => {
    const known = [...(taxonomy.synonyms ?? []), ...Object.values(names).flat()];
    for (const name of known.flatMap(ways)) expect(idsOf(name), name).toContain(id);
  });
});

test("a form is found by each of its names, and applied", () => {
  const named = allSpecies.flatMap(({ id, forms = {} }) =>
    Object.entries(forms).flatMap(([form, { names }]) =>
      Object.values(names)
        .flat()
        .map((name) => ({ name, found: `${id}, ${form}` })),
    ),
  );
  expect(named.length).toBeGreaterThan(100);
  for (const { name, found } of named) for (const way of ways(name)) expect(idsOf(way), way).toContain(found);
});

test("the profile of the catalog itself is given, unless a form was named", () => {
  for (const profile of allSpecies) expect(findSpecies(profile.taxonomy.name)[0]).toBe(profile);
  const [veil] = findSpecies("long-fin tiger barb");
  expect(veil).toMatchObject({
    id: "puntigrus-tetrazona",
    form: "long-fin",
    appearance: { longFins: { value: true } },
  });
});

test("nothing is found twice", () => {
  for (const { names, taxonomy } of allSpecies) {
    for (const name of [taxonomy.name, ...Object.values(names).flat()]) {
      expect(idsOf(name)).toStrictEqual([...new Set(idsOf(name))]);
    }
  }
});

test("an id once used, or used by the trade, is a name as good as a synonym", () => {
  expect(idsOf("corydoras-paleatus")).toStrictEqual(["hoplisoma-paleatum"]);
  expect(idsOf("Rohanella titteya")).toStrictEqual(["puntius-titteya"]);
});

test("an accent may stand in the letter or behind it", () => {
  const accented = allSpecies.flatMap(({ id, names }) =>
    Object.values(names)
      .flat()
      .filter((name) => name !== name.normalize("NFD"))
      .map((name) => ({ id, name })),
  );
  expect(accented.length).toBeGreaterThan(0);
  for (const { id, name } of accented) expect(idsOf(name.normalize("NFD")), name).toContain(id);
});

test("whoever has no German keys finds every German name", () => {
  const dotted = allSpecies.flatMap(({ id, names }) =>
    (names.de ?? []).filter((name) => /[äöü]/i.test(name)).map((name) => ({ id, name })),
  );
  expect(dotted.length).toBeGreaterThan(20);
  for (const { id, name } of dotted) {
    const spelt = name.toLowerCase().replaceAll("ä", "ae").replaceAll("ö", "oe").replaceAll("ü", "ue");
    expect(idsOf(spelt), spelt).toStrictEqual(idsOf(name));
    expect(idsOf(spelt), spelt).toContain(id);
  }
});

test.each(["boesemani rainbowfish", "bösemani rainbowfish"])("%s is one with ae, oe or ue", (name) => {
  expect(idsOf(name)).toStrictEqual(["melanotaenia-boesemani"]);
});

test.each(["L46", "L046", "l 046", "L-46"])("%s is one catfish", (name) => {
  expect(idsOf(name)).toStrictEqual(["hypancistrus-zebra"]);
});

test.each([undefined, null, 5, {}, ["danio"], "d".repeat(201)])("%o is refused", (name) => {
  expect(() => findSpecies(name as string)).toThrow(InvalidInputError);
});

test.each([
  "d".repeat(200),
  "unicorn",
  "",
  " ",
  "-",
  "danio",
  "rerio",
  "zebra danios",
  "__proto__",
  "constructor",
  ".*",
  "[",
  "%",
])("%o is nobody's name", (name) => {
  expect(findSpecies(name)).toStrictEqual([]);
});
