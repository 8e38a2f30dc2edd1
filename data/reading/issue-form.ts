// Reads what somebody wrote into a form of the issue tracker, which gives a heading for each question.

/** Answers by question, in small letters; a question left open is none. */
export type Answers = ReadonlyMap<string, string>;

export function answersIn(issue: string): Answers {
  const [, ...blocks] = issue.split(/^### /m);
  const answers = blocks.map((block): readonly [string, string] => {
    const [question = "", ...lines] = block.split(/\r?\n/);
    return [question.trim().toLowerCase(), plain(lines.join(" "))];
  });
  return new Map(answers.filter(([, answer]) => answer !== "" && answer !== "_No response_"));
}

/** How much of an answer is taken. */
const longest = 300;

/** Text on one line, without what a record does not take. */
const plain = (text: string) =>
  text
    .replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]|\*\//gu, " ")
    .replaceAll(/\s+/g, " ")
    .trim()
    .slice(0, longest);
