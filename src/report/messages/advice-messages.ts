import type {
  DoubtfulWater,
  EntryReason,
  Look,
  NoEntryOrder,
  SeenSign,
  Suspect,
  WaterAxis,
} from "../../advice";
import type { Outcome, RuleId, Words } from "../../compatibility";
import type { Temper } from "../../plan";
import type { Messages } from "./messages";

/** Some animals in a sentence of advice. */
export interface ToldAnimals {
  /** What they are called. */
  readonly who: string;
  /** The same as the object of a verb. */
  readonly whom: string;
  /** Whether `who` takes the verb of several. */
  readonly many: boolean;
}

/** Food as it is given once a day. */
export interface ToldOffering {
  readonly food: Words["food"];
  readonly place: Words["zone"];
  readonly light: Words["light"];
  /** Whether it is given so that quicker animals do not get at it. */
  readonly apart: boolean;
  /** For whom it is meant. */
  readonly for: ToldAnimals;
  /** Who would take it from them; absent where nobody would. */
  readonly from?: ToldAnimals;
}

/**
 * What is known of a filter against the ammonia nitrogen that comes of food: the plan names none; it takes up none as it
 * stands there; it surely takes up all; it surely does not; it may not; or it takes up all that is known of, which is not all.
 */
export type FilterState = "unnamed" | "unripe" | "enough" | "short" | "doubtful" | "untold";

/** Ammonia nitrogen, mg a day, and what the filter does with it. */
export interface ToldNitrogen {
  /** What comes of the food. */
  readonly given: string;
  /** Whether that is all; else a least, without animals of which nobody knows how much they eat. */
  readonly isWhole: boolean;
  /** What the filter takes up; empty where the plan names none. */
  readonly filter: string;
  readonly state: FilterState;
}

/** Why some animals move in when they do. */
export interface ToldEntry {
  /** Those that move in. */
  readonly animals: ToldAnimals;
  /** Whether they are of more than one species, so that what is told may be true of but some of them. */
  readonly mixed: boolean;
  /** The others that the reason names; empty where it names none. */
  readonly others: ToldAnimals;
  /** The day that the reason names; absent where it names none. */
  readonly day: number | undefined;
  /** The total length that others have to grow to; empty where none has to. */
  readonly length: string;
  /** What is at stake, in a word or two each; empty where the reason names no rules. */
  readonly topics: readonly string[];
}

/** What may be behind what is seen. */
export interface ToldSuspect {
  /** What would be behind it: one or more sentences, the first without a capital. */
  readonly reason: string;
  /** What it explains of several things that are seen; empty where it explains all. */
  readonly signs: readonly string[];
  readonly act: Suspect["act"]["do"];
  /** How to see to it, a clause that commands; empty where the reason says it, or there is nothing to see to. */
  readonly clause: string;
  /** What these animals would have to be like; absent where it is not about individuals. */
  readonly individuals?: {
    readonly animals: ToldAnimals;
    readonly temper: Exclude<Temper, "typical">;
  };
}

/** Where a figure of water should be, and how far it may move. */
export interface ToldAim {
  readonly on: WaterAxis;
  /** The figure to aim at; of salinity empty in fresh water. */
  readonly figure: string;
  /** What it has to stay within, in fresh water the most salt; empty where it may not move at all. */
  readonly within: string;
  /** Who would leave below; absent where nobody does. */
  readonly least?: ToldAnimals;
  /** Who would leave above. */
  readonly most?: ToldAnimals;
}

/** The two that do not share a figure of water, or perhaps not; they may be one. */
export interface ToldBetween {
  /** The one that needs a figure of water higher. */
  readonly higher: ToldAnimals;
  /** The one that bears it less high. */
  readonly lower: ToldAnimals;
  /** Whether one animal alone is both. */
  readonly isOne: boolean;
}

/**
 * What advice says in words: how to feed some animals, who moves in when, what may be behind what is seen, and which water
 * serves all.
 */
export interface AdviceWords {
  /** Symbols of the weights of food and of what comes of it. */
  readonly units: Readonly<Record<"g" | "mg", string>>;
  readonly feeding: {
    /** `amounts` heads what each group gets a day. */
    readonly titles: Readonly<Record<"offerings" | "amounts" | "water", string>>;
    /** How often so many offerings are given, one or several. */
    readonly lead: (offerings: number) => string;
    /** That a day a week is without food, or that none is. */
    readonly rest: Readonly<Record<"day" | "none", string>>;
    /** Which food is given where, when and for whom. */
    readonly offering: (told: ToldOffering) => string;
    /** That no offering is known to reach some animals. */
    readonly unreached: (told: ToldAnimals) => string;
    /** What a group gets, listed with its numbers. */
    readonly amount: (animals: string, amount: string) => string;
    /** That nobody can tell, and of young why. */
    readonly noAmount: (animals: string, young: boolean) => string;
    /** That fish hardly eat in water so cold. */
    readonly cold: string;
    /** That an amount is all that a group gets of several offerings. */
    readonly together: string;
    /** How much more of frozen and live food it is. */
    readonly heavier: string;
    /** What the food brings into the water, and what the filter does with it. */
    readonly nitrogen: (told: ToldNitrogen) => string;
    /** The caution that ends the report. */
    readonly closing: string;
  };
  readonly entry: {
    /** From when days are counted. */
    readonly lead: string;
    /** Heads those that move in on a day; on none those that are there already. */
    readonly title: (day: number | undefined) => string;
    /** Those that move in, listed with their numbers. */
    readonly animals: (listed: string) => string;
    /** Why some move in when they do. */
    readonly because: Readonly<
      Record<Exclude<EntryReason["reason"], "there-already">, (told: ToldEntry) => string>
    >;
    /** What the plan is like with all that are in by then. */
    readonly outcome: (outcome: Outcome) => string;
    /** Of all that are in by then; never known to be all. */
    readonly nitrogen: (told: ToldNitrogen) => string;
    /** That there is no order, and why. */
    readonly none: Readonly<Record<NoEntryOrder["reason"], (told: ToldAnimals) => string>>;
    /** What speaks against it, in a word or two each. */
    readonly against: (topics: readonly string[]) => string;
    /** What each rule is about, in a word or two. */
    readonly topics: Readonly<Record<RuleId, string>>;
  };
  readonly suspects: {
    /** Heads what may be behind these signs, the likeliest first. */
    readonly lead: (signs: readonly string[]) => string;
    /** That nothing explains what is seen. */
    readonly none: string;
    /** What is seen, in a word or two. */
    readonly signs: Readonly<Record<SeenSign, string>>;
    /** What to look at, which heads what that would show. */
    readonly looks: Readonly<Record<Look, string>>;
    /** What may be behind it, and what to do if it is so. */
    readonly suspect: (told: ToldSuspect) => string;
    /** That some suffer from ammonia and nitrite sooner than others: a sentence without a capital. */
    readonly ammonia: (told: ToldAnimals) => string;
    /** That it may be illness, of which no rule knows. */
    readonly illness: string;
  };
  readonly setPoint: {
    /** Heads the figures of water that serve these animals, listed. */
    readonly lead: (animals: string) => string;
    /** What to aim at, what it has to stay within, and who ends that. */
    readonly figure: (told: ToldAim) => string;
    /** That nothing is known of the water of any of them. */
    readonly none: string;
    /** That the water swings as it was said to, from the coolest to the hottest. */
    readonly swing: (span: string) => string;
    /** That nobody says what some are kept in; the others, if any are known, decide alone. */
    readonly open: (on: WaterAxis, told: ToldAnimals, isAlone: boolean) => string;
    /**
     * That a figure, or its swing, goes beyond what some are kept in, and stays within what they can be given; where it does
     * so itself `isItself`, else only some of the span to stay within does.
     */
    readonly beyondKept: (
      on: WaterAxis,
      told: ToldAnimals,
      kept: string,
      isSwing: boolean,
      isItself: boolean,
    ) => string;
    /** That the temperature goes beyond what some are kept in, on the hottest day or in the coolest season. */
    readonly forAWhile: (when: "hottest" | "coolest", told: ToldAnimals) => string;
    /** That two share a figure perhaps, and why nobody knows. */
    readonly doubtful: (on: WaterAxis, told: ToldBetween, reason: DoubtfulWater["reason"]) => string;
    /** What water at its hottest and most alkaline holds, with its figures as text. */
    readonly hotEnd: (told: Readonly<Record<"temperature" | "pH" | "ammonia" | "oxygen", string>>) => string;
    /** That no water serves all, and who proves it; `isCertain` where somebody states what both are kept in. */
    readonly conflict: (on: WaterAxis | "ammonia", told: ToldBetween, isCertain: boolean) => string;
    /** Heads the water of those that can stay together, and who they are not. */
    readonly largest: (stay: ToldAnimals, leave: ToldAnimals) => string;
    /** That each needs water of its own. */
    readonly apart: string;
    /** How to come to such water. */
    readonly closing: string;
  };
}

/** Everything that reports and advice say, in one language. */
export interface AdviceMessages extends Messages {
  readonly advice: AdviceWords;
}
