import { once } from "../../made-once";
import { type Judgement, silent } from "../engine/answers/judgement";
import type { AimedCondition, AnyFinding } from "../engine/rule/finding";
import { gravity } from "../engine/rule/weight";
import { farthest } from "./clashes";

/** What some judgements say, summed up once: those of one rule in a plan, or all of a pair. */
export interface Said {
  /** Those judgements that say anything. */
  readonly judgements: readonly Judgement[];
  readonly findings: readonly AnyFinding[];
  readonly met: readonly AnyFinding[];
  /** How grave the gravest finding is. */
  readonly adopted: number;
  /** How grave it is at least. */
  readonly least: number;
  /** How grave it may be. */
  readonly greatest: number;
  readonly undetermined: boolean;
  /** Of all that may be asked for what goes farthest, gathered when somebody asks: it alone can exclude anything. */
  readonly asked: () => readonly AimedCondition[];
}

/** Sums up what judgements say. */
export function saidBy(all: readonly Judgement[]): Said {
  const judgements = all.filter((judgement) => judgement !== silent);
  const findings: AnyFinding[] = [];
  const met: AnyFinding[] = [];
  for (const judgement of judgements) {
    findings.push(...judgement.findings);
    met.push(...judgement.met);
  }
  return {
    judgements,
    findings,
    met,
    adopted: greatest(findings, ({ weight }) => gravity[weight]),
    least: greatest(judgements, (judgement) => judgement.least),
    greatest: greatest(judgements, (judgement) => judgement.greatest),
    undetermined: judgements.some((judgement) => judgement.undetermined),
    asked: once(() => farthest(allAsked(judgements))),
  };
}

/** Whatever judgements may ask for, in any world. */
function allAsked(judgements: readonly Judgement[]): readonly AimedCondition[] {
  const asked: AimedCondition[] = [];
  for (const { worlds, mayAsk } of judgements) {
    for (const { asks } of worlds) asked.push(...asks);
    asked.push(...mayAsk);
  }
  return asked;
}

/** The greatest number of some items; 0 of none. */
export const greatest = <Item>(items: readonly Item[], of: (item: Item) => number): number =>
  items.reduce((most, item) => Math.max(most, of(item)), 0);
