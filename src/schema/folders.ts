import type * as z from "zod";
import { oneOf } from "../checks";
import type { Problem } from "../errors";
import { frozen } from "../frozen";
import { frozenWhenRead, once } from "../made-once";
import { type JsonSchema, jsonSchemaOf } from "./as-json";
import { checked, type FileSchema } from "./checked";
import { explained } from "./explained";
import { idsAreUnique, jurisdictionSchema } from "./files/jurisdiction";
import { listingsSchema } from "./files/listings";
import { goesElsewhere, movedIdSchema } from "./files/moved-id";
import { sourceSchema } from "./files/source";
import { safeParseSpecies } from "./species/parse";
import { recordSchema } from "./species/record";

/** The folders of data whose files have a schema. */
export type DataFolder = "species" | "sources" | "moved" | "legal" | "standards";

/** How the files of each folder are checked. */
const folders: Readonly<Record<Exclude<DataFolder, "species">, FileSchema>> = {
  sources: { shape: sourceSchema, checks: [] },
  moved: { shape: movedIdSchema, checks: [goesElsewhere] },
  legal: { shape: listingsSchema, checks: [] },
  standards: { shape: jurisdictionSchema, checks: [idsAreUnique] },
};

/** The fields of a JSON Schema of a file. */
const fields = ["$schema", "type", "properties", "required", "additionalProperties"];

/** The schema as JSON Schema, draft 2020-12. It is worked out when it is first read: few programs do. */
function asJson(schema: z.ZodType): JsonSchema {
  const json = once(() => frozen(jsonSchemaOf(schema)));
  return frozenWhenRead(
    {},
    fields.map((field) => [field, () => json()[field]]),
  );
}

/** The JSON Schema (draft 2020-12) of a record. */
export const speciesJsonSchema: JsonSchema = /* @__PURE__ */ asJson(recordSchema);

/**
 * The JSON Schemas (draft 2020-12) of the files of each folder of data, for editors: completion, explanations and
 * errors while typing. They know the shape of a file; `problemsIn` also checks that what it says makes sense together.
 */
export const jsonSchemas: Readonly<Record<DataFolder, JsonSchema>> = /* @__PURE__ */ frozen({
  species: speciesJsonSchema,
  sources: /* @__PURE__ */ asJson(sourceSchema),
  moved: /* @__PURE__ */ asJson(movedIdSchema),
  legal: /* @__PURE__ */ asJson(listingsSchema),
  standards: /* @__PURE__ */ asJson(jurisdictionSchema),
});

/**
 * Everything that is wrong with a file of a folder of data: its shape, and what does not make sense together.
 *
 * @throws InvalidInputError for an unknown folder; never for what the file holds.
 *
 * @example
 * ```ts
 * import { problemsIn } from "vivary/schema";
 *
 * problemsIn("moved", { id: "barbus-tetrazona", to: "puntigrus-tetrazona" })[0]?.path; // => ["why"]
 * ```
 */
export function problemsIn(folder: DataFolder, json: unknown): readonly Problem[] {
  oneOf(folder, Object.keys(jsonSchemas), "folder");
  if (folder === "species") {
    const parsed = safeParseSpecies(json);
    return parsed.success ? [] : parsed.problems;
  }
  const found = checked(folders[folder], json);
  return found.success ? [] : found.problems.map((problem) => explained(problem, folders[folder].shape));
}
