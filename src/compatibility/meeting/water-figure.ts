import type { Plan } from "../../plan";
import { checkedPlan } from "../../plan/inner";
import { contains, overlap, type PartialRange } from "../../ranges";
import { statedOf } from "../../ranges/inner";
import { axes, type WaterAxis } from "../shared-water/axes";
import { endsOf } from "../shared-water/ends";
import { figureIn } from "../shared-water/figure";
import { keptWater } from "../shared-water/kept-water";
import { roomOf, type Spans } from "../shared-water/room";
import { type ThresholdValues, thresholdValues } from "../threshold-values";

/** What is asked of a figure of water. */
interface Asked {
  readonly wanted: PartialRange;
  readonly aim?: PartialRange;
}

/**
 * The figure of water that is best for the animals of a plan, as `setPoint` reckons it, within what is wanted and at what
 * to aim at; where the animals share nothing of what is wanted, by what is asked alone.
 */
export function waterFigure(
  axis: WaterAxis,
  plan: Plan,
  asked: Asked,
  changed?: Partial<ThresholdValues>,
): number {
  const terms = { thresholds: thresholdValues(changed), swing: {} };
  const { giving, floor } = axes[axis];
  const wanted = statedOf(asked.wanted);
  const aim = endsOf((asked.aim && overlap(wanted, asked.aim)) ?? wanted, floor);
  const alone = { given: endsOf(wanted, floor), kept: aim, best: aim };
  const waters = checkedPlan(plan).parties.map(({ species }) => keptWater(species, axis, terms));
  const figureOf = (those: readonly (Spans | undefined)[]) => {
    const room = roomOf(those, giving(terms.thresholds));
    return room && figureIn(axis, room).at;
  };
  const shared = figureOf([...waters, alone]);
  return shared !== undefined && contains(wanted, shared) ? shared : (figureOf([alone]) ?? 0);
}
