import { Cite } from "@citation-js/core";
import "@citation-js/plugin-bibtex";
import "@citation-js/plugin-csl";
import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../../src/errors";
import { bibtex, sources } from "../../../src/evidence";
import type { CitableSource, SourceAuthor } from "../../../src/species";

const all = Object.values(sources) as readonly CitableSource[];
const ids = all.map(({ id }) => id);

/** What a program for bibliographies reads. */
const read = new Cite(bibtex(ids)).data as readonly Entry[];

type Entry = Omit<CitableSource, "author"> & {
  readonly "citation-key": string;
  readonly author?: readonly Name[];
};

type Name = SourceAuthor & { readonly "non-dropping-particle"?: string };

/** Authors as printed: BibTeX does not tell a body from a person, nor a prefix from the name. */
const namesOf = ({ author }: { readonly author?: readonly Name[] | undefined }) =>
  author?.map((name) =>
    "literal" in name
      ? name.literal
      : [name["non-dropping-particle"], name.family, name.given, name.suffix].filter(Boolean).join(" "),
  );

const yearOf = ({ issued }: Pick<CitableSource, "issued">) => Number(issued?.["date-parts"][0]?.[0]);

test("a program reads every entry, under our ids and in the order given", () => {
  expect(read.map((entry) => entry["citation-key"])).toStrictEqual(ids);
});

describe.each(all.map((source, index) => ({ source, index, id: source.id })))("$id", ({ source, index }) => {
  test("keeps title, authors, journal, year, pages and DOI", () => {
    const entry = read[index];
    if (!entry) throw new Error("not read");
    expect(entry.title).toBe(source.title);
    expect(namesOf(entry)).toStrictEqual(namesOf(source));
    if (source.type === "article-journal") expect(entry["container-title"]).toBe(source["container-title"]);
    expect(yearOf(entry)).toBe(yearOf(source));
    expect(entry.page).toBe(source.page);
    expect(entry.DOI).toBe(source.DOI);
  });
});

// The characters that LaTeX takes for commands (Lamport, LaTeX: A Document Preparation System, 1994; from memory), but for
// backslash and braces, of which escapes are made. url and doi are set verbatim.
test.each(ids)("%s can be set by LaTeX, and tells no address twice", (id) => {
  const fields = [...bibtex([id]).matchAll(/^\t(\w+) = (.*)$/gm)].map(([, name = "", text = ""]) => ({
    name,
    text,
  }));
  for (const { name, text } of fields) {
    if (name !== "url" && name !== "doi") expect(text).not.toMatch(/(?<!\\)[&%$#_~^]/);
  }
  expect(fields.filter(({ text }) => text.includes("//")).length).toBeLessThan(2);
});

test("prints as a reference, without our remarks", () => {
  const printed = new Cite(bibtex(["plisnier-1999"])).format("bibliography", {
    format: "text",
    template: "apa",
    lang: "en-US",
  });
  expect(printed).toContain("Plisnier, P.-D., Chitamwebwa, D.");
  expect(printed).toContain("(1999)");
  expect(printed).toContain("Hydrobiologia, 407, 45–58");
  expect(sources["plisnier-1999"]?.custom?.remark).toContain("from memory");
  expect(printed).not.toContain("memory");
  const whole = new Cite(bibtex(ids)).format("bibliography", {
    format: "text",
    template: "apa",
    lang: "en-US",
  });
  for (const { custom } of all) if (custom?.remark) expect(whole).not.toContain(custom.remark.slice(0, 15));
});

test("what of a reference was recalled stands in its entry, for whoever checks it", () => {
  const remarked = all.filter(({ custom }) => custom?.remark);
  expect(remarked.length).toBeGreaterThan(100);
  for (const { id, custom } of remarked) {
    const [, annote = ""] = bibtex([id]).match(/^\tannote = \{(.*)\},?$/m) ?? [];
    expect(annote.replaceAll("\\", "")).toBe(custom?.remark);
  }
});

test("each source once", () => {
  expect(bibtex(["fishbase", "yanar-2019", "fishbase"])).toBe(bibtex(["fishbase", "yanar-2019"]));
  expect(bibtex([])).toBe("");
});

test.each([
  [["nobody-1900"], 'ids[0]: expected the id of a source, found "nobody-1900"'],
  [["fishbase", "constructor"], 'ids[1]: expected the id of a source, found "constructor"'],
  ["fishbase", 'ids: expected a list, found "fishbase"'],
])("%o is refused", (given, message) => {
  const call = () => bibtex(given as readonly string[]);
  expect(call).toThrow(InvalidInputError);
  expect(call).toThrow(message);
});
