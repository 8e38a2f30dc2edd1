import type { CitableSource } from "../../species";

/** More authors than this are told by the first. */
const mostAuthors = 3;

/** The most letters of a title that stands in a picture. */
const longestTitle = 36;

/** A source as readers know it: `FishBase`, `Yanar, Erdoğan and Kumlu 2019`, `Saxby et al. 2010`. */
export function sourceName(
  { type, title, author = [], publisher, issued }: CitableSource,
  language: string,
): string {
  const isWorkOfReference = type === "dataset" || type === "webpage";
  if (isWorkOfReference && title.length <= longestTitle) return title;
  const names = author.map((one) => ("literal" in one ? one.literal : one.family));
  const who = names.length > mostAuthors ? `${names[0]} et al.` : new Intl.ListFormat(language).format(names);
  return [who || publisher || shortened(title), issued?.["date-parts"][0]?.[0]].filter(Boolean).join(" ");
}

/** A title, cut behind a word where it is long. */
const shortened = (title: string): string =>
  title.length <= longestTitle ? title : `${title.slice(0, longestTitle).replace(/\P{L}*\s\S*$/u, "")} …`;
