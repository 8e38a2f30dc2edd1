import type { PartialRange, Range } from "../ranges";
import type { TraitPath } from "../species";
import type { LengthName } from "./fishes/lengths";
import type { Force } from "./jurisdiction";
import type { TankMeasureName } from "./tank-measures";

/** The least that is asked: a range where lengths are only known as spans; without `max` where some are unknown. */
export interface Asked extends PartialRange {
  /** The lower end of what is asked. */
  readonly min: number;
  /** `L`, `cm`, `m2` or `dH`; absent for numbers of animals. */
  readonly unit?: string;
  /** Which length of the fish it was computed from. */
  readonly by?: LengthName;
  /** It must be more than that; as much as that is not enough. */
  readonly beyond?: true;
}

/** What the plan has: a range where the text does not say whether glass and water level count. */
export type Has =
  | (Range & {
      readonly of: TankMeasureName;
      readonly unit: string;
      /** Whether the plan gives sizes outside or inside the glass. */
      readonly sizes: "outer" | "inner";
    })
  | (Range & { readonly of: "animals" | "general hardness"; readonly unit?: string })
  | { readonly of: "shape of the base"; readonly value: string };

/** Why no answer can be given. */
export type Untold =
  /** A trait of these species is unknown. */
  | { readonly reason: "missing"; readonly trait: TraitPath; readonly species: readonly string[] }
  /** A plan does not tell. */
  | { readonly reason: "not-given" }
  /** The text states no figure for it. */
  | { readonly reason: "no-figure" }
  /** The figures of the text have not been read. */
  | { readonly reason: "not-read" };

/** What a comparison gives. */
export interface Comparison {
  /** Ids of the species it is about; absent: the tank or all fish. */
  readonly species?: readonly string[];
  readonly asked?: Asked;
  readonly has?: Has;
  /**
   * Whether what the plan has reaches what is asked. `depends`: at one end of the lengths or sizes that may be true it
   * does, at the other it does not. `undetermined`: see `open`.
   */
  readonly answer: "met" | "not-met" | "depends" | "undetermined";
  readonly open?: Untold;
}

/** One requirement of an instrument beside what a plan has. */
export interface OfficialRequirement extends Comparison {
  /** Jurisdiction and requirement, of a table the species too: `austria/least-volume`, `germany/front-edge/danio-rerio`. */
  readonly id: string;
  /** Where it applies, in words. */
  readonly jurisdiction: string;
  /** Title and number of the instrument. */
  readonly instrument: string;
  /** Article or annex. */
  readonly article: string;
  /**
   * Day or year when the act was adopted or the report published, in the version that was read; absent where the copy
   * shows none.
   */
  readonly date?: string;
  readonly force: Force;
  /** Whether the figure was read or recalled. */
  readonly basis: "read" | "memory";
  /** What it asks, in one sentence. */
  readonly asks: string;
  /** What the text excepts, and how it was read. */
  readonly note?: string;
  /** Where the text in force is found, and which authority is competent. */
  readonly caution: string;
}
