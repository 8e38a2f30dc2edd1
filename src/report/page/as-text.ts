import { oneLine, wrapped } from "../layout";
import type { Cell, Page, Part } from "./parts";

/** A page as plain text in lines of at most 80 columns. */
export function asText({ title, scientific, belongs, lead, sections }: Page): string {
  const head = [title === scientific ? "" : scientific, belongs].filter(Boolean).join(", ");
  const parts = [
    [oneLine(title), "=".repeat(oneLine(title).length)].join("\n"),
    wrapped(head, "", ""),
    ...lead.map(partText),
    ...sections.flatMap(({ heading, parts }) => [
      [oneLine(heading), "-".repeat(oneLine(heading).length)].join("\n"),
      ...parts.map(partText),
    ]),
  ];
  return `${parts.join("\n\n")}\n`;
}

function partText(part: Part): string {
  switch (part.as) {
    case "paragraph":
      return wrapped(part.text, "", "");
    case "list":
      return titled(part.title, part.items.map(cellText).map(item));
    case "terms":
      return titled(
        part.title,
        part.rows.map(([term, text]) => item(`${term}: ${text}`)),
      );
    case "table":
      return titled(
        part.title,
        part.rows.map((row) => item(rowText(row, part.named ? part.columns : []))),
      );
  }
}

const item = (text: string) => wrapped(text, "- ", "  ");

const titled = (title: string | undefined, lines: readonly string[]) =>
  [...(title ? [wrapped(`${title}:`, "", "")] : []), ...lines].join("\n");

/** A row as a line: the first cell, and the others with the heads of their columns. */
function rowText([first = "", ...further]: readonly string[], [, ...columns]: readonly string[]): string {
  const told = further.flatMap((text, index) =>
    text ? [[columns[index], text].filter(Boolean).join(" ")] : [],
  );
  return `${first}: ${told.join("; ")}`;
}

/** Names are followed by the scientific ones in brackets. */
function cellText(cell: Cell): string {
  if (typeof cell === "string") return cell;
  return cell
    .map((run) => {
      if (typeof run === "string") return run;
      return run.scientific ? `${run.name} (${run.scientific})` : run.name;
    })
    .join("");
}
