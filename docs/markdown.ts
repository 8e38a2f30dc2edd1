// Markdown of the pages.
import { markdownTable } from "markdown-table";

/** Text that means only itself. */
export const plain = (text: string): string => text.replaceAll(/[\\`*_[\]<>|]/g, "\\$&");

export const italic = (text: string): string => `*${plain(text)}*`;

type Cell = string | number;

/** A table; its cells are Markdown. */
export const table = (head: readonly string[], rows: readonly (readonly Cell[])[]): string =>
  markdownTable([head, ...rows].map((cells) => cells.map(String)));

/** Paragraphs, headings and tables as a page. */
export const page = (...blocks: readonly string[]): string => `${blocks.join("\n\n")}\n`;
