// The texts of the project that have a page, and where each stands in the site.
import { readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { glob } from "tinyglobby";
import { root } from "../../../data/reading/files";
import { evidencePage } from "../../evidence";
import { rulesPage } from "../../rules";
import { sourcesPage } from "../../sources";

/** A text in Markdown, with its place in the repository and its page in the site. */
export interface TextFile {
  readonly file: string;
  readonly path: string;
  readonly markdown: string;
}

/** Files that pages link to as they are, with their place in the site. */
export const plainFiles: Readonly<Record<string, string>> = {
  "CITATION.cff": "citation.cff",
  LICENSE: "license.txt",
};

const fixed: Readonly<Record<string, string>> = {
  "README.md": "readme.html",
  "DEVELOPERS.md": "developers.html",
  "NOTICE.md": "notice.html",
};

const read = (file: string) => readFile(join(root, file), "utf8");

/** The guides, by their file. */
export async function guides(): Promise<readonly TextFile[]> {
  const files = (await glob("docs/guides/*.md", { cwd: root })).sort();
  return Promise.all(
    files.map(async (file) => ({
      file,
      path: `guides/${basename(file, ".md")}.html`,
      markdown: await read(file),
    })),
  );
}

/** The other texts: those of the repository, and those that are written from the library. */
export async function otherTexts(): Promise<readonly TextFile[]> {
  const kept = Object.entries(fixed).map(async ([file, path]) => ({
    file,
    path,
    markdown: await read(file),
  }));
  return [
    ...(await Promise.all(kept)),
    { file: "docs/rules.md", path: "rules.html", markdown: rulesPage() },
    { file: "docs/pages/evidence.md", path: "evidence.html", markdown: evidencePage() },
    { file: "docs/pages/sources.md", path: "sources.html", markdown: await sourcesPage() },
  ];
}
