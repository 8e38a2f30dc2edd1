import * as z from "zod";

/** One of the classes of a trait, each with its sentence for editors. */
export const wordOf = <Word extends string>(of: Readonly<Record<Word, string>>) =>
  z.enum(Object.keys(of) as [Word, ...Word[]]).meta({ oneOf: choices(of) });

/** One of several words, each explained. */
export const oneOf = <Word extends string>(of: Readonly<Record<Word, string>>, description: string) =>
  wordOf(of).meta({ description: `${description} ${explained(of)}`, oneOf: choices(of) });

/** Classes, each with its sentence. */
export function explained(of: Readonly<Record<string, string>>): string {
  return Object.entries(of)
    .map(([name, sentence]) => `${name}: ${sentence}`)
    .join(" ");
}

/** Classes as a JSON Schema lists them with a sentence each. */
const choices = (of: Readonly<Record<string, string>>) =>
  Object.entries(of).map(([word, description]) => ({ const: word, description }));
