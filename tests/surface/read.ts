// Reads what the package exports, with the types that TypeScript prints.
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import ts from "typescript";

/** The exports of each subpath as text, by the name of the file that holds it. */
export type Surface = ReadonlyMap<string, string>;

/** Where the source of each subpath stands, by the name of its report. */
export async function entriesOf(root: string): Promise<ReadonlyMap<string, string>> {
  const { exports } = JSON.parse(await readFile(join(root, "package.json"), "utf8"));
  const typed = Object.entries<{ readonly types?: string }>(exports).filter(([, { types }]) => types);
  return new Map(typed.map(([subpath]) => [reportName(subpath), join(root, "src", sourceOf(subpath))]));
}

/** `./catalog/*` as `catalog-each`. */
const reportName = (subpath: string) =>
  subpath === "." ? "root" : subpath.slice(2).replace("/*", "-each").replaceAll("/", "-");

/** The modules of single species have one type each. */
const ofEach: Readonly<Record<string, string>> = {
  "./catalog/*": "catalog/profile.ts",
  "./evidence/*": "evidence/record.ts",
  "./search/*": "search/language.ts",
};

const sourceOf = (subpath: string) => ofEach[subpath] ?? join(subpath, "index.ts");

export function surfaceOf(entries: ReadonlyMap<string, string>): Surface {
  const program = ts.createProgram([...entries.values()], {
    target: ts.ScriptTarget.ES2022,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    lib: ["lib.es2022.d.ts"],
    types: [],
    strict: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: true,
    noEmit: true,
    stableTypeOrdering: true,
  });
  const checker = program.getTypeChecker();
  const known = new Map<ts.Symbol, string>();
  // What the root gives on from another subpath is told there.
  const rootLast = [...entries].sort(([a], [b]) => Number(a === "root") - Number(b === "root"));
  return new Map(
    rootLast.map(([name, file]) => {
      const source = program.getSourceFile(file);
      const module = source && checker.getSymbolAtLocation(source);
      if (!module) throw new Error(`${file} exports nothing.`);
      return [name, `${linesOf(checker, module, name, known).join("\n")}\n`];
    }),
  );
}

const style =
  ts.TypeFormatFlags.NoTruncation |
  ts.TypeFormatFlags.UseAliasDefinedOutsideCurrentScope |
  ts.TypeFormatFlags.UseSingleQuotesForStringLiteralType;

/** The exports of a module, a line each, by name; the members of a type stand under it. */
function linesOf(
  checker: ts.TypeChecker,
  module: ts.Symbol,
  subpath: string,
  known: Map<ts.Symbol, string>,
  within = "",
): readonly string[] {
  const exported = checker
    .getExportsOfModule(module)
    .map((symbol) => ({ symbol: original(checker, symbol), name: within + symbol.name }))
    .sort((a, b) => (a.name < b.name ? -1 : 1));
  return exported.flatMap(({ symbol, name }) => {
    const elsewhere = known.get(symbol);
    if (elsewhere !== undefined) return [`${name}, as in ${elsewhere}`];
    known.set(symbol, subpath);
    if (symbol.flags & ts.SymbolFlags.ValueModule) {
      return linesOf(checker, symbol, subpath, known, `${name}.`);
    }
    const values = symbol.flags & ts.SymbolFlags.Value ? [valueLine(checker, symbol, name)] : [];
    const types = symbol.flags & ts.SymbolFlags.Type ? typeLines(checker, symbol, name) : [];
    return [...values, ...types];
  });
}

const original = (checker: ts.TypeChecker, symbol: ts.Symbol) =>
  symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;

function valueLine(checker: ts.TypeChecker, symbol: ts.Symbol, name: string): string {
  const type = checker.getTypeOfSymbol(symbol);
  const kind = symbol.flags & ts.SymbolFlags.Function ? "function" : "const";
  if (!(symbol.flags & ts.SymbolFlags.Class)) return `${kind} ${name}: ${textOf(checker, type)}`;
  const made = type
    .getConstructSignatures()
    .map((signature) => checker.signatureToString(signature, undefined, style));
  return `class ${name}: new ${made.join("; new ")}`;
}

function typeLines(checker: ts.TypeChecker, symbol: ts.Symbol, name: string): readonly string[] {
  const type = checker.getDeclaredTypeOfSymbol(symbol);
  const head = `${name}${parametersOf(symbol)}`;
  if (symbol.flags & ts.SymbolFlags.TypeAlias && !hasMembers(type)) {
    return [`type ${head} = ${textOf(checker, type, ts.TypeFormatFlags.InTypeAlias)}`];
  }
  const kind = symbol.flags & ts.SymbolFlags.TypeAlias ? "type" : "interface";
  const members = checker.getPropertiesOfType(type).map((member) => memberLine(checker, member));
  const indices = checker
    .getIndexInfosOfType(type)
    .map(({ keyType, type: held }) => `[${textOf(checker, keyType)}]: ${textOf(checker, held)}`);
  const calls = type
    .getCallSignatures()
    .map((signature) => checker.signatureToString(signature, undefined, style));
  return [`${kind} ${head}`, ...[...members, ...indices, ...calls].sort().map((line) => `  ${line}`)];
}

/** Whether a type is told by its members, as an interface is. */
const hasMembers = (type: ts.Type) =>
  type.getProperties().length > 0 && (type.flags & (ts.TypeFlags.Object | ts.TypeFlags.Intersection)) !== 0;

/** The type parameters of a declaration, as they are written. */
function parametersOf({ declarations = [] }: ts.Symbol): string {
  const written = declarations.flatMap((declaration) =>
    ts.isTypeAliasDeclaration(declaration) ||
    ts.isInterfaceDeclaration(declaration) ||
    ts.isClassDeclaration(declaration)
      ? (declaration.typeParameters ?? []).map((parameter) => parameter.getText())
      : [],
  );
  return written.length > 0 ? `<${[...new Set(written)].join(", ").replaceAll(/\s+/g, " ")}>` : "";
}

function memberLine(checker: ts.TypeChecker, member: ts.Symbol): string {
  const optional = member.flags & ts.SymbolFlags.Optional ? "?" : "";
  const isReadonly = (member.declarations ?? []).some(
    (declaration) => ts.getCombinedModifierFlags(declaration) & ts.ModifierFlags.Readonly,
  );
  return `${isReadonly ? "readonly " : ""}${member.name}${optional}: ${textOf(checker, checker.getTypeOfSymbol(member))}`;
}

const textOf = (checker: ts.TypeChecker, type: ts.Type, more: ts.TypeFormatFlags = 0) =>
  checker.typeToString(type, undefined, style | more);
