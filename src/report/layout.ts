/** A part of a report: lines that lead, or a list, with a title or without. */
export type Block =
  | { readonly lead: readonly string[] }
  | { readonly title?: string; readonly items: readonly string[] };

const columns = 80;

/** Plain text in lines of at most 80 columns, but for addresses that are longer. Lists without items are left out. */
export function plainText(blocks: readonly Block[]): string {
  const parts = blocks.map((block) => {
    if ("lead" in block) return block.lead.map((line) => wrapped(line, "", "")).join("\n");
    const items = block.items.map((item) => wrapped(item, "- ", "  "));
    const title = block.title === undefined ? [] : wrapped(block.title, "", "");
    return items.length > 0 ? [title, items].flat().join("\n") : "";
  });
  return parts.filter(Boolean).join("\n\n");
}

/** Markdown, with whatever has a meaning there escaped. Lists without items are left out. */
export function markdown(blocks: readonly Block[]): string {
  const parts = blocks.map((block) => {
    if ("lead" in block) return block.lead.map(escaped).join("  \n");
    const items = block.items.map((item) => `- ${escaped(item)}`);
    const title = block.title === undefined ? "" : `## ${escaped(block.title)}\n\n`;
    return items.length > 0 ? title + items.join("\n") : "";
  });
  return `${parts.filter(Boolean).join("\n\n")}\n`;
}

/** Text that Markdown shows as it is: no mark, list, link or mention is made of it. */
export function escaped(text: string): string {
  return oneLine(text)
    .replaceAll(/[\\`*_{}[\]<>#|&~@]/g, "\\$&")
    .replaceAll(/:(?=\/\/)|(?<=\bwww)\./gi, "\\$&")
    .replace(/^(\d+)(?=[.)](?:\s|$))/, "$1\\")
    .replace(/^[-=+]/, "\\$&");
}

/** Text in lines of at most 80 columns, but for an address that is longer, with what stands before the first and before those that follow. */
export function wrapped(text: string, first: string, further: string): string {
  const lines: string[] = [];
  let line = first;
  for (const word of oneLine(text).split(" ").flatMap(pieces)) {
    const empty = line === first || line === further;
    if (!empty && line.length + 1 + word.length > columns) {
      lines.push(line);
      line = further + word;
    } else line += empty ? word : ` ${word}`;
  }
  return [...lines, line].join("\n");
}

/** A word that is longer than a line in pieces that are not; an address stays whole, or nobody could follow it. */
const pieces = (word: string): readonly string[] =>
  word.length <= 78 || word.includes("://") ? [word] : (word.match(/.{1,78}/gu) ?? [word]);

/**
 * Text without line breaks, control characters or marks that turn the direction of reading. Joiners stay, since some
 * scripts need them, and so do the spaces at which no line may break.
 */
export function oneLine(text: string): string {
  return text
    .replaceAll(/(?:(?![\u200c\u200d])\p{C})+/gu, " ")
    .replaceAll(/[^\S\u00a0\u202f]+/g, " ")
    .trim();
}
