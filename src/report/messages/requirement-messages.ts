import type { Has, LengthName, OfficialRequirement, TankMeasureName } from "../../standards";
import type { TankBase } from "../../tank";
import type { ToldAnimals } from "./advice-messages";
import type { Messages } from "./messages";

/** A law or guide that requirements are of. */
export interface ToldInstrument {
  /** Where it applies, in English. */
  readonly jurisdiction: string;
  /** Title and number, partly in English. */
  readonly instrument: string;
  /** A day or a year; absent where none is known. */
  readonly date?: string | undefined;
  /** How far what is told of it binds; several where that differs from one requirement to the other, and each says it. */
  readonly forces: readonly OfficialRequirement["force"][];
}

/** How long fish are taken to be: as the plan says, else as grown ones, else young as of any length up to that. */
export type LengthsTaken = "planned" | "grown" | "any";

/** The least that is asked. */
export interface ToldAsked {
  /** A figure with its unit; empty where not even the least is known. */
  readonly figure: string;
  /** Whether it is one figure, a span since lengths are known only as spans, or a least to which more comes. */
  readonly extent: "one" | "span" | "open";
  /** Whether it must be more than that. */
  readonly beyond: boolean;
  /** Whether animals are counted. */
  readonly isCount: boolean;
  /** Which length of the fish it was computed from, and how long they are taken to be; absent where from none. */
  readonly by?: { readonly length: LengthName; readonly taken: LengthsTaken };
}

/** What the plan has. */
export interface ToldHas {
  readonly of: Has["of"];
  /** With its unit; the shape of a base in words; a number of animals. */
  readonly figure: string;
  /** Whether it is a number of one. */
  readonly isOne: boolean;
  /** Of a measure of the tank: whether the plan gives sizes outside or inside the glass. */
  readonly sizes?: "outer" | "inner";
}

/** What an answer depends on: a length of the fish, or what of the tank counts of a measure. */
export type DependsOn =
  | { readonly on: "lengths"; readonly length: LengthName }
  | { readonly on: "sizes"; readonly of: TankMeasureName };

/** Why no answer can be given. */
export type ToldOpen =
  /** The label of a trait, and the animals of which nobody has stated it. */
  | { readonly reason: "missing"; readonly trait: string; readonly of: ToldAnimals }
  /** What the plan would have to give; absent where no plan can tell. */
  | { readonly reason: "not-given"; readonly lacks?: "height" | "hardness" }
  | { readonly reason: "no-figure" }
  | { readonly reason: "not-read" };

/** One requirement beside what the plan has. Texts are those of the records, in English. */
export interface ToldRequirement {
  readonly answer: OfficialRequirement["answer"];
  /** The animals it is about; absent where it is about the tank or all fish. */
  readonly animals?: ToldAnimals;
  readonly asks: string;
  readonly asked?: ToldAsked;
  readonly has?: ToldHas;
  /** Empty unless the answer depends. */
  readonly dependsOn: readonly DependsOn[];
  readonly open?: ToldOpen;
  readonly article: string;
  /** Whether it binds; absent where the title says how far. */
  readonly binds?: boolean;
  /** Whether it was read or recalled; absent where its figures were not read. */
  readonly basis?: OfficialRequirement["basis"];
  /** A note of its own, or the number of a note that it shares. */
  readonly note?: string | number;
}

/** What is said of what laws and official guidance ask, beside what a plan has. */
export interface RequirementWords {
  /** What the report compares, and that it says no more than that. */
  readonly lead: string;
  /** That nothing is known here of what a law asks, which is no leave. */
  readonly none: string;
  /** Heads what an instrument asks. */
  readonly instrument: (told: ToldInstrument) => string;
  /** What is asked, what the plan has, whether it reaches that, and where it stands. */
  readonly requirement: (told: ToldRequirement) => string;
  /** A note that several requirements of an instrument share, with its number. */
  readonly note: (number: number, note: string) => string;
  /** Where the text in force is found, and which authority is competent. */
  readonly caution: (caution: string) => string;
  /** What a plan has where the shape of its base is told. */
  readonly shapes: Readonly<Record<TankBase["shape"], string>>;
  /** How far requirements bind, behind the title of an instrument. */
  readonly forces: Readonly<Record<OfficialRequirement["force"], string>>;
  /** The caution that ends the report. */
  readonly closing: string;
}

/** Everything that reports say, and what is said of official requirements, in one language. */
export interface RequirementMessages extends Messages {
  readonly requirements: RequirementWords;
}
