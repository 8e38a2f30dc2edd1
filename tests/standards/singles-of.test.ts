import { expect, test } from "vitest";
import { singlesOf } from "../../src/standards/singles-of";

const said = {
  article: "Table 1",
  force: "binding",
  basis: "read",
  covers: "fish",
  asks: "The tank is as long as stated for the species.",
} as const;

test("a requirement without a table stands by itself", () => {
  const requirement = { ...said, id: "sphere", rule: { kind: "no-sphere" } } as const;
  expect(singlesOf(requirement)).toEqual([requirement]);
});

test("each line of a table asks by itself, under the name of its species and where it stands", () => {
  const table = [
    { species: "a-a", centimetres: 60, at: "line 1" },
    { species: "b-b", centimetres: 150, beyond: true, at: "line 2" },
  ];
  expect(singlesOf({ ...said, id: "edge", rule: { kind: "front-edges", table } })).toEqual([
    {
      ...said,
      id: "edge/a-a",
      article: "Table 1, line 1",
      rule: { kind: "front-edge", species: "a-a", centimetres: 60 },
    },
    {
      ...said,
      id: "edge/b-b",
      article: "Table 1, line 2",
      rule: { kind: "front-edge", species: "b-b", centimetres: 150, beyond: true },
    },
  ]);
  const groups = [{ species: "a-a", least: 5, at: "line 1" }];
  expect(singlesOf({ ...said, id: "group", rule: { kind: "own-groups", table: groups } })).toMatchObject([
    { id: "group/a-a", rule: { kind: "own-group", species: "a-a", least: 5 } },
  ]);
});
