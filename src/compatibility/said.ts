import { once } from "../later";
import { type Judgement, silent } from "./engine/judgement";
import type { AimedCondition, AnyFinding } from "./engine/rule/finding";
import { gravity } from "./engine/rule/weight";

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
  /** Whatever may be asked for, gathered when somebody asks. */
  readonly asked: () => readonly AimedCondition[];
}

/** Sums up what judgements say. */
export function saidBy(all: readonly Judgement[]): Said {
  const judgements = all.filter((judgement) => judgement !== silent);
  const findings = judgements.flatMap((judgement) => judgement.findings);
  return {
    judgements,
    findings,
    met: judgements.flatMap(({ met }) => met),
    adopted: greatest(findings, ({ weight }) => gravity[weight]),
    least: greatest(judgements, (judgement) => judgement.least),
    greatest: greatest(judgements, (judgement) => judgement.greatest),
    undetermined: judgements.some((judgement) => judgement.undetermined),
    asked: once(() =>
      judgements.flatMap(({ worlds, mayAsk }) => [...worlds.flatMap(({ asks }) => asks), ...mayAsk]),
    ),
  };
}

/** The greatest number of some items; 0 of none. */
export const greatest = <Item>(items: readonly Item[], of: (item: Item) => number): number =>
  items.reduce((most, item) => Math.max(most, of(item)), 0);
