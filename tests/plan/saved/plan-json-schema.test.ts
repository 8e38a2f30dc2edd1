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
    const places = [
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
      fc.property(fc.constantFrom(...places), value, ([section, field], put) => {
        const plan = Object(asJson(saved));
        plan[section][field] = put;
        const parsed = safeParsePlan(plan, speciesById);
        const misshapen = !parsed.success && parsed.problems.some(({ code }) => ofShape.includes(code));
        if (parsed.success) expect(validate(plan)).toBe(true);
        if (misshapen) expect(validate(plan)).toBe(false);
        if (!validate(plan)) expect(parsed.success).toBe(false);
      }),
      { numRuns: runs(500) },
    );
  });
});
