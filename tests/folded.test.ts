import fc from "fast-check";
import { expect, test } from "vitest";
import { folded } from "../src/folded";

test.each([
  ["Pátzcuaro dwarf crayfish", "patzcuaro dwarf crayfish"],
  ["  NEON\t tetra ", "neon tetra"],
  ["long-fin", "long fin"],
  ["Endler's livebearer", "endlers livebearer"],
  ["Endler’s", "endlers"],
  ["Weißer Brokatbärbling", "weisser brokatbarbling"],
  ["Sælfisk", "saelfisk"],
  ["L46", "l46"],
  ["C. paleatus", "c paleatus"],
  ["金魚", "金魚"],
  ["-", ""],
  [".*", ""],
])("%s is compared as %s", (name, compared) => {
  expect(folded(name)).toBe(compared);
});

test("a name compared twice is the same name, and its case and way of writing accents do not matter", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme" }), (name) => {
      expect(folded(folded(name))).toBe(folded(name));
      expect(folded(name.normalize("NFD"))).toBe(folded(name.normalize("NFC")));
    }),
  );
});
