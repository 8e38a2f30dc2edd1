import { describe, expect, test } from "vitest";
import { applyForm, resolve, type TraitStatement } from "../../../src/species";
import { recordOf } from "../records";

const trade = "common-practice";
type Flow = TraitStatement<"water.flow">;
type LongFins = TraitStatement<"appearance.longFins">;
const flow = (
  min: "still" | "gentle" | "strong",
  max: "still" | "moderate" | "strong",
  by = "study",
): Flow => ({
  by,
  value: { min, max },
});
const bred: LongFins = { by: trade, value: true };

/** The currents of a form, by what its species and it state. */
const flowOf = (species: readonly Flow[], longFins: readonly LongFins[], own: readonly Flow[] = []) =>
  resolve(
    recordOf({
      ...(species.length > 0 && { water: { flow: species } }),
      forms: {
        veil: {
          names: { en: ["veil danio"] },
          ...(longFins.length > 0 && { appearance: { longFins } }),
          ...(own.length > 0 && { water: { flow: own } }),
        },
      },
    }),
  ).forms?.veil?.water?.flow;

describe("a form bred with long fins", () => {
  test("is spared the strongest current of its species, which nobody stated", () => {
    expect(flowOf([flow("gentle", "strong")], [bred])).toStrictEqual({
      value: { min: "gentle", max: "moderate" },
      basis: "derived",
      said: ["study", trade],
    });
  });

  test("is never taken below the calmest", () => {
    expect(flowOf([flow("strong", "strong")], [bred])?.value).toStrictEqual({ min: "strong", max: "strong" });
  });

  test("is spared in whatever another source says of the species", () => {
    expect(flowOf([flow("gentle", "strong"), flow("still", "moderate", "handbook")], [bred])).toStrictEqual({
      value: { min: "gentle", max: "moderate" },
      basis: "derived",
      said: ["study", trade],
      also: [{ min: "still", max: "gentle" }],
    });
  });

  test("may stand the species' currents where a source denies its long fins", () => {
    const doubted: readonly LongFins[] = [
      { by: "study", value: true },
      { by: trade, value: false },
    ];
    expect(flowOf([flow("gentle", "strong")], doubted)?.also).toStrictEqual([
      { min: "gentle", max: "strong" },
    ]);
  });

  test("keeps the current that is stated for it", () => {
    expect(flowOf([flow("gentle", "strong")], [bred], [flow("still", "strong")])?.value).toStrictEqual({
      min: "still",
      max: "strong",
    });
  });

  test("is that by its own statement, even where the species has long fins too", () => {
    const record = recordOf({
      water: { flow: [flow("still", "moderate")] },
      appearance: { longFins: [{ by: "study", value: true }] },
      forms: {
        veil: { names: { en: ["veil danio"] }, appearance: { longFins: [bred] } },
        plain: { names: { en: ["danio"] } },
      },
    });
    const profile = resolve(record);
    expect(applyForm(profile, "veil").water?.flow?.value.max).toBe("gentle");
    expect(applyForm(profile, "plain").water?.flow?.value.max).toBe("moderate");
  });
});

test("short fins, no word on fins, and a species without a current give no current", () => {
  expect(flowOf([flow("gentle", "strong")], [{ by: trade, value: false }])).toBeUndefined();
  expect(flowOf([flow("gentle", "strong")], [])).toBeUndefined();
  expect(flowOf([], [bred])).toBeUndefined();
});
