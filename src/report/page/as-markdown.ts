import { escaped } from "../layout";
import type { Cell, NamedAnimal, Page, Part } from "./parts";

/** Where the page of a species or form stands. */
export type LinkTo = (id: string, form: string | undefined) => string | undefined;

/** A page as Markdown, with whatever has a meaning there escaped. */
export function asMarkdown({ title, scientific, belongs, lead, sections }: Page, linkTo: LinkTo): string {
  const parts = [
    `# ${escaped(title)}`,
    [`*${escaped(scientific)}*`, escaped(belongs)].join(" "),
    ...lead.map((part) => partText(part, linkTo)),
    ...sections.flatMap(({ heading, parts }) => [
      `## ${escaped(heading)}`,
      ...parts.map((part) => partText(part, linkTo)),
    ]),
  ];
  return `${parts.join("\n\n")}\n`;
}

function partText(part: Part, linkTo: LinkTo): string {
  const cell = (one: Cell) =>
    typeof one === "string"
      ? escaped(one)
      : one
          .map((run) => (typeof run === "string" ? run.replace(/\S(.*\S)?/s, escaped) : animal(run, linkTo)))
          .join("");
  switch (part.as) {
    case "paragraph":
      return escaped(part.text);
    case "list":
      return titled(
        part.title,
        part.items.map((item) => `- ${cell(item)}`),
      );
    case "terms":
      return titled(
        part.title,
        part.rows.map(([term, text]) => `- **${escaped(term)}**: ${escaped(text)}`),
      );
    case "table": {
      const rows = [
        part.columns.map(escaped),
        part.columns.map(() => "---"),
        ...part.rows.map((row) => row.map(cell)),
      ];
      return titled(
        part.title,
        rows.map((cells) => `| ${cells.join(" | ")} |`),
      );
    }
  }
}

const titled = (title: string | undefined, lines: readonly string[]) =>
  [...(title ? [`### ${escaped(title)}`] : []), lines.join("\n")].join("\n\n");

function animal({ name, scientific, id, form }: NamedAnimal, linkTo: LinkTo): string {
  const to = linkTo(id, form);
  const named = to === undefined ? escaped(name) : `[${escaped(name)}](<${address(to)}>)`;
  return scientific ? `${named} (*${escaped(scientific)}*)` : named;
}

/** An address that stays whole between angle brackets, in a table too: nothing else in it is changed. */
const address = (to: string) =>
  to.replaceAll(/[\s\p{Cc}<>\\|`]|&(?=#?\w+;)/gu, (sign) =>
    sign === "&" ? "&amp;" : encodeURIComponent(sign),
  );
