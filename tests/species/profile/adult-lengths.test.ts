import { describe, expect, it } from "vitest";
import type { AdultLength } from "../../../src/species";
import { lengthsMeant, lengthsOfSex } from "../../../src/species/inner";

const length = (total: number, more: Partial<AdultLength> = {}): AdultLength => ({
  length: total,
  measure: "TL",
  as: "usual",
  total: { min: total, max: total },
  ...more,
});

const male = length(4, { sex: "male" });
const female = length(6, { sex: "female", as: "greatest" });
const either = length(5);

describe("The adult lengths to go by", () => {
  it("are those of a sex, with those stated for both", () => {
    expect(lengthsOfSex([male, female, either], "male")).toEqual([male, either]);
    expect(lengthsOfSex([male, female, either], undefined)).toEqual([male, female, either]);
  });

  it("are all where none is stated for the sex", () => {
    expect(lengthsOfSex([female], "male")).toEqual([female]);
  });

  it("are none where none is stated, which is a mistake", () => {
    expect(() => lengthsOfSex([], "male")).toThrow("size.adultLength: expected at least one length");
  });

  it("are those with the meaning wanted, and all where none has it", () => {
    expect(lengthsMeant([male, female], "greatest")).toEqual([female]);
    expect(lengthsMeant([male], "greatest")).toEqual([male]);
  });
});
