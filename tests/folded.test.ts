import fc from "fast-check";
import { expect, test } from "vitest";
import { folded, spellings } from "../src/folded";

test.each([
  ["Pátzcuaro dwarf crayfish", "patzcuaro dwarf crayfish"],
  ["  NEON\t tetra ", "neon tetra"],
  ["long-fin", "long fin"],
  ["Endler's livebearer", "endlers livebearer"],
  ["Endler’s", "endlers"],
  ["Weißer Brokatbärbling", "weisser brokatbarbling"],
  ["Sælfisk", "saelfisk"],
  ["L46", "l46"],
  ["L046", "l46"],
  ["L 046", "l46"],
  ["l-0", "l0"],
  ["Ancistrus sp. L 144", "ancistrus sp l144"],
  ["LDA 08", "lda8"],
  ["Neon 05", "neon 05"],
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

test.each([
  ["Zebrabärbling", "zebrabarbling", "zebrabaerbling"],
  ["GRÜNER Schwertträger", "gruner schwerttrager", "gruener schwerttraeger"],
  ["Melanotaenia boesemani", "melanotaenia boesemani"],
  ["Pátzcuaro", "patzcuaro"],
  ["Weißer Neon", "weisser neon"],
])("%s is spelt %s", (name, ...spelt) => {
  expect(spellings(name)).toStrictEqual(spelt);
});

test("every spelling is one as names are compared, the first without marks", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme" }), (name) => {
      expect(spellings(name)[0]).toBe(folded(name));
      for (const spelling of spellings(name)) expect(folded(spelling)).toBe(spelling);
    }),
  );
});
