import { notNegative, objectOf, positive, refuseOthers } from "../../checks";
import type { ThresholdValues } from "../../compatibility";
import { type Swing, thresholdValues } from "../../compatibility/inner";
import { refusal } from "../../errors";
import type { HotTerms } from "./hot-end";
import { unionizedAmmoniaLimit } from "./hot-end";

/** What may be said of the water that is sought. */
export interface SetPointOptions {
  /** How far the water moves either way from what it usually is. Default: not at all. */
  readonly swing?: Swing | undefined;
  /** Total ammonia nitrogen that the water may come to hold, mg/L: then the hot end is held to what animals bear. */
  readonly totalAmmonia?: number | undefined;
  /** Un-ionized ammonia, as NH3, that is borne, mg/L. Default {@link unionizedAmmoniaLimit}. */
  readonly mostUnionized?: number | undefined;
  /** Numbers to decide by, in place of those of `thresholds`. */
  readonly thresholds?: Partial<ThresholdValues> | undefined;
}

/** By what water is sought. */
export interface Terms {
  readonly thresholds: ThresholdValues;
  readonly swing: Swing;
  readonly ammonia?: Pick<HotTerms, "totalAmmonia" | "mostUnionized">;
}

/** The options with their defaults, or an InvalidInputError where they are none. */
export function termsOf(options: SetPointOptions): Terms {
  const {
    swing = {},
    totalAmmonia,
    mostUnionized = unionizedAmmoniaLimit,
    thresholds,
    ...others
  } = objectOf(options, "options");
  refuseOthers(others);
  for (const [axis, moves] of Object.entries(objectOf(swing, "options.swing"))) checkMoves(axis, moves);
  return {
    thresholds: thresholdValues(thresholds),
    swing,
    ...(totalAmmonia !== undefined && {
      ammonia: {
        totalAmmonia: positive(totalAmmonia, "options.totalAmmonia"),
        mostUnionized: positive(mostUnionized, "options.mostUnionized"),
      },
    }),
  };
}

const moving = ["temperature", "pH", "generalHardness"];

function checkMoves(axis: string, moves: number | undefined) {
  const subject = `options.swing.${axis}`;
  if (!moving.includes(axis)) throw refusal(subject, `one of ${moving.join(", ")}`, axis, "unknown-key");
  if (moves !== undefined) notNegative(moves, subject);
}
