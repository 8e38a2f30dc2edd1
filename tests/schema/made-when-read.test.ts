import { expect, test } from "vitest";
import { jsonSchemas } from "../../src/schema";
import { jsonSchemaOf } from "../../src/schema/as-json";
import { jurisdictionSchema } from "../../src/schema/files/jurisdiction";
import { listingsSchema } from "../../src/schema/files/listings";
import { movedIdSchema } from "../../src/schema/files/moved-id";
import { sourceSchema } from "../../src/schema/files/source";
import { recordSchema } from "../../src/schema/species/record";

test.each([
  ["species", recordSchema],
  ["sources", sourceSchema],
  ["moved", movedIdSchema],
  ["legal", listingsSchema],
  ["standards", jurisdictionSchema],
] as const)("the JSON Schema of %s lacks no field", (folder, schema) => {
  expect(jsonSchemas[folder]).toStrictEqual(jsonSchemaOf(schema));
});
