import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { brokenLinks } from "../../site/links";

function folderOf(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), "vivary-site-"));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, file)), { recursive: true });
    writeFileSync(join(folder, file), text);
  }
  return folder;
}

test("links to pages, files and anchors that are there are not told", async () => {
  const folder = folderOf({
    "index.html": '<a href="a/b.html#c">b</a><a href="#here" id="here">here</a><script src="s.js"></script>',
    "a/b.html": '<h2 id="c">c</h2><a href="../index.html">up</a><a href="https://example.org/x">out</a>',
    "s.js": "",
  });
  expect(await brokenLinks(folder)).toStrictEqual([]);
});

test("a link that leads nowhere is told, and one that leads there at one address only", async () => {
  const folder = folderOf({
    "index.html":
      '<a href="a.html">a</a><a href="b.html#d">d</a><a href="#none">none</a><img src="no.png"><a href="/b.html">b</a>',
    "b.html": '<a href="../outside.html">out</a>',
  });
  expect(await brokenLinks(folder)).toStrictEqual([
    "b.html: ../outside.html leads to no file",
    "index.html: a.html leads to no file",
    "index.html: b.html#d leads to no anchor",
    "index.html: #none leads to no anchor",
    "index.html: /b.html holds at one address only",
    "index.html: no.png leads to no file",
  ]);
});

test("the place where the search looks for species is followed too", async () => {
  const folder = folderOf({ "index.html": '<div data-species="species/index.html"></div>' });
  expect(await brokenLinks(folder)).toStrictEqual(["index.html: species/index.html leads to no file"]);
});
