import * as z from "zod";

/** One of several words, each with its sentence for editors; `description` says what they answer. */
export function oneOf<Word extends string>(of: Readonly<Record<Word, string>>, description?: string) {
  const words = Object.entries<string>(of).map(([word, sentence]) => ({
    const: word,
    description: sentence,
  }));
  return z.enum(Object.keys(of) as [Word, ...Word[]]).meta({
    ...(description && { description: `${description} ${explained(of)}` }),
    oneOf: words,
  });
}

/** Classes, each with its sentence. */
export function explained(of: Readonly<Record<string, string>>): string {
  return Object.entries(of)
    .map(([name, sentence]) => `${name}: ${sentence}`)
    .join(" ");
}
