import * as z from "zod";
import { recordSchema } from "./record";

/**
 * The JSON Schema (draft 2020-12) of a record, for editors: completion, explanations and errors while typing.
 * It knows the shape of a record; `safeParseSpecies` also checks that the statements make sense together.
 */
export const speciesJsonSchema: Readonly<Record<string, unknown>> = /* @__PURE__ */ z.toJSONSchema(
  recordSchema,
  {
    io: "input",
  },
);
