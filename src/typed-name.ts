import { refusal } from "./errors";

/** A name that somebody typed, or an InvalidInputError where it is no text, or longer than any name. */
export function typedName(typed: unknown, subject: string): string {
  if (typeof typed !== "string") throw refusal(subject, "a text", typed);
  if (typed.length > longest)
    throw refusal(subject, `a text of at most ${longest} characters`, typed, "text");
  return typed;
}

const longest = 200;
