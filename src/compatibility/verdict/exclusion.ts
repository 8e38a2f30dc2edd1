import { gathered } from "../../gathered";
import type { AskingWorld, Judgement } from "../engine/answers/judgement";
import type { AimedCondition } from "../engine/rule/finding";
import { canBeOne } from "../engine/worlds";
import { clashes, excludeEachOther } from "./clashes";
import type { Said } from "./said";

/** What a judgement asks for about facts in dispute: in its worlds, and what else it may. */
type Disputed = Readonly<Record<"certain" | "further", readonly AskingWorld[]>>;

/**
 * Whether conditions that judgements ask for exclude each other in some world: of one judgement, or of two in worlds that
 * can be parts of one.
 */
export function mayExclude(dispute: readonly Disputed[]): boolean {
  return someOrTwo(dispute, ({ certain, further }) => [...certain, ...further], some);
}

/** Whether conditions exclude each other whatever is true: where one judgement, or two, ask for them in every world. */
export function mustExclude(dispute: readonly Disputed[]): boolean {
  return someOrTwo(dispute, ({ certain }) => certain, every);
}

/**
 * What is asked about the facts in dispute; what is asked whatever is true stands together. Nothing where all that may be
 * asked can be met at once.
 */
export function inDispute(said: readonly Said[]): readonly Disputed[] {
  const facts = factsInDispute(said);
  if (facts.size === 0) return [];
  const judgements = gathered(said, (each) => each.judgements);
  const settled = gathered(judgements.filter(isSettled), ({ worlds }) => askingAbout(worlds, facts));
  const together = { choices: [], asks: distinct(gathered(settled, ({ asks }) => asks)) };
  const others = judgements.filter((judgement) => !isSettled(judgement));
  return [
    { certain: [together], further: [] },
    ...others.map(({ worlds, mayAsk }) => ({
      certain: askingAbout(worlds, facts),
      further: mayAsk.filter(isAbout(facts)).map((asked) => ({ choices: [], asks: [asked] })),
    })),
  ].filter(asksAnything);
}

/** Whether a judgement asks for the same whatever is true. */
const isSettled = ({ worlds, mayAsk }: Judgement) => worlds.length === 1 && mayAsk.length === 0;

type Judge = (worlds: readonly AskingWorld[], excluded: (world: AskingWorld) => boolean) => boolean;

const some: Judge = (worlds, excluded) => worlds.some(excluded);
const every: Judge = (worlds, excluded) => worlds.length > 0 && worlds.every(excluded);

/** Whether conditions exclude each other in some or in every world of one judgement or of two. */
function someOrTwo(
  dispute: readonly Disputed[],
  worldsOf: (disputed: Disputed) => readonly AskingWorld[],
  judge: Judge,
): boolean {
  const all = dispute.map(worldsOf);
  return all.some(
    (worlds, index) =>
      judge(worlds, ({ asks }) => exclude(asks)) ||
      all.slice(index + 1).some((others) =>
        judge(worlds, (world) =>
          judge(
            others.filter((other) => canBeOne(world.choices, other.choices)),
            (other) => exclude([...world.asks, ...other.asks]),
          ),
        ),
      ),
  );
}

/** The facts on which conditions exclude each other, if all that may be asked were asked at once. */
const factsInDispute = (said: readonly Said[]): ReadonlySet<string> =>
  new Set(
    gathered(clashesOf(gathered(said, ({ asked }) => asked())), (clash) =>
      clash.flat().map(({ condition }) => factOf(condition)),
    ),
  );

/** What is asked for about some facts, in each world. */
const askingAbout = (worlds: readonly AskingWorld[], facts: ReadonlySet<string>): readonly AskingWorld[] =>
  worlds.map(({ choices, asks }) => ({ choices, asks: asks.filter(isAbout(facts)) }));

const isAbout = (facts: ReadonlySet<string>) => (asked: AimedCondition) => facts.has(factOf(asked));

/** Conditions, each once. */
const distinct = (asks: readonly AimedCondition[]): readonly AimedCondition[] => [
  ...new Map(asks.map((asked) => [JSON.stringify([asked.on, asked.of, asked.wanted]), asked])).values(),
];

const asksAnything = ({ certain, further }: Disputed) =>
  further.length > 0 || certain.some(({ asks }) => asks.length > 0);

const factOf = ({ on, of }: AimedCondition) => `${on} ${of}`;

const clashesOf = (asks: readonly AimedCondition[]) => clashes(asks.map((condition) => ({ condition })));

/** Whether conditions exclude each other. More than two may do so though each two can be met. */
function exclude(asks: readonly AimedCondition[]): boolean {
  const [one, other, ...more] = asks;
  if (!one || !other) return false;
  return more.length > 0 ? clashesOf(asks).length > 0 : excludeEachOther(one, other);
}
