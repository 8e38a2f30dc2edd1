import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { check } from "../../data/commands/check";
import { startFrom } from "../../data/commands/new";
import { startFile } from "../../data/commands/new-file";
import { root as here } from "../../data/reading/files";
import { answersIn } from "../../data/reading/issue-form";
import { format } from "../../data/writing/formatting";
import { traitPaths } from "../../src/species";
import { answered } from "../data/answered";
import { project, textOf } from "../data/project";

/** A question of a form, or a word to whoever fills it in. */
interface Item {
  readonly type: string;
  readonly id?: string;
  readonly attributes: { readonly label?: string; readonly value?: string };
  readonly validations?: { readonly required?: boolean };
}

interface Form {
  readonly name: string;
  readonly description: string;
  readonly title: string;
  readonly body: readonly Item[];
}

const folder = join(here, ".github/ISSUE_TEMPLATE");
const read = (file: string) => parse(readFileSync(join(folder, file), "utf8"));
const files = readdirSync(folder).filter((file) => file !== "config.yml");
const forms: readonly { readonly file: string; readonly form: Form }[] = files.map((file) => ({
  file,
  form: read(file),
}));

const questionsOf = ({ body }: Form) => body.filter(({ type }) => type !== "markdown");

describe.each(forms)("$file", ({ form }) => {
  test("has what the forge shows of it, and nothing that it does not know", () => {
    expect(Object.keys(form)).toStrictEqual(["name", "description", "title", "body"]);
    for (const word of [form.name, form.description, form.title]) expect(word).toMatch(/\S/);
    expect(questionsOf(form).length).toBeGreaterThan(0);
  });

  test("asks each question once, and labels it", () => {
    for (const { type, attributes } of form.body) {
      expect(["markdown", "input", "textarea"]).toContain(type);
      expect(type === "markdown" ? attributes.value : attributes.label).toMatch(/^\S.*\S$/s);
    }
    const asked = questionsOf(form);
    expect(new Set(asked.map(({ id }) => id)).size).toBe(asked.length);
    for (const { id } of asked) expect(id).toMatch(/^[a-z-]+$/);
    const labels = asked.map(({ attributes }) => attributes.label?.toLowerCase());
    expect(new Set(labels).size).toBe(labels.length);
  });
});

test("whoever comes to contribute is told of every form", () => {
  const told = readFileSync(join(here, ".github/CONTRIBUTING.md"), "utf8");
  for (const { form } of forms) expect(told).toContain(`"${form.name}"`);
});

test("a report without a form is possible", () => {
  expect(read("config.yml")).toStrictEqual({ blank_issues_enabled: true });
});

const missing: Form = read("a-species-is-missing.yml");

/** The text that the forge makes of a form that was filled in. */
const issueOf = (answers: (label: string, item: Item) => string | undefined, form = missing) =>
  questionsOf(form)
    .map((item) => {
      const { label = "" } = item.attributes;
      return `### ${label}\n\n${answers(label, item) ?? "_No response_"}\n`;
    })
    .join("\n");

const file = "data/species/danio-kyathit.json";

test("what an issue says of a missing species stands in the record that it starts, answer by answer", async () => {
  const { root, read: readFile, write } = project();
  const issue = issueOf((label) => (label === "Scientific name" ? "Danio kyathit" : `all of ${label}`));
  expect(await startFrom(root, issue)).toMatchObject({ failed: false });
  const record = JSON.parse(readFile(file));
  expect(record.names).toStrictEqual({ en: ["all of English name"] });
  expect(record.sources.source.at).toBe("all of Source");

  const asked = questionsOf(missing).flatMap(({ attributes: { label = "" } }) =>
    ["Scientific name", "English name", "Source"].includes(label) ? [] : [label.toLowerCase()],
  );
  const noted = traitPaths.flatMap((path) => {
    const [section = "", key = ""] = path.split(".");
    const note: string = record[section]?.[key]?.[0]?.note ?? "";
    return /The issue says: all of (.*)$/.exec(note)?.[1]?.toLowerCase() ?? [];
  });
  expect(noted.sort()).toStrictEqual(asked.sort());

  record.taxonomy.authority = "Fang, 1998";
  record.sources.source.cite = "fishbase";
  const relative = JSON.parse(readFile("data/species/danio-choprae.json"));
  write(file, JSON.stringify(answered(record, relative)));
  await format(root);
  expect(textOf(await check(root, "danio-kyathit"))).toBe(`${file}: 0 problems.`);
});

test("what must be answered is enough to start a record, and the checks ask for the rest", async () => {
  const { root, read: readFile } = project();
  const issue = issueOf((label, { validations }) =>
    label === "Scientific name" ? "Danio kyathit" : validations?.required ? "a fish" : undefined,
  );
  expect(await startFrom(root, issue)).toMatchObject({ failed: false });
  expect(readFile(file)).not.toContain("The issue says");
  expect(textOf(await check(root, "danio-kyathit"))).toContain("a question of the new file");
});

const fought: Form = read("two-of-mine-fought.yml");
const sighting = "data/sources/smith-2026.json";

/** The source that an issue of two that fought starts, with some answers. */
async function sourceOf(given: Readonly<Record<string, string>>) {
  const labels = questionsOf(fought).map(({ attributes: { label } }) => label);
  expect(labels).toStrictEqual(expect.arrayContaining(Object.keys(given)));
  const { root, read: readFile, write } = project();
  const answers = answersIn(issueOf((label) => given[label], fought));
  const answer = await startFile(root, "observation", "smith-2026", { now: new Date("2026-03-01"), answers });
  expect(answer).toMatchObject({ failed: false });
  return { root, write, source: JSON.parse(readFile(sighting)) };
}

test("what was seen starts a source: who, when, how many animals and days", async () => {
  const seen = "The male chased the other one into a corner.";
  const { root, write, source } = await sourceOf({
    "What was seen": seen,
    Animals: "6 and 1",
    Days: "400",
    "Your name": "Jane Smith",
    When: "2026-02",
  });
  expect(source).toMatchObject({
    title: expect.stringContaining(`The issue says: ${seen}`),
    author: [{ literal: "Jane Smith" }],
    issued: { "date-parts": [[2026, 2]] },
    custom: { observation: { animals: 7, days: 400 } },
  });
  expect(textOf(await check(root, sighting))).toContain("a question of the new file");
  write(sighting, JSON.stringify({ ...source, title: "A male that chased another one" }));
  await format(root);
  expect(textOf(await check(root, sighting))).toMatch(/is cited by no record.*\n.*: 1 problem/s);
});

test("what is no number or no day is asked for, not guessed", async () => {
  const { root, source } = await sourceOf({ Animals: "some", Days: "about 14 months", When: "last spring" });
  expect(source.custom.observation).toStrictEqual({ animals: 0, days: 0 });
  expect(source.issued).toStrictEqual({ "date-parts": [[2026, 3, 1]] });
  expect(textOf(await check(root, sighting))).toContain("days is 0; expected");
});
