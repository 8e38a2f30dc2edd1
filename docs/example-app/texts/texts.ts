import type { ProblemCode } from "vivary";
import type { Outcome } from "vivary/compatibility";
import type { UnitSystem } from "vivary/report";
import type { NameKind } from "vivary/search";
import type { SpeciesProfile } from "vivary/species";

/** What one question, or one part of it, is called. */
type Label =
  | "floor"
  | "shape"
  | "length"
  | "width"
  | "bow"
  | "diameter"
  | "radius"
  | "angle"
  | "height"
  | "lid"
  | "substrate"
  | "plants"
  | "cover"
  | "openWater"
  | "openSurface"
  | "sightBreaks"
  | "jurisdiction"
  | "hides"
  | "caves"
  | "shells"
  | "wood"
  | "leaves"
  | "rocks"
  | "flow"
  | "calmest"
  | "strongest"
  | "filter"
  | "mediaArea"
  | "age"
  | "temperature"
  | "pH"
  | "generalHardness"
  | "carbonateHardness"
  | "salinity"
  | "hottest"
  | "coolest"
  | "count"
  | "males"
  | "females"
  | "unsexed"
  | "juveniles"
  | "form"
  | "bodyLength"
  | "temper"
  | "raises"
  | "food"
  | "place"
  | "light"
  | "apart";

type Shape = "rectangle" | "bowed" | "circle" | "sector" | "polygon";

/** Everything that the app says by itself, in one language. What is said of a plan comes from the library. */
export interface Texts {
  readonly title: string;
  readonly intro: string;
  readonly language: string;
  readonly units: string;
  readonly systems: Readonly<Record<UnitSystem, string>>;
  readonly headings: Readonly<Record<"animals" | "tank" | "water" | "food" | "verdict" | "remedies", string>>;
  readonly labels: Readonly<Record<Label, string>>;
  readonly shapes: Readonly<Record<Shape, string>>;
  readonly asSold: string;
  readonly notSaid: string;
  readonly yes: string;
  readonly no: string;
  /** Beside a field that a verdict waits for, and beside one that speaks against the plan. */
  readonly asked: string;
  readonly amiss: string;
  readonly problems: Readonly<Record<ProblemCode, string>>;
  /** What a number may be: from one figure, or above it, to another, or whole numbers alone. */
  readonly limits: (least: string, most: string, which: "from" | "above" | "whole") => string;
  readonly noAnimals: string;
  readonly beyondWhole: string;
  readonly tooLong: string;

  readonly search: {
    readonly label: string;
    readonly hint: string;
    readonly list: string;
    readonly found: (count: number) => string;
    readonly as: Readonly<Record<NameKind, string>>;
    readonly failed: string;
    readonly added: (name: string) => string;
  };
  readonly remove: (name: string) => string;
  readonly removed: (name: string) => string;
  readonly offering: (number: number) => string;
  readonly addOffering: string;

  readonly actions: Readonly<
    Record<"share" | "download" | "open" | "undo" | "empty" | "example" | "toVerdict", string>
  >;
  readonly file: string;
  readonly link: string;
  readonly linkCopied: string;
  readonly linkReady: string;
  readonly brokenLink: string;
  /** What is shown in place of the plan of a broken link. */
  readonly planKept: string;
  readonly exampleShown: string;
  readonly brokenFile: string;
  readonly renamed: (from: string, to: string) => string;
  readonly opened: string;

  readonly outcomes: Readonly<Record<Outcome | "without animals" | "unreadable", string>>;
  readonly withoutAnimals: string;
  readonly unreadable: string;
  readonly toChange: string;
  readonly toProvide: string;
  readonly change: string;
  readonly provide: string;
  readonly all: string;
  readonly byHand: string;
  readonly notAtOnce: (others: string) => string;
  readonly why: string;
  readonly changed: string;

  readonly remedies: {
    readonly seek: string;
    readonly seeking: string;
    readonly take: string;
    readonly way: (number: number) => string;
    readonly taken: string;
  };
  readonly source: string;
}

/** What a species or its form is called in a language; its scientific name where it has no other. */
export const nameOf = ({ names, taxonomy }: SpeciesProfile, language: string): string =>
  names[language]?.[0] ?? taxonomy.name;
