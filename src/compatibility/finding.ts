import type { PartialRange } from "../ranges";
import type { Basis, TraitPath } from "../species";
import type { FactName } from "./plan-facts";

/** How much a finding counts, the gravest first; `favourable` stands beside the ladder. */
export type Weight = "blocking" | "restricting" | "advisory" | "favourable";

/** How much a weight counts towards the outcome. */
export const gravity: Readonly<Record<Weight, number>> = {
  favourable: 0,
  advisory: 0,
  restricting: 1,
  blocking: 2,
};

/** A number, a range or a class, with its unit; no unit for counts, pH and classes. */
export type Quantity =
  | { readonly value: number | string; readonly unit?: string }
  | (PartialRange & { readonly unit?: string });

/** What must hold for a restricting finding to fall away: a fact of the plan, checked by a program. */
export type Condition<Of = number> = {
  /** The fact of the plan. */
  readonly on: FactName;
  /** The party it is about, an index into the verdict's `parties`; absent: the tank or its water. */
  readonly of?: Of;
} & (
  | { readonly within: PartialRange }
  /** The value, or the values any of which will do. */
  | { readonly is: boolean | string | readonly string[] }
);

/** A sign by which a keeper notices in time that it does not work. */
export type Sign =
  | "torn fins"
  | "hiding"
  | "missing animals"
  | "thin animals"
  | "chasing"
  | "gasping"
  | "eggs or young";

/** One of the two parties, as a rule names it. */
export type SideName = "from" | "to";

/** What a rule answers; the engine adds whom it concerns and how well it is supported. */
export type Judged<Allowed extends Weight = Weight, Of = SideName> = {
  /** The figures behind it, by name. */
  readonly measures?: Readonly<Record<string, Quantity>>;
  /** What to look for. */
  readonly watchFor?: Sign;
} & {
  blocking: { readonly weight: "blocking" };
  restricting: { readonly weight: "restricting"; readonly condition: Condition<Of> };
  advisory: { readonly weight: "advisory" };
  favourable: { readonly weight: "favourable" };
}[Allowed];

/** One reason of a verdict. Holds no prose: `vivary/report` puts it into words. */
export type Finding = Judged<Weight, number> & {
  /** The id of the rule. */
  readonly rule: string;
  /** The party it starts from, an index into the verdict's `parties`; absent: the tank as a whole. */
  readonly from?: number;
  /** The party it falls on; absent: the tank. */
  readonly to?: number;
  /** The weakest basis of the facts used; `common-practice` where a rule uses none. */
  readonly basis: Basis;
  /** The traits used. */
  readonly traits: readonly TraitPath[];
};
