import type { PartialRange } from "../../../ranges";
import { ends } from "../../../ranges/inner";
import { type Columns, columnGap, figureRoom, nameRoom, rowRule } from "../columns";
import { fitted } from "../lettering";
import { type Drawn, grid, letters, margin, words } from "../page";
import type { Scale } from "../scale";
import { element, title } from "../svg";
import {
  bandStyle,
  bar,
  brackets,
  keptStyle,
  optimumStyle,
  type Place,
  sourceLine,
  standInStyle,
} from "./range-marks";
import type { RangeRow } from "./range-rows";

/** How far sources are set in below their species. */
export const indent = 8;
const sourcePitch = 13;
const rowHeight = (row: RangeRow) => 28 + row.sources.length * sourcePitch + (row.sources.length > 0 ? 5 : 0);

/** A row for each species, behind all of them what they have in common. */
export function rangeBody(
  rows: readonly RangeRow[],
  top: number,
  columns: Columns,
  scale: Scale,
  place: Place,
  shared: PartialRange | undefined,
): Drawn {
  const height = rows.reduce((sum, row) => sum + rowHeight(row), 0);
  const band = shared ? [bar(ends(shared, "shared"), place, top + height / 2, height, bandStyle)] : [];
  let y = top;
  const drawn = rows.flatMap((row) => {
    const parts = rowParts(row, y, columns, place);
    y += rowHeight(row);
    return [parts, rowRule(y)];
  });
  return { parts: [...grid(scale, top, top + height), ...band, ...drawn], height };
}

function rowParts(row: RangeRow, top: number, columns: Columns, place: Place): string {
  const { from, to } = columns;
  const { name, kept, limit, sources, figure, told } = row;
  const middle = top + 14;
  const room = nameRoom(columns);
  const label = words(fitted(name.head, room, letters.text), margin, middle + 4);
  const parts = [
    ...adopted(row, middle, place),
    ...(limit ? brackets(limit, place, middle, 18) : []),
    kept
      ? words(fitted(figure, figureRoom(columns), letters.text), to + columnGap, middle + 4)
      : words(figure, from + 8, middle + 4, { "font-style": "italic" }),
  ];
  const lines = sources.flatMap((source, index) => {
    const y = middle + 14 + sourcePitch / 2 + index * sourcePitch;
    const shown = fitted(source.label, room - indent, letters.small);
    return [
      element("g", {}, [
        title(source.told),
        words(shown, margin + indent, y + 3, { "font-size": letters.small }),
      ]),
      sourceLine(source.span, source.meaning, place, y, source.told),
    ];
  });
  return element("g", { class: "row" }, [title(told), label, ...parts, ...lines]);
}

function adopted({ kept, standsIn, optimum }: RangeRow, middle: number, place: Place): readonly string[] {
  return [
    ...(kept ? [bar(kept, place, middle, 14, standsIn ? standInStyle : keptStyle)] : []),
    ...(optimum && !standsIn ? [bar(optimum, place, middle, 5, optimumStyle)] : []),
  ];
}
