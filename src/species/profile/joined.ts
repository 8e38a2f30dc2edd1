import type { PartialRange } from "../../ranges";
import type { Basis } from "../record/basis";
import type { SourceVoice, StatementGroup } from "../record/groups";
import type { StatementTopic } from "../record/statement";
import type { Figures } from "./profile";

/** A value that a source supports, and what it rests on. */
export interface Choice extends StatementTopic {
  /** The place of its group among those of the trait. */
  readonly group: number;
  readonly value: unknown;
  readonly root: string;
  readonly bases: readonly Basis[];
  readonly said: readonly string[];
  readonly precision?: Figures<unknown>["precision"];
}

type Span = SourceVoice<PartialRange>;
type End = keyof PartialRange;

/**
 * The spans that sources give one meaning, each with the end that it leaves open as the best of the others states it.
 * Ends of animals used to different temperatures make no span: no animal has both.
 */
export function joined({ standing }: StatementGroup): readonly Omit<Choice, "group">[] {
  const spans = standing as readonly Span[];
  return spans.map((span) => {
    const low = whoStates("min", span, spans);
    const high = whoStates("max", span, spans);
    const ends = { ...end("min", low?.value.min), ...end("max", high?.value.max) };
    const precision = {
      ...(low?.precision && { min: low.precision }),
      ...(high?.precision && { max: high.precision }),
    };
    const voices = [span, ...[low, high].filter((voice) => voice && voice !== span)] as readonly Span[];
    return {
      value: ends,
      root: span.root,
      bases: voices.map(({ basis }) => basis),
      said: voices.map(({ by }) => by),
      ...(Object.keys(precision).length > 0 && { precision }),
    };
  });
}

const end = (name: End, figure: number | undefined) => (figure === undefined ? {} : { [name]: figure });

/** The source of an end: the span itself, else the first that states an end that goes with the other one. */
function whoStates(name: End, span: Span, spans: readonly Span[]): Span | undefined {
  if (span.value[name] !== undefined) return span;
  return spans.find(({ value, acclimatedAt }) => {
    const { min = value.min, max = value.max } = span.value;
    const usedAlike =
      [acclimatedAt, span.acclimatedAt].includes(undefined) || acclimatedAt === span.acclimatedAt;
    return value[name] !== undefined && usedAlike && min !== undefined && max !== undefined && min <= max;
  });
}
