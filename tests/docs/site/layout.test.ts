import { expect, test } from "vitest";
import { documentOf } from "../../../docs/site/layout";
import { type Page, wayTo } from "../../../docs/site/page";

const page: Page = {
  path: "de/species/danio-rerio.html",
  language: "de",
  title: "A <fish>",
  about: 'Of "it"',
  body: "<h1>A</h1>",
  versions: { en: "species/danio-rerio.html", de: "de/species/danio-rerio.html" },
};
const written = documentOf(page, { example: false });

test("the way from one page to another holds wherever the site stands", () => {
  expect(wayTo("index.html", "species/a.html")).toBe("species/a.html");
  expect(wayTo("de/species/a/b.html", "assets/style.css")).toBe("../../../assets/style.css");
});

test("a page says its language, and where it stands in the other", () => {
  expect(written).toContain('<html lang="de">');
  expect(written).toContain('<link rel="alternate" hreflang="en" href="../../species/danio-rerio.html">');
  expect(written).toContain('<a href="../../species/danio-rerio.html" lang="en" hreflang="en">English</a>');
});

test("names are written as text", () => {
  expect(written).toContain("<title>A &lt;fish&gt; – Vivary</title>");
  expect(written).toContain('content="Of &quot;it&quot;"');
});

test("the example app is in the menu where there is one", () => {
  expect(written).not.toContain("example/index.html");
  expect(documentOf(page, { example: true })).toContain('href="../../example/index.html"');
});
