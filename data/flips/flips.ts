// Which answers a change flips.
import type { Outcome } from "vivary/compatibility";
import { answerOf, type Judgement, type Judgements } from "./judge";

/** A pair that is judged otherwise than before. */
export interface Flip {
  /** The ids of the two. */
  readonly pair: string;
  readonly before: Judgement;
  readonly after: Judgement;
}

/** The pairs judged both times that are judged otherwise, the gravest first. */
export function flipsOf(before: Judgements, after: Judgements): readonly Flip[] {
  const pairs = [...after].flatMap(([pair, now]) => {
    const then = before.get(pair);
    return then && saidOf(then) !== saidOf(now) ? [{ pair, before: then, after: now }] : [];
  });
  return pairs.sort((a, b) => gravity(b) - gravity(a) || (a.after.name < b.after.name ? -1 : 1));
}

/** What is compared: a name may change without a flip. */
const saidOf = ({ name, ...said }: Judgement) => JSON.stringify(said);

const grades: readonly Outcome[] = ["suitable", "conditional", "undetermined", "unsuitable"];

/** By how much the outcome moved, then its bounds; of two alike the one towards "fine" is the graver. */
function gravity({ before, after }: Flip): number {
  const moved = (of: "outcome" | "atBest" | "atWorst") =>
    grades.indexOf(after[of]) - grades.indexOf(before[of]);
  const towardsFine = moved("outcome") < 0 ? 0.5 : 0;
  return (
    (Math.abs(moved("outcome")) + towardsFine) * 10 + Math.abs(moved("atBest")) + Math.abs(moved("atWorst"))
  );
}

/** A flip in one line: old → new, and the rules that came and went. */
export function flipLine({ before, after }: Flip): string {
  const came = after.against.filter((rule) => !before.against.includes(rule));
  const went = before.against.filter((rule) => !after.against.includes(rule));
  const [old, now] = [answerOf(before), answerOf(after)];
  return [
    `${after.name}: ${old === now ? `still ${now}` : `${old} → ${now}`}`,
    ...(came.length > 0 ? [`now ${came.join(", ")}`] : []),
    ...(went.length > 0 ? [`no longer ${went.join(", ")}`] : []),
  ].join("; ");
}

/** How the line of a statement begins. */
export const statement = "    ";

/** How many flips are told with their reasons. */
const explained = 12;

/**
 * All that a change does, as lines.
 *
 * @param why - The reasons of a flip, a line each, which the gravest flips are told with. What is set in twice, the
 * statements behind a reason, is told the first time alone.
 */
export function tellFlips(
  before: Judgements,
  after: Judgements,
  why: (flip: Flip) => readonly string[] = () => [],
): readonly string[] {
  const flips = flipsOf(before, after);
  const isNew = ([pair]: readonly [string, Judgement]) => !before.has(pair);
  const added = [...after].filter(isNew).map(([, judgement]) => judgement);
  const gone = [...before.keys()].filter((pair) => !after.has(pair)).length;
  const reasons = flips.slice(0, explained).map(why);
  const told = reasons.map((lines, index) => {
    const earlier = new Set(reasons.slice(0, index).flat());
    return lines.filter((line) => !(line.startsWith(statement) && earlier.has(line)));
  });
  return [
    ...flips.flatMap((flip, index) => [flipLine(flip), ...(told[index] ?? [])]),
    `${flips.length} of ${after.size} verdicts differ.`,
    ...(added.length > 0 ? [`${added.length} are new: ${countOf(added)}.`] : []),
    ...(gone > 0 ? [`${gone} are gone.`] : []),
  ];
}

const countOf = (judgements: readonly Judgement[]) =>
  grades
    .map((grade) => [judgements.filter(({ outcome }) => outcome === grade).length, grade] as const)
    .filter(([count]) => count > 0)
    .map(([count, grade]) => `${count} ${grade}`)
    .join(", ");
