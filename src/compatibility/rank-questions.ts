import { traitTable } from "../species";
import type { Judgement } from "./engine";
import { gravity } from "./finding";
import type { OpenQuestion } from "./verdict";

type Span = Pick<Judgement, "least" | "greatest">;

/**
 * Every open question once, the most decisive first: by how much the bounds would narrow if it were answered, taken
 * over the most and the least welcome answer; then essential traits before others. Questions about one trait of one
 * party, or about one input, are one topic.
 */
export function rankQuestions(judgements: readonly Judgement[]): readonly OpenQuestion[] {
  const open = judgements.filter(({ open }) => open.length > 0);
  const settled = widest(judgements.filter(({ open }) => open.length === 0));
  const questions = new Map(
    open.flatMap((judgement) => judgement.open.map((question) => [JSON.stringify(question), question])),
  );
  const gains = new Map<string, number>();
  const gainOf = (question: OpenQuestion): number => {
    const topic = topicOf(question);
    const known = gains.get(topic) ?? narrowing(topic, open, settled);
    gains.set(topic, known);
    return known;
  };
  return [...questions.values()].sort(
    (a, b) => gainOf(b) - gainOf(a) || weight(b) - weight(a) || essential(b) - essential(a),
  );
}

/** What a question is about, whichever rule asks it. */
const topicOf = ({ of, trait, input, reason }: OpenQuestion): string =>
  [of, trait ?? input ?? reason].join(" ");

/** By how many outcomes the bounds narrow, summed over the most and the least welcome answer. */
function narrowing(topic: string, open: readonly Judgement[], settled: Span): number {
  const answered = (answer: (judgement: Judgement) => Span) =>
    width(
      widest([settled, ...open.map((judgement) => (asks(judgement, topic) ? answer(judgement) : judgement))]),
    );
  const welcome = answered((judgement) =>
    topics(judgement).length === 1 ? { least: judgement.least, greatest: judgement.least } : judgement,
  );
  const unwelcome = answered(({ greatest }) => ({ least: greatest, greatest }));
  return 2 * width(widest([settled, ...open])) - welcome - unwelcome;
}

const weight = ({ couldBe }: OpenQuestion) => gravity[couldBe];
const essential = ({ trait }: OpenQuestion) => Number((trait && traitTable[trait].essential) ?? false);

const topics = ({ open }: Judgement) => [...new Set(open.map(topicOf))];
const asks = (judgement: Judgement, topic: string) => topics(judgement).includes(topic);
const width = ({ least, greatest }: Span) => greatest - least;

const widest = (spans: readonly Span[]): Span => ({
  least: Math.max(0, ...spans.map(({ least }) => least)),
  greatest: Math.max(0, ...spans.map(({ greatest }) => greatest)),
});
