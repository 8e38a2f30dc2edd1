import type { PartialRange } from "../../ranges";
import { basisOf, type FigurePath } from "../../species";
import { hasValue, inTraitUnit, statementsFor } from "../../species/inner";
import type { Figure } from "../figure";
import { beyond } from "../messages/sentences";
import { shortCitation } from "./citations";
import { type Part, table } from "./parts";
import type { Telling } from "./telling";
import { nameOf } from "./water-figures";

/** What each source of the record says of grown animals of a species or form, beside each other; nothing without a record. */
export function sayings(
  { record, profile, messages, size, span, sources }: Telling,
  paths: readonly FigurePath[],
): readonly Part[] {
  if (!record) return [];
  const { page, words, basis } = messages;
  const source = (by: string) => {
    if (by === "common-practice") return basis[by];
    return by === "curator" ? basis.curated : shortCitation(by, sources, messages);
  };
  const rows = paths.flatMap((path) =>
    statementsFor(record, profile.form, path)
      .filter(({ stage = "adult" }) => stage === "adult")
      .filter((statement) => hasValue(statement))
      .map((statement): readonly string[] => {
        const { by, as = "kept", setAside, note, precision } = statement;
        const support = basisOf(statement, record.sources);
        const range = inTraitUnit(statement, path) as PartialRange;
        const write = (figure: Figure) => (as === "kept" || as === "optimum" ? span : size)(path, figure);
        const isLimit = as === "limit";
        const remarks = [
          support === "memory" || (support === "derived" && by !== "common-practice") ? basis[support] : "",
          precision === "class" ? page.water.ofClass : "",
          page.readsNotes
            ? setAside
              ? page.water.setAside(setAside)
              : (note ?? "")
            : setAside
              ? messages.pictures.setAside
              : "",
        ];
        return [
          page.water.rows[nameOf(path)],
          isLimit ? beyond(range, write, messages.ranges) : write(range),
          isLimit ? page.water.columns[3] : words.waterMeaning[as as keyof typeof words.waterMeaning],
          source(by),
          remarks.filter(Boolean).join("; "),
        ];
      }),
  );
  return table(page.water.saidTable, page.water.saidColumns, rows, false);
}
