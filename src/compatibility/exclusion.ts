import { clashes, excludeEachOther } from "./clashes";
import type { AskingWorld, Judgement } from "./engine/judgement";
import type { AimedCondition } from "./engine/rule/finding";
import { canBeOne } from "./engine/worlds";

/** Whether conditions that judgements ask for exclude each other: at least, in every world; at most, in some. */
export interface Exclusion {
  readonly always: boolean;
  readonly ever: boolean;
}

/**
 * Compares what is asked by one judgement in a world, and by each two in worlds that can be parts of one. Conditions that
 * exclude each other whatever is true are found where one judgement, or two, ask for them in every world.
 */
export function exclusionOf(judgements: readonly Judgement[]): Exclusion {
  const facts = factsInDispute(judgements);
  if (facts.size === 0) return { always: false, ever: false };
  const asking = judgements.map((judgement) => askingAbout(judgement, facts)).filter(asksAnything);
  const ever = someOrTwo(asking, ({ certain, further }) => [...certain, ...further], some);
  return { ever, always: ever && someOrTwo(asking, ({ certain }) => certain, every) };
}

type Asking = Readonly<Record<"certain" | "further", readonly AskingWorld[]>>;
type Judge = (worlds: readonly AskingWorld[], excluded: (world: AskingWorld) => boolean) => boolean;

const some: Judge = (worlds, excluded) => worlds.some(excluded);
const every: Judge = (worlds, excluded) => worlds.every(excluded);

/** Whether conditions exclude each other in some or in every world of one judgement or of two. */
function someOrTwo(
  asking: readonly Asking[],
  worldsOf: (asking: Asking) => readonly AskingWorld[],
  judge: Judge,
): boolean {
  const all = asking.map(worldsOf);
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

/** The facts about which conditions exclude each other, if all that may be asked were asked at once. */
function factsInDispute(judgements: readonly Judgement[]): ReadonlySet<string> {
  const asked = judgements.flatMap(({ worlds, mayAsk }) => [
    ...worlds.flatMap(({ asks }) => asks),
    ...mayAsk,
  ]);
  return new Set(clashesOf(asked).flatMap((clash) => clash.flat().map(({ condition }) => factOf(condition))));
}

/** What a judgement asks for about some facts, in each world; what else it may ask for is asked in a world of its own. */
function askingAbout({ worlds, mayAsk }: Judgement, facts: ReadonlySet<string>): Asking {
  const about = (asks: readonly AimedCondition[]) => asks.filter((asked) => facts.has(factOf(asked)));
  return {
    certain: worlds.map(({ choices, asks }) => ({ choices, asks: about(asks) })),
    further: about(mayAsk).map((asked) => ({ choices: [], asks: [asked] })),
  };
}

const asksAnything = ({ certain, further }: Asking) =>
  further.length > 0 || certain.some(({ asks }) => asks.length > 0);

const factOf = ({ on, of }: AimedCondition) => `${on} ${of}`;

const clashesOf = (asks: readonly AimedCondition[]) => clashes(asks.map((condition) => ({ condition })));

/** Whether conditions exclude each other. More than two may do so though each two can be met. */
function exclude(asks: readonly AimedCondition[]): boolean {
  const [one, other, ...more] = asks;
  if (!one || !other) return false;
  return more.length > 0 ? clashesOf(asks).length > 0 : excludeEachOther(one, other);
}
