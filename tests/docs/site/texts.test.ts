import { expect, test } from "vitest";
import { textPages } from "../../../docs/site/texts/pages";
import { rendered } from "../../../docs/site/texts/render";

const text = (file: string, path: string, markdown: string) => ({ file, path, markdown });

test("a link from one text to another leads to its page, anchor and all", () => {
  const [page] = textPages([
    text(
      "docs/guides/a.md",
      "guides/a.html",
      "# A\n\nSee [rules](../rules.md#one) and [terms](../../LICENSE).\n",
    ),
    text("docs/rules.md", "rules.html", "# Rules\n\n## One\n"),
  ]);
  expect(page?.body).toContain('<a href="../rules.html#one">rules</a>');
  expect(page?.body).toContain('<a href="../license.txt">terms</a>');
});

test("a link to a file that has no page stops the site from being built", () => {
  const texts = [text("docs/guides/a.md", "guides/a.html", "# A\n\n[b](b.md)\n")];
  expect(() => textPages(texts)).toThrow("docs/guides/a.md links to b.md, which is not in the site.");
});

test("a text is called by its heading, and told of by its first sentence", () => {
  const [page] = textPages([
    text("a.md", "a.html", "# The `a`\n\nWhat [it](#b) is for. And more.\n\n## B\n"),
  ]);
  expect([page?.title, page?.about]).toStrictEqual(["The `a`", "What it is for."]);
});

test("headings have the anchors that links to them name on the forge", () => {
  expect(rendered("## What a verdict says, and what it does not\n")).toContain(
    'id="what-a-verdict-says-and-what-it-does-not"',
  );
});

test("a table scrolls by itself, with the keyboard too", () => {
  expect(rendered("| a |\n| --- |\n| 1 |\n")).toMatch(
    /^<div class="wide" role="group" [^>]+ tabindex="0"><table>/,
  );
});

test("what a text says of HTML is not taken for HTML", () => {
  expect(rendered("Type <b> & go.\n")).toContain("&lt;b&gt; &amp; go.");
});
