import type { Problem } from "../../errors";

/** What a value given from outside may be. A table of shapes is both checked against and told as a JSON Schema. */
export type Shape =
  | {
      readonly is: "number";
      readonly min?: number;
      readonly above?: number;
      readonly max?: number;
      readonly unit?: string;
    }
  | { readonly is: "count"; readonly min: number; readonly max: number }
  | { readonly is: "yes-or-no" }
  | { readonly is: "word"; readonly words: readonly string[] }
  | { readonly is: "text"; readonly longest: number }
  | { readonly is: "list"; readonly of: Shape; readonly least: number; readonly most: number }
  | ObjectShape
  /** One of several objects, told apart by one of their fields. */
  | { readonly is: "kinds"; readonly by: string; readonly of: Readonly<Record<string, ObjectShape>> }
  /** Whatever the function finds no fault with. */
  | { readonly is: "checked"; readonly check: ShapeCheck };

/** An object with these fields and no others. */
export interface ObjectShape {
  readonly is: "object";
  readonly fields: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
}

/** Finds fault with a value at a path. */
export type ShapeCheck = (value: unknown, path: ProblemPath) => readonly Problem[];

/** Where a value stands. */
export type ProblemPath = Problem["path"];
