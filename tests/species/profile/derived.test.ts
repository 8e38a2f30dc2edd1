import { describe, expect, test } from "vitest";
import { withSparedFlow } from "../../../src/species/profile/derived";
import type { Facts } from "../../../src/species/profile/profile";

const strong = { min: "gentle", max: "moderate" } as const;
const species: Facts = { water: { flow: { value: strong, basis: "published" } } };
const longFins = (more: object = {}): Facts => ({
  appearance: { longFins: { value: true, basis: "common-practice", ...more } },
});

describe("a form bred with long fins", () => {
  test("is spared the strongest current of its species", () => {
    expect(withSparedFlow(longFins(), species).water?.flow).toEqual({
      value: { min: "gentle", max: "gentle" },
      basis: "common-practice",
    });
  });

  test("is not where its own current is stated, or its fins are short", () => {
    const stated: Facts = { ...longFins(), ...species };
    expect(withSparedFlow(stated, species)).toBe(stated);
    const short: Facts = { appearance: { longFins: { value: false, basis: "published" } } };
    expect(withSparedFlow(short, species)).toBe(short);
  });
});
