import { frozen } from "../../frozen";
import { jsonSchemaOf } from "../shape/json-schema";
import { groupsShape, planShape } from "../shape/plan-shape";
import { format } from "./formats";

/**
 * The JSON Schema (draft 2020-12) of a saved plan, for editors and for services that accept one. What holds between fields,
 * and whether species and forms are known, `safeParsePlan` sees alone: groups without an animal, glass that leaves no floor,
 * lengths beyond 0.1 mm to 1 km in the unit of the tank.
 */
export const planJsonSchema: Readonly<Record<string, unknown>> = /* @__PURE__ */ frozen(
  /* @__PURE__ */ schemaOfSavedPlans(),
);

function schemaOfSavedPlans(): Record<string, unknown> {
  const { fields, ...shape } = planShape(groupsShape(() => []));
  const saved = { ...shape, fields: { format: { is: "count", min: 1, max: format } as const, ...fields } };
  const species = {
    type: "string",
    minLength: 1,
    maxLength: 120,
    description: "The id or a name of a species.",
  };
  return { $schema: "https://json-schema.org/draft/2020-12/schema", ...jsonSchemaOf(saved, species) };
}
