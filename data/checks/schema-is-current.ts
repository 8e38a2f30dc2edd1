import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { schemaFiles } from "../writing/json-schema";
import type { Check } from "./check";

export const schemaIsCurrent: Check = {
  name: "The JSON Schemas are current",
  async find({ root }) {
    const stale = await Promise.all(
      schemaFiles.map(async ({ path, text }) => {
        const written = await readFile(join(root, path), "utf8").catch(() => "");
        return written === text ? [] : [path];
      }),
    );
    return stale.flat().map((path) => ({
      file: path,
      found: "is stale",
      expected: "the schema that vivary/schema exports",
      mend: "npm run format",
    }));
  },
};
