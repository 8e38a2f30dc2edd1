import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
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

test("a recalled figure says so", () => {
  const recalled = jurisdictions.flatMap(requirementsIn).filter(({ basis }) => basis === "memory");
  expect(recalled.map(({ id }) => id)).toEqual([
    "paracheirodon-innesi-edge",
    "paracheirodon-innesi-group",
    "devario-aequipinnatus-edge",
    "devario-aequipinnatus-group",
    "tanichthys-albonubes-edge",
    "tanichthys-albonubes-group",
  ]);
  for (const { note } of recalled) expect(note).toContain("recalled");
});
