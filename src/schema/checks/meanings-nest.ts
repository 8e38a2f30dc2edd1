import { contains } from "../../ranges";
import { grouped, hasValue, type Stated, standing } from "../../species/statements";
import { inTraitUnit } from "../../species/trait-unit";
import { traitTable } from "../../species/traits";
import type { SourceReference } from "../../species/types";
import { fieldsOf, sourcesOf, traitsOf } from "../walk";
import type { Check } from "./check";
import { unitsConvert } from "./units-convert";

type Ends = { readonly min?: number; readonly max?: number };

/** The meanings of a water figure, the narrowest first. */
const nesting = ["optimum", "kept", "tolerated", "limit"] as const;

/** The optimum lies in the kept span, the kept span in the tolerated one, that one between the limits. */
export const meaningsNest: Check = (record) => {
  const unreadable = new Set(unitsConvert(record).map(({ path }) => path));
  const sources = sourcesOf(record);
  return traitsOf(record)
    .filter(({ trait }) => traitTable[trait].way === "figures")
    .flatMap(({ trait, path, statements }) => {
      const stated = statements
        .filter((at) => isSpan(at.statement.value) && !unreadable.has(`${at.path}.unit`))
        .flatMap(({ statement }) => (hasValue(statement) ? [inTraitUnit(statement, trait)] : []));
      const used = usedByMeaning(stated, sources);
      return nesting.flatMap((inner, index) =>
        nesting.slice(index + 1).flatMap((outer) => {
          const [narrow, wide] = [used.get(inner), used.get(outer)];
          if (!narrow || !wide || contains(wide, narrow)) return [];
          return [
            {
              path,
              found: { [inner]: narrow, [outer]: wide },
              expected: `${inner} within ${outer}`,
              explanation: "Mend the meaning, or set the statement aside that is wrong and say why.",
            },
          ];
        }),
      );
    });
};

function isSpan(value: unknown): boolean {
  const { min, max } = fieldsOf(value);
  const ends = [min, max].filter((end) => end !== undefined);
  const [low = -Infinity, high = Infinity] = [min, max] as (number | undefined)[];
  return (
    ends.length > 0 && ends.every((end) => typeof end === "number" && Number.isFinite(end)) && low <= high
  );
}

function usedByMeaning(stated: readonly Stated[], sources: Readonly<Record<string, SourceReference>>) {
  const grown = stated.filter(({ stage }) => stage === undefined || stage === "adult");
  const used = [...grouped(grown).values()].map((group) => standing(group, sources)[0]);
  return new Map(used.flatMap((statement) => (statement ? [[statement.as, statement.value as Ends]] : [])));
}
