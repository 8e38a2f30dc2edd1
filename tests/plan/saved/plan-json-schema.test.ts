import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { speciesById } from "vivary/catalog";
import { planData, planJsonSchema, safeParsePlan } from "../../../src/plan";
import { runs } from "../../runs";
import { plans } from "../arbitrary";
import { impossible, misshapen, saved } from "./cases";

const ajv = new Ajv2020({ allErrors: true, strict: true });
const validate = ajv.compile(planJsonSchema);
const asJson = (plan: unknown): unknown => JSON.parse(JSON.stringify(plan));

test("it is a schema, and nobody can change it", () => {
  expect(ajv.validateSchema(planJsonSchema)).toBe(true);
  expect(Object.isFrozen(Object(planJsonSchema.properties).groups)).toBe(true);
});

describe("a service with the schema and safeParsePlan agree", () => {
  test("that a plan is one", () => {
    expect(validate(asJson(saved))).toBe(true);
  });

  test.each(misshapen)("that a plan with %s is none", (_, plan) => {
    expect(validate(asJson(plan))).toBe(false);
  });

  test.each(impossible)("not on %s, which only safeParsePlan sees", (_, plan) => {
    expect(validate(asJson(plan))).toBe(true);
    expect(safeParsePlan(plan, speciesById).success).toBe(false);
  });

  test("on every plan that is saved", () => {
    fc.assert(
      fc.property(plans, (plan) => {
        validate(planData(plan));
        expect(validate.errors).toBeNull();
      }),
      { numRuns: runs(200) },
    );
  });

  test("on how many corners a tank has", () => {
    for (const [count, accepted] of [
      [3, true],
      [200, true],
      [201, false],
    ] as const) {
      const points = Array.from({ length: count }, (_, corner) => {
        const turn = (2 * Math.PI * corner) / count;
        return [50 + 40 * Math.cos(turn), 50 + 40 * Math.sin(turn)];
      });
      const plan = { ...saved, tank: { ...saved.tank, base: { shape: "polygon", points } } };
      expect(validate(plan)).toBe(accepted);
      expect(safeParsePlan(plan, speciesById).success).toBe(accepted);
    }
  });

  test("on characters beyond the first plane, which count once", () => {
    const named = (id: string) => ({ ...saved, groups: [{ ...saved.groups[1], id }] });
    for (const [id, accepted] of [
      ["🐟".repeat(120), true],
      ["🐟".repeat(121), false],
    ] as const) {
      expect(validate(named(id))).toBe(accepted);
      expect(safeParsePlan(named(id), speciesById).success).toBe(accepted);
    }
  });

  test("on whatever becomes of one field: what one refuses for its shape, so does the other", () => {
    const value = fc.oneof(
      fc.jsonValue({ maxDepth: 2 }),
      fc.constantFrom(-1, 0, 0.5, 1, 2, 1e6, 1e7, "still", "sand"),
    );
    const corners = fc.oneof(fc.nat({ max: 5 }), fc.integer({ min: 195, max: 205 })).map((count) =>
      Array.from({ length: count }, (_, corner) => {
        const turn = (2 * Math.PI * corner) / count;
        return [50 + 40 * Math.cos(turn), 50 + 40 * Math.sin(turn)];
      }),
    );
    const base = fc.record(
      {
        shape: fc.constantFrom("rectangle", "polygon", "circle", "bowl"),
        points: fc.oneof(corners, fc.jsonValue({ maxDepth: 2 })),
        length: fc.constantFrom(-1, 60, "60"),
        width: fc.constant(30),
        diameter: fc.constant(40),
      },
      { requiredKeys: ["shape"] },
    );
    const polygon = corners.map((points) => ({ shape: "polygon", points }));
    const places = [
      ["tank", "base"],
      ["tank", "height"],
      ["tank", "cover"],
      ["tank", "flow"],
      ["tank", "filter"],
      ["tank", "plants"],
      ["tank", "sightBreaks"],
      ["water", "temperature"],
      ["water", "salinity"],
      ["groups", "0"],
      ["offerings", "0"],
    ] as const;
    const ofShape = ["type", "word", "unknown-key", "too-many", "text"];
    fc.assert(
      fc.property(
        fc.constantFrom(...places),
        value,
        fc.oneof(base, polygon),
        ([section, field], put, putBase) => {
          const plan = Object(asJson(saved));
          plan[section][field] = field === "base" ? putBase : put;
          const parsed = safeParsePlan(plan, speciesById);
          const misshapen = !parsed.success && parsed.problems.some(({ code }) => ofShape.includes(code));
          if (parsed.success) expect(validate(plan)).toBe(true);
          if (misshapen) expect(validate(plan)).toBe(false);
          if (!validate(plan)) expect(parsed.success).toBe(false);
        },
      ),
      { numRuns: runs(500) },
    );
  });
});
