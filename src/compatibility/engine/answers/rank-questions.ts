import { gathered } from "../../../gathered";
import { gravity } from "../rule/weight";
import type { Judgement } from "./judgement";
import { decides, isEssential, type OpenQuestion } from "./questions";

type Span = Pick<Judgement, "least" | "greatest">;

/** A judgement that something is open in, with what its questions are about. */
interface Undecided extends Span {
  readonly topics: ReadonlySet<string>;
}

/**
 * Every open question once, the most decisive first: by how much the bounds would narrow if it were answered, taken
 * over the most and the least welcome answer; then essential traits before others. Questions about one trait of one
 * party, or about one fact, are one topic.
 */
export function rankQuestions(judgements: readonly Judgement[]): readonly OpenQuestion[] {
  const settled = widest(judgements.filter(({ open }) => open.length === 0));
  const undecided = judgements
    .filter(({ open }) => open.length > 0)
    .map(({ least, greatest, open }) => ({ least, greatest, topics: new Set(open.map(topicOf)) }));
  const asked = gathered(judgements, ({ open }) => open);
  const questions = new Map(asked.map((question) => [keyOf(question), question] as const));
  for (const question of asked) if (decides(question)) questions.set(keyOf(question), question);
  const gains = gainsOf(undecided, settled);
  const ranked = [...questions.values()].map((question) => ({
    question,
    gain: gains.get(topicOf(question)) ?? 0,
  }));
  return ranked
    .sort(
      (a, b) =>
        b.gain - a.gain ||
        gravity[b.question.couldBe] - gravity[a.question.couldBe] ||
        Number(isEssential(b.question)) - Number(isEssential(a.question)),
    )
    .map(({ question }) => question);
}

const keyOf = (question: OpenQuestion) =>
  `${question.rule} ${question.reason} ${question.couldBe} ${topicOf(question)}`;

/** What a question is about, whichever rule asks it. */
function topicOf(question: OpenQuestion): string {
  const { of = "", reason } = question;
  if ("trait" in question) return `${of} ${question.trait}`;
  return `${of} ${"on" in question ? question.on : reason}`;
}

/** For each topic, by how many outcomes the bounds narrow once it is answered. */
function gainsOf(undecided: readonly Undecided[], settled: Span): ReadonlyMap<string, number> {
  const concerned = new Map<string, Undecided[]>();
  for (const judgement of undecided) {
    for (const topic of judgement.topics) {
      const known = concerned.get(topic);
      if (known) known.push(judgement);
      else concerned.set(topic, [judgement]);
    }
  }
  const all = counted(undecided);
  return new Map(
    [...concerned].map(([topic, judgements]) => {
      const own = counted(judgements);
      const others = [...all].filter(([key, { count }]) => count > (own.get(key)?.count ?? 0));
      return [topic, narrowing(judgements, [settled, ...others.map(([, { span }]) => span)])];
    }),
  );
}

/** How many have each span. There are few: three gravities at either end. */
function counted(
  spans: readonly Span[],
): ReadonlyMap<number, { readonly span: Span; readonly count: number }> {
  const counts = new Map<number, { readonly span: Span; count: number }>();
  for (const span of spans) {
    const key = span.least * (gravity.blocking + 1) + span.greatest;
    const known = counts.get(key);
    if (known) known.count += 1;
    else counts.set(key, { span, count: 1 });
  }
  return counts;
}

/** By how many outcomes the bounds narrow, summed over the most and the least welcome answer. */
function narrowing(concerned: readonly Undecided[], beside: readonly Span[]): number {
  const answered = (answer: (judgement: Undecided) => Span) =>
    width(widest([...beside, ...concerned.map(answer)]));
  const welcome = answered(({ least, greatest, topics }) =>
    topics.size === 1 ? { least, greatest: least } : { least, greatest },
  );
  const unwelcome = answered(({ greatest }) => ({ least: greatest, greatest }));
  return 2 * answered((judgement) => judgement) - welcome - unwelcome;
}

const width = ({ least, greatest }: Span) => greatest - least;

const widest = (spans: readonly Span[]): Span =>
  spans.reduce(
    (wide, { least, greatest }) => ({
      least: Math.max(wide.least, least),
      greatest: Math.max(wide.greatest, greatest),
    }),
    { least: 0, greatest: 0 },
  );
