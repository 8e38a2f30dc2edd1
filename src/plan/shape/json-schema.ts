import type { ObjectShape, Shape } from "./shape";

type JsonSchema = Readonly<Record<string, unknown>>;

/** A shape as a JSON Schema (draft 2020-12). A shape that a function checks is told by `told`. */
export function jsonSchemaOf(shape: Shape, told: JsonSchema): JsonSchema {
  switch (shape.is) {
    case "number":
      return {
        type: "number",
        ...(shape.min !== undefined && { minimum: shape.min }),
        ...(shape.above !== undefined && { exclusiveMinimum: shape.above }),
        ...(shape.max !== undefined && { maximum: shape.max }),
        ...(shape.unit && { description: `In ${shape.unit}.` }),
      };
    case "count":
      return { type: "integer", minimum: shape.min, maximum: shape.max };
    case "yes-or-no":
      return { type: "boolean" };
    case "word":
      return { enum: shape.words };
    case "text":
      return { type: "string", minLength: 1, maxLength: shape.longest };
    case "list":
      return {
        type: "array",
        items: jsonSchemaOf(shape.of, told),
        minItems: shape.least,
        maxItems: shape.most,
      };
    case "object":
      return objectSchema(shape, told);
    case "kinds":
      return { oneOf: Object.values(shape.of).map((kind) => objectSchema(kind, told)) };
    case "checked":
      return told;
  }
}

function objectSchema({ fields, required = [] }: ObjectShape, told: JsonSchema): JsonSchema {
  const properties = Object.entries(fields).map(([key, field]) => [key, jsonSchemaOf(field, told)]);
  return {
    type: "object",
    properties: Object.fromEntries(properties),
    ...(required.length > 0 && { required }),
    additionalProperties: false,
  };
}
