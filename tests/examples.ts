// Turns each ts fence of the doc comments, README.md, DEVELOPERS.md and the guides into a test in tests/generated.
//   expression; // => value     deeply equal, numbers to within 1e-9 of their size
//   expression; // ≈ number     equal to three significant figures
//   expression; // throws
// A statement without such a comment just runs. A text fence right behind is what the example prints last.
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { glob } from "tinyglobby";
import ts from "typescript";
import { root } from "../data/reading/files";

const header = `import { afterAll, beforeAll, expect, test, vi } from "vitest";

beforeAll(() => void vi.spyOn(console, "log").mockImplementation(() => {}));
afterAll(() => vi.restoreAllMocks());

function near(value: unknown): unknown {
  if (typeof value === "number" && Number.isFinite(value) && value !== 0) {
    return expect.closeTo(value, -Math.log10(2e-9 * Math.abs(value)));
  }
  if (Array.isArray(value)) return value.map(near);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, near(held)]));
}

const rounded = (value: unknown) => Number(Number(value).toPrecision(3));
`;

/** An example, with the place where it begins. */
interface Fence {
  readonly at: string;
  readonly code: string;
  /** What it prints last, where the page says so. */
  readonly printed?: string | undefined;
}

/** The ts fences of a text. */
function fencesOf(path: string, text: string): readonly Fence[] {
  const plain = path.endsWith(".ts") ? text.replace(/^[ \t]*\* ?/gm, "") : text;
  const fences = plain.matchAll(/^```ts\n(.*?)^```(?:\n\n```text\n(.*?)^```)?/gms);
  return [...fences].map(({ 1: code = "", 2: printed, index }) => ({
    at: `${path}:${plain.slice(0, index).split("\n").length}`,
    code,
    printed,
  }));
}

/** The statements of a fence, with imports that can stand in a test and with what their comments claim. */
function testOf({ at, code, printed }: Fence): string {
  const source = ts.createSourceFile("example.ts", code, ts.ScriptTarget.Latest, true);
  const lines = source.statements.map((statement) =>
    ts.isImportDeclaration(statement) ? imported(statement) : checked(statement, claimOf(statement, code)),
  );
  const checks = lines.filter((line) => line.startsWith("expect(")).length;
  const claims = code.match(/\/\/\s*(=>|≈|throws)/g)?.length ?? 0;
  if (checks < claims) throw new Error(`${at}: a claim stands elsewhere than behind a statement`);
  if (checks === 0 && !code.includes("console.log(")) throw new Error(`${at}: the example checks nothing`);
  const last =
    printed &&
    `expect(vi.mocked(console.log).mock.lastCall).toStrictEqual([${JSON.stringify(printed.trimEnd())}]);`;
  return `test("${at}", async () => {\n${[...lines, ...(last ? [last] : [])].join("\n")}\n});\n`;
}

function imported({ importClause, moduleSpecifier }: ts.ImportDeclaration): string {
  const from = `import(${moduleSpecifier.getText()})`;
  const { name, namedBindings } = importClause ?? {};
  if (name) return `const { default: ${name.text} } = await ${from};`;
  if (!namedBindings) return `await ${from};`;
  if (ts.isNamespaceImport(namedBindings)) return `const ${namedBindings.name.text} = await ${from};`;
  const onlyTypes = importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword;
  return namedBindings.elements
    .map(({ isTypeOnly, propertyName, name: { text } }) => {
      const of = propertyName?.text ?? text;
      return isTypeOnly || onlyTypes
        ? `type ${text} = ${from}.${of};`
        : `const { ${of}: ${text} } = await ${from};`;
    })
    .join("\n");
}

/** What the comment behind a statement or under it claims. */
function claimOf(statement: ts.Statement, code: string): RegExpMatchArray | null | undefined {
  const [comment] =
    ts.getTrailingCommentRanges(code, statement.end) ?? ts.getLeadingCommentRanges(code, statement.end) ?? [];
  return comment && code.slice(comment.pos, comment.end).match(/^\/\/ (?:(=>|≈) (.+)|(throws))$/);
}

function checked(statement: ts.Statement, claim: RegExpMatchArray | null | undefined): string {
  const text = statement.getText();
  if (!claim) return text;
  const [, sign, value] = claim;
  if (!sign) return `expect(() => {\n${text}\n}).toThrow();`;
  if (!ts.isExpressionStatement(statement)) throw new Error(`Only an expression has a value: ${text}`);
  const expression = statement.expression.getText();
  return sign === "≈"
    ? `expect(rounded(${expression})).toBe(${value});`
    : `expect(${expression}).toStrictEqual(near(${value}));`;
}

const paths = (
  await glob(["src/**/*.ts", "README.md", "DEVELOPERS.md", "docs/guides/*.md"], { cwd: root })
).sort();
const fences = await Promise.all(
  paths.map(async (path) => fencesOf(path, await readFile(join(root, path), "utf8"))),
);
const tests = fences.flat().map(testOf);
await mkdir(join(root, "tests/generated"), { recursive: true });
await writeFile(join(root, "tests/generated/examples.test.ts"), [header, ...tests].join("\n"));
console.log(`${tests.length} examples.`);
