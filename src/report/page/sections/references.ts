import { fullCitation } from "../citations";
import { list, type Section, section } from "../parts";
import type { Telling } from "../telling";

/** What the page was taken from, what counts first. */
export function references({ messages, sources }: Telling): readonly Section[] {
  const { headings } = messages.page;
  const used = [...sources.filter((source) => source.used), ...sources.filter((source) => !source.used)];
  return section(
    "sources",
    headings.sources,
    list([...new Set(used.map((source) => fullCitation(source, messages)))]),
  );
}
