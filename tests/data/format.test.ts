import { expect, test } from "vitest";
import { checkFormat, formatted } from "../../data/commands/format";
import { format, unformatted } from "../../data/writing/formatting";
import { project } from "./project";

const file = "data/species/danio-rerio.json";
const pathsOf = (records: readonly { readonly path: string }[]) => records.map(({ path }) => path);

test("a record out of order is named, and put in order", async () => {
  const { root, read, write } = project();
  const text = read(file);
  write(file, JSON.stringify(JSON.parse(text)));
  expect(pathsOf(await unformatted(root))).toStrictEqual([file]);
  expect(pathsOf(await format(root))).toStrictEqual([file]);
  expect(read(file)).toBe(text);
  expect(await unformatted(root)).toStrictEqual([]);
});

test("a schema that is missing or changed is written anew", async () => {
  const { root, read, write, remove } = project();
  const schema = "data/schemas/species.schema.json";
  const current = read(schema);
  remove(schema);
  await format(root);
  expect(read(schema)).toBe(current);
  write(schema, `${current} `);
  await format(root);
  expect(read(schema)).toBe(current);
});

test.each(['{ "id": "danio-rerio", "id": "danio-choprae" }', '{ "id": 1, }'])(
  "%s would lose something and stays as it is",
  async (text) => {
    const { root, read, write } = project();
    write(file, text);
    await format(root);
    expect(read(file)).toBe(text);
  },
);

test.each([
  ["the ends of lines of Windows", (text: string) => text.replaceAll("\n", "\r\n")],
  ["tabs", (text: string) => text.replaceAll(/^( {2})+/gm, "\t")],
  ["an invisible mark at the beginning", (text: string) => `\uFEFF${text}`],
])("%s are mended", async (_, spoil) => {
  const { root, read, write } = project();
  const text = read(file);
  write(file, spoil(text));
  await format(root);
  expect(read(file)).toBe(text);
});

test.each(['{ "id": 4,5 }', ""])("a file that cannot be read is told: %j", async (text) => {
  const { root, write } = project();
  expect(await formatted(root)).toStrictEqual({ lines: ["0 records formatted."], failed: false });
  expect(await checkFormat(root)).toStrictEqual({ lines: ["Every record is formatted."], failed: false });
  write(file, text);
  const told = `Not read, and left as it is: ${file}. Run: npm run species check ${file}`;
  expect(await formatted(root)).toStrictEqual({ lines: ["0 records formatted.", told], failed: true });
  expect(await checkFormat(root)).toStrictEqual({ lines: [told], failed: true });
});
