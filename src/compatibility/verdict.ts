import type { TraitPath } from "../species";
import type { Finding, Weight } from "./finding";
import type { VerdictParty } from "./party";
import type { FactName } from "./plan-facts";
import type { ThresholdValues } from "./thresholds";

/** The answer, the best first; `undetermined` where an essential trait is missing. */
export type Outcome = "suitable" | "conditional" | "unsuitable" | "undetermined";

/** Something that was not known, and what hangs on it. */
export interface OpenQuestion {
  readonly rule: string;
  /** The party it is about, an index into `parties`; absent: the tank. */
  readonly of?: number;
  /** The trait that is missing or disputed. */
  readonly trait?: TraitPath;
  /** The fact the plan does not state. */
  readonly input?: FactName;
  readonly reason: "missing" | "disputed" | "outside-domain" | "not-given";
  /** The gravest finding that the answer could bring. */
  readonly couldBe: Weight;
}

/** A judgement of a pair or a plan. Plain data: it survives `JSON.parse(JSON.stringify(verdict))` unchanged. */
export interface Verdict {
  /** On the adopted facts. */
  readonly outcome: Outcome;
  /** The outcomes between which the truth lies, over disputed and missing traits. */
  readonly bounds: {
    readonly atBest: Exclude<Outcome, "undetermined">;
    readonly atWorst: Exclude<Outcome, "undetermined">;
  };
  readonly parties: readonly VerdictParty[];
  /** What speaks against and for it. */
  readonly findings: readonly Finding[];
  /** Findings whose condition the plan meets: they do not count. */
  readonly met: readonly Finding[];
  /** What is not known, the most decisive first. */
  readonly open: readonly OpenQuestion[];
  /** What the answer was made with, so that it can be repeated. */
  readonly made: {
    readonly version: string;
    readonly rules: readonly string[];
    readonly thresholds: ThresholdValues;
  };
}
