import { nearest } from "../reading/spelling";
import type { Check } from "./check";

/**
 * A misspelt root would make two voices of one, and a misspelt relative stand on every page. Roots need no file, and
 * relatives no record: only what is nearly another name is a slip.
 */
export const rootsAndRelativesAreSpelt: Check = {
  name: "The root of a source, and whom its figures are of, are spelt as elsewhere",
  find({ records, files }) {
    const references = records.flatMap(({ path: file, record }) =>
      Object.entries(record.sources).map(([key, source]) => ({ file, key, record, ...source })),
    );
    const roots = references.flatMap(({ root }) => (root === undefined ? [] : [root]));
    const sources = new Set(files.sources.map(({ name }) => name));
    const isAlone = (root: string) =>
      !sources.has(root) && roots.filter((other) => other === root).length === 1;
    const known = [...sources, ...roots.filter((root) => !isAlone(root))];
    return references.flatMap(({ file, key, record, root, of }) => {
      const { name, family } = record.taxonomy;
      const own = [name.split(" ")[0] ?? name, family];
      const meantRoot =
        root !== undefined && isAlone(root)
          ? nearest(
              root,
              known.filter((other) => figuresIn(other) === figuresIn(root)),
              2,
            )
          : undefined;
      const [genus = ""] = of?.split(" ") ?? [];
      const meantOf = of === undefined || own.includes(genus) ? undefined : nearest(genus, own, 2);
      return [...slipOf(file, key, "root", root, meantRoot), ...slipOf(file, key, "of", of, meantOf)];
    });
  },
};

/** A difference of figures, such as of the year, is none of spelling. */
const figuresIn = (text: string) => text.replace(/\D+/g, " ").trim();

const slipOf = (file: string, key: string, field: "root" | "of", found = "", meant?: string) =>
  meant === undefined
    ? []
    : [
        {
          file,
          at: ["sources", key, field],
          found: `${found} as ${field} of ${key}, which is called so nowhere else`,
          expected: "a name as it is spelt elsewhere",
          guess: ` Did you mean ${meant}?`,
          mend: "Correct it.",
        },
      ];
