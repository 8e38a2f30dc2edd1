import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Collection } from "../reading/collection";
import { guess } from "../reading/spelling";
import type { Check, Slip } from "./check";

/** Families and their orders, a line each. */
const file = "data/families.csv";

export const familiesAreKnown: Check = {
  name: "A family is spelt as it is known, and stands in its order",
  async find({ root, records }) {
    const families = await familiesOf(root);
    const orders = new Map([...families].reverse());
    const strayed = records.flatMap(({ path, record: { taxonomy } }): readonly Slip[] => {
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
        mend: `Correct the family or the order; if ${file} is wrong, the line of ${family} there.`,
      };
      return [known === undefined ? strange : elsewhere];
    });
    return [...linesAmiss(families), ...strayed, ...kindsAmiss(records)];
  },
};

/**
 * Lines of the list that are not a family and its order, or put a family into another order than a line above. The same
 * line twice does no harm: two branches that add it merge to that.
 */
function linesAmiss(families: readonly (readonly [family: string, order: string])[]): readonly Slip[] {
  return families.flatMap(([family, order], index) => {
    const place = { file, at: { line: index + 2, column: 1 } };
    const mend = "One line a family, such as Danionidae,Cypriniformes.";
    if (!/^[A-Z][a-z]+idae$/.test(family) || !/^[A-Z][a-z]+$/.test(order))
      return [{ ...place, found: `the line ${family},${order}`, expected: "a family and its order", mend }];
    const [, first = order] = families.find(([known]) => known === family) ?? [];
    return first === order
      ? []
      : [{ ...place, found: `${family} in ${order}, and in ${first} above`, expected: "one order", mend }];
  });
}

/** Animals of a kind that no relative is of: all of a family are of one kind, and all of an order fishes or none. */
function kindsAmiss(records: Collection["records"]): readonly Slip[] {
  return records.flatMap(({ path, record: { taxonomy } }) => {
    const { family, order, kind } = taxonomy;
    const others = records.filter((other) => other.path !== path).map((other) => other.record.taxonomy);
    const close = others.filter((other) => other.family === family);
    const far = others.filter((other) => other.order === order);
    const fits =
      close.length > 0
        ? close.some((other) => other.kind === kind)
        : far.length === 0 || far.some((other) => (other.kind === "fish") === (kind === "fish"));
    if (fits) return [];
    const relative = [...close, ...far][0];
    return [
      {
        file: path,
        at: ["taxonomy", "kind"],
        found: `a ${kind} among ${close.length > 0 ? family : order}`,
        expected: relative && `a ${relative.kind}, as ${relative.name} is`,
        mend: "Correct the kind, or the family and the order.",
      },
    ];
  });
}

export async function familiesOf(
  root: string,
): Promise<readonly (readonly [family: string, order: string])[]> {
  const [, ...lines] = (await readFile(join(root, file), "utf8")).trimEnd().split(/\r?\n/);
  return lines.map((line) => {
    const [family = "", order = ""] = line.split(",");
    return [family, order];
  });
}
