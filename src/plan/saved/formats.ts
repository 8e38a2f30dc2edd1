import type { Problem } from "../../errors";
import { isObject } from "../../is-object";

/** The format in which plans are saved today. */
export const format = 1;

/** The formats that can be read. */
interface Formats {
  readonly today: number;
  /** What a plan saved in an older format needs to become one of the next, by the format it was saved in. */
  readonly older: Readonly<Record<number, (saved: object) => object>>;
}

/** There is one format only so far. */
const formats: Formats = { today: format, older: {} };

/** What was saved without its format, brought up to today's step by step. */
export function inTodaysFormat(
  input: unknown,
  { today, older }: Formats = formats,
): { readonly saved: unknown; readonly problems: readonly Problem[] } {
  if (!isObject(input)) return { saved: input, problems: [] };
  const { format: given = today, ...saved } = input;
  const known = typeof given === "number" && (given === today || Object.hasOwn(older, given));
  if (!known) {
    const isLater = Number.isInteger(given) && Number(given) > today;
    const readable = `the number ${[...Object.keys(older), today].join(" or ")}`;
    const expected = isLater ? `${readable}: a later one needs a later version of this library` : readable;
    return { saved, problems: [{ path: ["format"], code: "unknown-format", expected, found: given }] };
  }
  let current: object = saved;
  for (let at = given; at < today; at++) current = older[at]?.(current) ?? current;
  return { saved: current, problems: [] };
}
