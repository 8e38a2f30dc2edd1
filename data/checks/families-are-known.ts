import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { guess } from "../spelling";
import type { Check } from "./check";

/** Families and their orders, a line each. */
const file = "data/families.csv";

export const familiesAreKnown: Check = {
  name: "A family is spelt as it is known, and stands in its order",
  async find({ root, records }) {
    const orders = new Map(await familiesOf(root));
    return records.flatMap(({ path, record: { taxonomy } }) => {
      const { family, order } = taxonomy;
      const known = orders.get(family);
      if (known === order) return [];
      const strange = {
        file: path,
        at: ["taxonomy", "family"],
        found: `the family ${family}, of which ${file} does not know`,
        guess: guess(family, orders.keys()),
        mend: `Correct it; if it is the first of its family here, add the line ${family},${order} to ${file}.`,
      };
      const elsewhere = {
        file: path,
        at: ["taxonomy", "order"],
        found: `${family} in the order ${order}`,
        expected: known,
        mend: `Correct the order, or the line of ${family} in ${file}.`,
      };
      return [known === undefined ? strange : elsewhere];
    });
  },
};

export async function familiesOf(
  root: string,
): Promise<readonly (readonly [family: string, order: string])[]> {
  const [, ...lines] = (await readFile(join(root, file), "utf8")).trim().split(/\r?\n/);
  return lines.map((line) => {
    const [family = "", order = ""] = line.split(",");
    return [family, order];
  });
}
