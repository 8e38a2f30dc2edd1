import fc from "fast-check";
import { anyOf } from "../drawn";
import { at, type Place, placesIn, withAt, without } from "./json";
import { files } from "./records";

const words = [
  "",
  " ",
  "none",
  "degF",
  "kept",
  "adult",
  "__proto__",
  "<img src=x onerror=alert(1)>",
  "\u202e\0",
];
const figures = [-1, 0, 1e308, Number.POSITIVE_INFINITY];
const oddities: readonly unknown[] = [null, true, [], [[]], {}, { min: 1, max: 0 }, { toString: null }];
const junk = fc.oneof(
  fc.constantFrom<unknown>(...words, ...figures, ...oddities),
  fc.jsonValue({ depthSize: "small" }),
);
const key = fc.constantFrom(
  ...["__proto__", "constructor", "toString", "value", "unit", "as", "stage", "adopt", "setAside", "memory"],
);

type Change = (record: unknown) => unknown;

const placeOf = (record: unknown, number: number): Place => {
  const places = placesIn(record);
  return places[number % places.length] ?? [];
};

/** Something left out, replaced, added, or put in the place of something else. */
const change: fc.Arbitrary<Change> = fc.oneof(
  fc.nat().map(
    (where): Change =>
      (record) =>
        without(record, placeOf(record, where)),
  ),
  fc.tuple(fc.nat(), junk).map(
    ([where, put]): Change =>
      (record) =>
        withAt(record, placeOf(record, where), put),
  ),
  fc.tuple(fc.nat(), key, junk).map(
    ([where, name, put]): Change =>
      (record) =>
        withAt(record, [...placeOf(record, where), name], put),
  ),
  fc.tuple(fc.nat(), fc.nat()).map(
    ([where, from]): Change =>
      (record) =>
        withAt(record, placeOf(record, where), structuredClone(at(record, placeOf(record, from)))),
  ),
);

/** True records with something changed anywhere. Some are still records, most are not. */
export const mutants: fc.Arbitrary<unknown> = fc
  .tuple(
    anyOf(files, ({ id }) => id),
    fc.array(change, { minLength: 1, maxLength: 4 }),
  )
  .map(([{ json }, changes]) => changes.reduce((record, step) => step(record), json));
