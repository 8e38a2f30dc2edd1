import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { jurisdictionSchema } from "../../src/schema/files/jurisdiction";
import { jurisdictions } from "../../src/standards/generated";
import type { Jurisdiction } from "../../src/standards/jurisdiction";

const folder = new URL("../../data/standards/", import.meta.url);
const names = readdirSync(folder).sort();
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, folder), "utf8"));

const requirementsIn = ({ instruments }: Jurisdiction) =>
  instruments.flatMap(({ requirements }) => requirements);

test("the schema takes no empty jurisdiction, no unknown kind and no caution without an authority", () => {
  const [first] = jurisdictions;
  expect(jurisdictionSchema.safeParse({}).success).toBe(false);
  expect(jurisdictionSchema.safeParse(first).success).toBe(true);
  const [instrument] = first?.instruments ?? [];
  const [requirement] = instrument?.requirements ?? [];
  const changed = (change: object) => ({
    ...first,
    instruments: [{ ...instrument, requirements: [{ ...requirement, ...change }] }],
  });
  expect(jurisdictionSchema.safeParse(changed({})).success).toBe(true);
  expect(jurisdictionSchema.safeParse(changed({ rule: { kind: "fullness" } })).success).toBe(false);
  expect(jurisdictionSchema.safeParse(changed({ force: "custom" })).success).toBe(false);
  expect(
    jurisdictionSchema.safeParse({ ...first, instruments: [{ ...instrument, caution: "Ask around." }] })
      .success,
  ).toBe(false);
});

test("the compiled jurisdictions are those of the files, by name", () => {
  const files = names.map((name) => jurisdictionSchema.parse(read(name)));
  expect(jurisdictions).toEqual(files.map(({ $schema, ...jurisdiction }) => jurisdiction));
});

describe.each(names)("%s", (name) => {
  test("has the shape of a jurisdiction", () => {
    expect(jurisdictionSchema.safeParse(read(name)).error).toBeUndefined();
  });

  test("is named like its jurisdiction and names each requirement once", () => {
    const jurisdiction = jurisdictionSchema.parse(read(name));
    expect(`${jurisdiction.id}.json`).toBe(name);
    const ids = jurisdiction.instruments.flatMap(({ requirements }) => requirements.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });
});

test("every figure was read", () => {
  const recalled = jurisdictions.flatMap(requirementsIn).filter(({ basis }) => basis === "memory");
  expect(recalled.map(({ id }) => id)).toEqual([]);
});

/** The table of a requirement of the German report. */
const germanTable = (id: string) => {
  const germany = jurisdictions.find((jurisdiction) => jurisdiction.id === "germany");
  const rule = germany && requirementsIn(germany).find((requirement) => requirement.id === id)?.rule;
  return rule && "table" in rule ? rule.table : [];
};

test("the German report names species that are here", () => {
  const here = new Set(allSpecies.map(({ id }) => id));
  expect(["front-edge", "group", "pair"].map((id) => germanTable(id).length)).toEqual([72, 42, 9]);
  for (const id of ["front-edge", "group", "pair"]) {
    const species = germanTable(id).map((line) => line.species);
    expect(species.filter((each) => !here.has(each))).toEqual([]);
  }
  const paired = new Set(germanTable("pair").map(({ species }) => species));
  expect(germanTable("group").filter(({ species }) => paired.has(species))).toEqual([]);
});

test("a table names each species once", () => {
  const [first] = jurisdictions;
  const [instrument] = first?.instruments ?? [];
  const [requirement] = instrument?.requirements ?? [];
  const line = { species: "danio-rerio", centimetres: 60, at: "line 1" };
  const withTable = (table: readonly object[]) => ({
    ...first,
    instruments: [
      { ...instrument, requirements: [{ ...requirement, rule: { kind: "front-edges", table } }] },
    ],
  });
  expect(jurisdictionSchema.safeParse(withTable([line])).success).toBe(true);
  expect(jurisdictionSchema.safeParse(withTable([line, { ...line, species: "danio-choprae" }])).success).toBe(
    true,
  );
  expect(jurisdictionSchema.safeParse(withTable([line, line])).success).toBe(false);
});
