import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { schemaFiles } from "../json-schema";
import type { Check } from "./check";

export const schemaIsCurrent: Check = {
  name: "The JSON Schemas are current",
  async find({ root }) {
    const stale = await Promise.all(
      schemaFiles.map(async ({ file, text }) => {
        const written = await readFile(join(root, "data", file), "utf8").catch(() => "");
        return written === text ? [] : [file];
      }),
    );
    return stale.flat().map((file) => ({
      where: `data/${file}`,
      found: "is stale",
      expected: "the schema that vivary/schema exports",
      mend: "npm run format",
    }));
  },
};
