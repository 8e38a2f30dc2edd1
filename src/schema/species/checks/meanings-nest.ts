import { contains, type PartialRange } from "../../../ranges";
import type { RecordSources, Statement, TraitPath } from "../../../species";
import { groupsOf, hasValue, joined, traitDefinitions } from "../../../species/inner";
import type { Check } from "../../checked";
import { fieldsOf } from "../../fields";
import { sourcesOf, traitsOf } from "../walk";
import { converts } from "./units-convert";

/** The meanings of a water figure, the narrowest first. */
const nesting = ["optimum", "kept", "tolerated", "limit"] as const;

/** The optimum lies in the kept span, the kept span in the tolerated one, that one between the limits. */
export const meaningsNest: Check = (record) =>
  traitsOf(record)
    .filter(({ trait }) => traitDefinitions[trait].way === "figures")
    .flatMap(({ trait, path, statements }) => {
      const used = usedByMeaning(
        statements.map(({ statement }) => statement),
        trait,
        sourcesOf(record),
      );
      return nesting.flatMap((inner, index) =>
        nesting.slice(index + 1).flatMap((outer) => {
          const [narrow, wide] = [used.get(inner), used.get(outer)];
          if (!narrow || !wide || contains(wide, narrow)) return [];
          return [
            {
              path,
              code: "conflict",
              found: { [inner]: narrow, [outer]: wide },
              expected: `${inner} within ${outer}`,
              explanation: "Mend the meaning, or set the statement aside that is wrong and say why.",
            },
          ];
        }),
      );
    });

/** The spans that count, by what they mean, of grown animals: an end that one source leaves open as another states it. */
function usedByMeaning(
  statements: readonly Statement[],
  trait: TraitPath,
  sources: RecordSources,
): ReadonlyMap<unknown, PartialRange> {
  const spans = statements
    .filter((statement) => hasValue(statement))
    .filter((statement) => isSpan(statement.value) && converts(statement, trait))
    .filter(({ stage = "adult" }) => stage === "adult");
  return new Map(
    [...groupsOf(spans, trait, sources).values()].flatMap((group) => {
      const [used] = joined(group);
      return used ? [[group.as, used.value as PartialRange]] : [];
    }),
  );
}

function isSpan(value: unknown): boolean {
  const { min, max } = fieldsOf(value);
  const ends = [min, max].filter((end) => end !== undefined);
  const inOrder = typeof min !== "number" || typeof max !== "number" || min <= max;
  return ends.length > 0 && ends.every((end) => typeof end === "number") && inOrder;
}
