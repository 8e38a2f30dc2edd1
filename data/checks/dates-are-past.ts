import { type SpeciesRecord, statementsOf } from "vivary/species";
import type { Collection } from "../reading/collection";
import { fieldOf } from "../reading/fields";
import type { Check, Slip } from "./check";

/** A date as far as it is told, year first, with where it stands. */
interface Told {
  readonly file: string;
  readonly at: readonly (string | number)[];
  readonly parts: readonly number[];
}

export const datesArePast: Check = {
  name: "A date is one of the calendar, and not yet to come",
  find: (collection) => datesOf(collection).flatMap((told) => slipsOf(told, new Date())),
};

/** No scientific name of an animal is older: International Code of Zoological Nomenclature, fourth edition, article 3 (from memory). */
const firstNames = 1758;

function slipsOf({ file, at, parts }: Told, now: Date): readonly Slip[] {
  const date = parts.map((part) => String(part).padStart(2, "0")).join("-");
  const [year = 0, month = 1, day = 1] = parts;
  const read = new Date(Date.UTC(year, month - 1, day));
  const told = { file, at, found: `the date ${date}`, mend: "Correct the year, the month or the day." };
  if (read.getUTCMonth() !== month - 1 || read.getUTCDate() !== day)
    return [{ ...told, expected: "year, month and day, such as 2019-04-30" }];
  if (at[0] === "taxonomy" && year < firstNames)
    return [{ ...told, expected: `${firstNames} or later, when names of animals begin` }];
  return read > now ? [{ ...told, expected: `none after ${now.getUTCFullYear()}` }] : [];
}

function datesOf({ files, records }: Collection): readonly Told[] {
  return [
    ...files.sources.flatMap(({ path: file, json }) =>
      listed(fieldOf(fieldOf(json, "issued"), "date-parts")).flatMap((parts, index) =>
        told(file, ["issued", "date-parts", index], listed(parts)),
      ),
    ),
    ...files.legal.flatMap(({ path, json }) => datedIn(path, json, "listings")),
    ...files.standards.flatMap(({ path, json }) => datedIn(path, json, "instruments")),
    ...records.flatMap(({ path, record }) => datesIn(path, record)),
  ];
}

/** The dates of the entries of a list. */
const datedIn = (file: string, json: unknown, list: string): readonly Told[] =>
  listed(fieldOf(json, list)).flatMap((entry, index) => {
    const date = fieldOf(entry, "date");
    return typeof date === "string" && /^[\d-]+$/.test(date)
      ? told(file, [list, index, "date"], date.split("-").map(Number))
      : [];
  });

/** When a species was described, and its status told. */
const datesIn = (file: string, record: SpeciesRecord): readonly Told[] => [
  ...told(
    file,
    ["taxonomy", "authority"],
    (record.taxonomy.authority.match(/\d{4}/g) ?? []).map(Number).slice(-1),
  ),
  ...statementsOf(record, "origin.conservation").flatMap(({ value }, index) =>
    value?.year === undefined
      ? []
      : told(file, ["origin", "conservation", index, "value", "year"], [value.year]),
  ),
];

const told = (file: string, at: Told["at"], parts: readonly unknown[]): readonly Told[] =>
  parts.length > 0 && parts.every((part) => typeof part === "number") ? [{ file, at, parts }] : [];

const listed = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
