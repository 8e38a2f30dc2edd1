import * as z from "zod";
import { formSchema } from "./species/record";
import { values } from "./species/values";

/** A JSON Schema, as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** The sections of a form, told once: as those of the species. */
const sectionsOfSpecies = Object.fromEntries(
  Object.keys(values).map((section) => [section, { $ref: `#/properties/${section}` }]),
);

/** A schema as JSON Schema, draft 2020-12. */
export const jsonSchemaOf = (schema: z.ZodType): JsonSchema =>
  z.toJSONSchema(schema, {
    io: "input",
    override({ zodSchema, jsonSchema }) {
      if (zodSchema === formSchema) Object.assign(jsonSchema.properties ?? {}, sectionsOfSpecies);
      if (jsonSchema.oneOf) delete jsonSchema.enum;
    },
  });
