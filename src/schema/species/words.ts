import * as z from "zod";

/** One of several words, each explained. */
export const oneOf = <Word extends string>(of: Readonly<Record<Word, string>>, description: string) =>
  z.enum(Object.keys(of) as [Word, ...Word[]]).describe(`${description} ${explained(of)}`);

/** Classes, each with its sentence. */
export function explained(of: Readonly<Record<string, string>>): string {
  return Object.entries(of)
    .map(([name, sentence]) => `${name}: ${sentence}`)
    .join(" ");
}
