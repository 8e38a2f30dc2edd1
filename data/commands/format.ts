// Brings records and schemas into their form, or tells which records are not in it.
import { format, unformatted, unreadable } from "../writing/formatting";
import type { Answer } from "./answer";

/** Formats what can be read, and tells what cannot. */
export async function formatted(root: string): Promise<Answer> {
  const count = (await format(root)).length;
  return answer([`${count} records formatted.`], await unread(root));
}

/** Tells which records differ from their form, and which cannot be read. */
export async function checkFormat(root: string): Promise<Answer> {
  const paths = (await unformatted(root)).map(({ path }) => path);
  const wrong = [
    ...(paths.length > 0 ? [`Not formatted: ${paths.join(", ")}. Run: npm run format`] : []),
    ...(await unread(root)),
  ];
  return answer(wrong.length > 0 ? [] : ["Every record is formatted."], wrong);
}

const answer = (lines: readonly string[], wrong: readonly string[]): Answer => ({
  lines: [...lines, ...wrong],
  failed: wrong.length > 0,
});

const unread = async (root: string): Promise<readonly string[]> =>
  (await unreadable(root)).map(
    (path) => `Not read, and left as it is: ${path}. Run: npm run species check ${path}`,
  );
