import type {
  FindingMeasure,
  Measures,
  OpenQuestion,
  Outcome,
  RuleId,
  Sign,
  Weight,
  WordKind,
  Words,
} from "../../compatibility";
import type { FactName, Numbers, Planting, Temper } from "../../plan";
import type { PartialRange } from "../../ranges";
import type { Basis, Section, TraitPath, TraitValue } from "../../species";
import type { WriteQuantity } from "../figure";
import type { ShownUnit } from "../shown-unit";

/** What a name is in its sentence: some languages decline it. */
export type Place = "subject" | "object";

/** What a sentence about a finding of a rule may use. Names are ready to be printed. */
export interface Told<MeasuresOfRule> {
  readonly weight: Weight;
  /** The party or parties it starts from; empty for the tank. */
  readonly from: string;
  /** The same as the object of a verb. */
  readonly fromObject: string;
  /** Whether `from` takes the verb of several. */
  readonly fromMany: boolean;
  /** The party or parties it falls on; empty for the tank. */
  readonly to: string;
  /** The same as the object of a verb. */
  readonly toObject: string;
  /** Whether `to` takes the verb of several. */
  readonly toMany: boolean;
  /** Whether both are one species. */
  readonly oneKind: boolean;
  /** Whether the sentence before, which it is joined to, is about the same. */
  readonly again: boolean;
  /** Whether it falls on their own kind besides `to`. */
  readonly ownToo: boolean;
  /** Whether nobody can tell how it ends. */
  readonly inDoubt: boolean;
  /** How long those it starts from are now, if they have still to grow; empty where nobody says. */
  readonly fromNow: string;
  /** The figures and words that the rule declares; each may be absent. */
  readonly measures: MeasuresOfRule;
  /**
   * A figure in the reader's units and language, such as `24 °C` or `at least 8`; empty where there is none. Told more
   * closely where it would else read like another one beside which it stands.
   */
  readonly figure: WriteQuantity;
}

/** What a sentence about a condition may use. */
export interface ToldCondition {
  /** The party it is about; empty for the tank. */
  readonly of: string;
  /** The same as the object of a verb. */
  readonly ofObject: string;
  /** Whether `of` takes the verb of several. */
  readonly many: boolean;
  /** What one of the party is called, without an article. */
  readonly one: string;
  /** What several of the party are called, without an article. */
  readonly several: string;
  /** What to aim at, else the range that must hold, in the reader's units and language; empty for words. */
  readonly wanted: string;
  /** The words any of which will do, in their order. */
  readonly words: readonly (string | boolean)[];
  /** The ends of the range, in the fact's own unit. */
  readonly min: number | undefined;
  readonly max: number | undefined;
  /** A figure in the reader's units and language, without the unit where it has none. */
  readonly figure: WriteQuantity;
}

/** A party as a report lists it. */
export interface ToldParty extends Numbers {
  /** What one of it is called. */
  readonly name: string;
  /** What several of it are called. */
  readonly several: string;
  /** The accepted scientific name. */
  readonly scientific: string;
  readonly sex?: "male" | "female";
  readonly stage?: Words["stage"];
  readonly temper?: Exclude<Temper, "typical">;
  /** How long the animals are now; empty where nobody says. */
  readonly length: string;
}

/** How large a tank is needed, and how large it is; each figure is empty where it is not known. */
export interface ToldRoom {
  readonly weight: Weight;
  /** Who needs the room. */
  readonly who: string;
  /** The same as the object of a verb. */
  readonly whom: string;
  readonly many: boolean;
  /** Whether some of them have still to grow. */
  readonly growing: boolean;
  /** How long one grows, where the tank is narrower; empty where it is not, or several species ask. */
  readonly grownTo: string;
  /** The floor that is needed, as length and width; empty where the length is not known or the floor does. */
  readonly neededSides: string;
  /** The sides of a common aquarium with such a floor; empty where the floor does. */
  readonly exampleSides: string;
  /** The length that is needed; empty where it does. */
  readonly neededLength: string;
  /** The area of the floor that is needed; empty where it does. */
  readonly neededFloor: string;
  readonly ownSides: string;
  readonly ownLength: string;
  readonly ownFloor: string;
}

/** Why nobody knows for certain: individuals differ, sources do, something is not known, or what they weigh is an estimate. */
export type DoubtReason =
  | Extract<OpenQuestion["reason"], "individual" | "disputed" | "missing">
  | "estimated";

/** What the first line of a report may use. */
export interface ToldHeadline {
  readonly outcome: Outcome;
  /** Whether all the animals are of one species. */
  readonly oneSpecies: boolean;
  /** Whether there is but one group, or a bully: it cannot be said that all go well together. */
  readonly oneGroup: boolean;
  /** Whether something of them is worth knowing, so that they do not go well together without a word. */
  readonly warned: boolean;
  /** All of them, with their numbers. */
  readonly animals: string;
  /** Whether nothing but the size of the tank rules it out. */
  readonly tooSmall: boolean;
  /** What says in which water they could live, one clause or several, where the planned one is wrong; else empty. */
  readonly otherWater: string;
  /** Two of several that cannot live together, as objects of a verb, if their clash is all that speaks against it. */
  readonly clash: readonly [string, string] | undefined;
  /** Those of one species, as an object of a verb, if only what is amiss with them speaks against it; else empty. */
  readonly amiss: string;
  /** Those whose individual nature decides. */
  readonly individuals: string;
}

/** Water that suits all, each figure empty where it is not known to. */
export interface ToldWater {
  /** How many species it suits. */
  readonly kinds: number;
  readonly temperature: string;
  readonly pH: string;
  readonly hardness: string;
  /** Empty for fresh water. */
  readonly salinity: string;
  readonly current: boolean;
}

/** One value of a trait, or one of a list. */
export type TraitItem<Path extends TraitPath> =
  TraitValue<Path> extends readonly (infer One)[] ? One : TraitValue<Path>;

/** A sentence for a finding of each rule. */
export type RuleSentences = { readonly [Id in RuleId]: (told: Told<Measures[Id]>) => string };

/** What each word is called, by kind. */
export type SpelledWords = { readonly [Kind in WordKind]: Readonly<Record<Words[Kind], string>> };

/** The words that a plan is answered with and no trait is. */
export interface PlanWords {
  readonly temper: Readonly<Record<Temper, string>>;
  readonly planting: Readonly<Record<Planting, string>>;
}

/** A value of each trait that has parts, in words; `size` writes its figures and spans. */
export type ValueSentences = {
  readonly [Path in TraitPath]?: (
    value: TraitItem<Path>,
    size: (figure: number | PartialRange) => string,
  ) => string;
};

/**
 * The marks of pictures. Of ranges: the span to keep it in, an optimum that stands in for it, the best, limits, open ends,
 * what all share, what one source says. Of sizes: an outline, a bar where the depth is not known, the greatest length, of
 * that sex or of either, a length of which only the greatest is known, and a total that was reckoned.
 */
export type PictureMark =
  | "kept"
  | "standIn"
  | "optimum"
  | "limit"
  | "open"
  | "shared"
  | "source"
  | "outline"
  | "bar"
  | "greatest"
  | "greatestOfEither"
  | "onlyGreatest"
  | "reckoned";

/** Everything a report says, in one language. */
export interface Messages {
  /** The language as a BCP 47 tag: names of species are taken in it, numbers and lists are written as it has them. */
  readonly language: string;
  /** What several of a name are called. */
  readonly several: (name: string) => string;
  /** Whoever else is in the tank, of three groups or more. */
  readonly theOthers: string;
  /** One that was named before. */
  readonly this: (name: string, as: Place) => string;
  /** The answer. */
  readonly headline: (told: ToldHeadline) => string;
  /** What open questions could still make of the outcome, the best and the worst, and why it could be worse. */
  readonly bounds: (
    atBest: Outcome,
    atWorst: Outcome,
    outcome: Outcome,
    why: readonly DoubtReason[],
  ) => string;
  /** That the law where the tank stands names some species, as a sentence. */
  readonly lawFirst: (whom: string) => string;
  /** What the plan does not say and decides most, as a sentence. */
  readonly measureFirst: (facts: readonly FactName[]) => string;
  /**
   * `meanwhile` heads the signs where it should not be kept so; `deciding` heads what nobody can tell in advance and would
   * rule it out; `besides` heads the conditions that would still stand if what blocks were solved, `unsaid` those on what
   * the plan does not say; `remedy` what would help, `remedies` where any one of several would.
   */
  readonly titles: Readonly<
    Record<
      | "parties"
      | "blocking"
      | "restricting"
      | "besides"
      | "unsaid"
      | "deciding"
      | "advisory"
      | "favourable"
      | "watchFor"
      | "meanwhile"
      | "everyTank"
      | "remedy"
      | "remedies"
      | "ifItStarts"
      | "cautions",
      string
    >
  >;
  /** A party of the verdict, with its numbers. */
  readonly party: (party: ToldParty) => string;
  /** A sentence for each rule; a rule of an app's own falls back on `otherRule`. */
  readonly rules: RuleSentences;
  /** The rules whose sentence says by itself what must hold: where it restricts, or `"always"`, also where it is worth knowing. */
  readonly sayWhatToDo: Readonly<Partial<Record<RuleId, true | "always">>>;
  /** A tank that is too small, and how large it would have to be; without who needs it, a clause that commands. */
  readonly room: (told: ToldRoom) => string;
  /** The water that all have in common, as a sentence. */
  readonly sharedWater: (told: ToldWater) => string;
  /** The water to have, where the plan does not say, as a sentence. */
  readonly waterToHave: (told: Omit<ToldWater, "kinds" | "current">) => string;
  /** Those of a hazard, each with its family. */
  readonly hazards: (
    hazard: Words["hazard"],
    of: readonly { readonly who: string; readonly many: boolean; readonly family: string }[],
  ) => string;
  /** How many entries in the law name some species, where the plan does not say where it stands. */
  readonly lawsSomewhere: (whom: string, entries: number) => string;
  /** What would help a plan, as clauses that command, and sentences of these. */
  readonly remedy: {
    /** Some animals, or all that the plan has of them, move to another tank. */
    readonly rehome: (told: {
      readonly one: string;
      readonly several: string;
      readonly moved: number;
      readonly all: boolean;
      /** Whether they would kill or wound each other there too, so that each needs a tank of its own. */
      readonly apart: boolean;
      /** Whether a law of the place names them, which may forbid to move them or pass them on. */
      readonly lawful: boolean;
      /** Which of them go, where others of them stay and the plan tells them apart. */
      readonly who?: "males" | "females" | "juveniles";
      /** How many of which stay, where some of several sorts go. */
      readonly stay?: readonly {
        readonly who: "males" | "females" | "juveniles";
        readonly count: number;
      }[];
    }) => string;
    /** Animals of another form are taken, by its name. */
    readonly form: (told: { readonly several: string; readonly form: string }) => string;
    /** A calm species comes in as company. */
    readonly add: (told: {
      readonly name: string;
      readonly several: string;
      readonly count: number;
    }) => string;
    /** Other water. */
    readonly water: (told: Omit<ToldWater, "kinds" | "current">) => string;
    /** A larger tank, by length and width, and how high it has to be where it is to be higher. */
    readonly tank: (sides: string, height?: string) => string;
    /** All clauses of one remedy, as a sentence; what comes of it is told where that is not suitable. */
    readonly all: (clauses: readonly string[], outcome: Outcome) => string;
    /** No remedy was found, and this stands in the way. */
    readonly none: (obstacle: string) => string;
  };
  /** What to do when chasing or biting begins. */
  readonly ifItStarts: string;
  /** The sentence for a rule of an app's own. */
  readonly otherRule: (id: string, told: Told<Readonly<Record<string, FindingMeasure>>>) => string;
  /** Signs to look for. */
  readonly signs: Readonly<Record<Sign, string>>;
  /** In whom to look for some signs; empty for whoever is there. */
  readonly lookFor: (signs: readonly string[], whom: string) => string;
  /** What to do about each fact of a plan, as a clause that commands. */
  readonly conditions: Readonly<Record<FactName, (told: ToldCondition) => string>>;
  /** Makes a sentence or two of such clauses and the reasons for them, which are sentences without a capital. */
  readonly demand: (clauses: readonly string[], reasons: readonly string[]) => string;
  /** Makes one of sentences without a capital. */
  readonly gathered: (sentences: readonly string[]) => string;
  readonly basis: Readonly<Record<Basis, string>>;
  /** A reason with what it rests on. */
  readonly supported: (reason: string, basis: Basis) => string;
  /** What every reason rests on that is not marked; and what a mark means that does not say so itself. */
  readonly unlessMarked: (basis: Basis, marks: ReadonlySet<Basis>) => string;
  readonly traits: Readonly<Record<TraitPath, string>>;
  /** Questions that are open, as parts of a sentence. */
  readonly open: {
    /** Nobody knows the traits. */
    readonly missing: (traits: readonly string[], of: string) => string;
    /** Sources differ on the trait: what they say, and what is planned; empty where it is long or not known. */
    readonly disputed: (trait: string, of: string, values: readonly string[], planned: string) => string;
    /** The plan does not state the facts. */
    readonly notGiven: (facts: readonly FactName[], of: string) => string;
    /** An equation does not hold. */
    readonly outsideDomain: (of: string) => string;
    /** Nobody can tell in advance what these individuals do. */
    readonly individual: (of: string, many: boolean) => string;
    /** Such questions for one reason, with the gravest that an answer could bring, and how many more there are. */
    readonly all: (
      reason: OpenQuestion["reason"],
      questions: readonly string[],
      weight: Weight,
      further: number,
    ) => string;
  };
  /**
   * The facts of the plan that are as they should be, and those that are not, as a sentence.
   *
   * @param whole - Whether all else was judged too, so that the facts of one thing may be told as that: the water.
   */
  readonly alreadyRight: (facts: readonly FactName[], wrong: ReadonlySet<FactName>, whole: boolean) => string;
  readonly closing: string;
  /** Beside it, where no rule looked whether animals can hurt people, and what the law says. */
  readonly withoutCautions: string;
  /** Wounds that room and cover as planned should prevent, given as sentences. */
  readonly keptDown: (wounds: string) => string;
  /** What stands between a figure and its unit. */
  readonly beforeUnit: string;
  /** Figures with one end or two, each end already written; `unit` is empty or begins with what stands before it. */
  readonly ranges: {
    /** `at least 60 cm`. */
    readonly atLeast: (min: string, unit: string) => string;
    /** `at most 60 cm`. */
    readonly atMost: (max: string, unit: string) => string;
    /** `60 to 80 cm`. */
    readonly between: (min: string, max: string, unit: string) => string;
    /** What lies beyond a lower end: `below 60 cm`. */
    readonly below: (min: string) => string;
    /** What lies beyond an upper end: `above 60 cm`. */
    readonly above: (max: string) => string;
    /** What lies beyond either: `outside 60 to 80 cm`. */
    readonly outside: (span: string) => string;
    /** `150 × 60 cm`. */
    readonly across: (length: string, width: string, unit: string) => string;
  };
  /** Symbols and names of units. */
  readonly units: Readonly<Record<ShownUnit, string>>;
  /** Names of units behind a 1, where they differ. */
  readonly unitsOfOne: Readonly<Partial<Record<ShownUnit, string>>>;
  /** The words that traits and plans are answered with. */
  readonly words: SpelledWords & PlanWords;
  /** What each fact of a plan is, as the label of `PlanFact` says it in English: `the temperature`. */
  readonly facts: Readonly<Record<FactName, string>>;
  /** The page of a profile. */
  readonly profile: {
    readonly columns: readonly [trait: string, value: string, alsoSaid: string, support: string];
    readonly sections: Readonly<Record<Section, string>>;
    readonly yes: string;
    readonly no: string;
    readonly none: string;
    /**
     * One figure of water with what it means; a meaning that is absent is the span it is kept in. Of a limit the figure is
     * what lies beyond it.
     */
    readonly figure: (span: string, meaning: Words["waterMeaning"] | undefined) => string;
    /** An adult length with what was measured, on whom, and what it means. */
    readonly length: (size: string, of: Omit<TraitItem<"size.adultLength">, "length" | "total">) => string;
    /** The traits whose values have parts. */
    readonly values: ValueSentences;
  };
  /** What pictures say. */
  readonly pictures: {
    /** What those with figures have in common, as a sentence; `of` is how many there are, with figures or without. */
    readonly shared: (figure: string, known: number, of: number) => string;
    /** Two that have nothing in common, as a sentence. */
    readonly apart: (one: string, other: string) => string;
    /** A figure of one sex or the other, nobody said which. */
    readonly eitherSex: (figure: string) => string;
    /** In place of figures that nobody has stated. */
    readonly unknown: string;
    /** Said of a figure that does not count. */
    readonly setAside: string;
    /** What each mark means. */
    readonly marks: Readonly<Record<PictureMark, string>>;
  };
}
