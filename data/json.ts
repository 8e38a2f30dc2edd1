// Where things stand in a JSON file.
import { type MemberNode, parse, type ValueNode } from "@humanwhocodes/momoa";

/** What is wrong with a text as JSON, each with its line. */
export interface Fault {
  readonly line: number;
  readonly found: string;
}

/** Why a text is no JSON, or JSON that not everyone reads alike. */
export function faultsOf(text: string): readonly Fault[] {
  try {
    return repeatedKeys(parse(text).body);
  } catch (error) {
    return [faultOf(error)];
  }
}

/** The keys that stand twice in one object, however deep. */
function repeatedKeys(value: ValueNode): readonly Fault[] {
  if (value.type === "Array") return value.elements.flatMap((element) => repeatedKeys(element.value));
  if (value.type !== "Object") return [];
  const known = new Set<string>();
  return value.members.flatMap((member) => {
    const key = keyOf(member);
    const repeated = known.has(key)
      ? [{ line: member.loc.start.line, found: `the key ${JSON.stringify(key)} a second time` }]
      : [];
    known.add(key);
    return [...repeated, ...repeatedKeys(member.value)];
  });
}

/** The parser's own words and line. */
function faultOf(error: unknown): Fault {
  const { message } = error as Error;
  const line = Number(/\((\d+):\d+\)$/.exec(message)?.[1] ?? 1);
  return { line, found: message.replace(/\s*\(\d+:\d+\)$/, "") };
}

/** The line of what stands at a path, or of the nearest thing around it. */
export function lineAt(text: string, path: readonly PropertyKey[]): number {
  const { body } = parse(text);
  let node: ValueNode = body;
  let line = body.loc.start.line;
  for (const key of path) {
    const next = within(node, key);
    if (!next) break;
    node = next.value;
    line = next.loc.start.line;
  }
  return line;
}

function within(node: ValueNode, key: PropertyKey) {
  if (node.type === "Array") return node.elements[Number(key)];
  if (node.type === "Object") return node.members.find((member) => keyOf(member) === String(key));
  return undefined;
}

const keyOf = ({ name }: MemberNode): string => (name.type === "String" ? name.value : name.name);
