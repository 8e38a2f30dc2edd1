import type { Range } from "../../../ranges";
import { type AdultLength, factAt, type Sex, type SpeciesProfile, standardLength } from "../../../species";
import { lengthsOfSex, sexes } from "../../../species/inner";
import type { WriteQuantity } from "../../figure";
import type { Messages } from "../../messages/messages";
import { measuredAlike, totalOf } from "../../total-length";
import { type PictureName, pictureName } from "../names";

/** An animal from the side, in cm. */
export interface Outline {
  /** Of the body without the tail fin. */
  readonly body: number;
  readonly depth: number;
}

/**
 * What is known of the size of one sex, or of both where nobody tells them apart. Lengths are totals in cm; of a ray of which
 * the disc is told, its width.
 */
export interface SizeRow {
  readonly name: PictureName;
  /** The sex in words; empty for both. */
  readonly sex: string;
  /** The length that is drawn: the usual one, else the greatest. */
  readonly drawn: Range | undefined;
  readonly onlyGreatest: boolean;
  /** The greatest length, where it lies beyond what is drawn, and whether nobody said of which sex it is. */
  readonly greatest: number | undefined;
  readonly ofEither: boolean;
  /** Of what is drawn, where its depth is known. */
  readonly outline: Outline | undefined;
  /** The lengths in words, one a line. */
  readonly figures: readonly string[];
  readonly told: string;
}

/** The sizes of a species: a row for each sex of which somebody states its own, else one. */
export function sizeRows(
  profile: SpeciesProfile,
  messages: Messages,
  write: WriteQuantity,
): readonly SizeRow[] {
  const lengths = factAt(profile, "size.adultLength")?.value ?? [];
  const name = pictureName(profile, messages);
  if (lengths.length === 0) return [unknownRow(name, messages)];
  const told = sexes.filter((sex) => lengths.some((length) => length.sex === sex));
  const subjects: readonly (Sex | undefined)[] = told.length > 0 ? told : [undefined];
  return subjects.map((sex) => sizeRow(profile, name, sex, lengthsOfSex(lengths, sex), messages, write));
}

function unknownRow(name: PictureName, { pictures: { unknown } }: Messages): SizeRow {
  const nothing = {
    drawn: undefined,
    greatest: undefined,
    outline: undefined,
    onlyGreatest: false,
    ofEither: false,
  };
  return { name, sex: "", ...nothing, figures: [unknown], told: `${name.full}: ${unknown}.` };
}

function sizeRow(
  profile: SpeciesProfile,
  name: PictureName,
  of: Sex | undefined,
  lengths: readonly AdultLength[],
  { words, pictures }: Messages,
  write: WriteQuantity,
): SizeRow {
  const [alike, measure] = measuredAlike(lengths, of);
  const usual = totalOf(alike, "usual", of);
  const greatest = totalOf(alike, "greatest", of);
  const drawn = usual ?? greatest;
  const figures = Object.entries({ usual, greatest }).flatMap(([meaning, length]) => {
    if (!length) return [];
    const { min, max, ofEither } = length;
    const size = write({ min, max, unit: "cm" });
    const measured = measure === "disc" ? `${words.lengthMeasure.disc} ${size}` : size;
    const figure = `${words.lengthMeaning[meaning as AdultLength["as"]]} ${measured}`;
    return [ofEither ? pictures.eitherSex(figure) : figure];
  });
  const sex = of === undefined ? "" : words.sex[of];
  const who = [name.full, sex].filter(Boolean).join(", ");
  return {
    name,
    sex,
    drawn,
    onlyGreatest: usual === undefined,
    greatest: greatest && drawn && greatest.max > drawn.max ? greatest.max : undefined,
    ofEither: greatest?.ofEither ?? false,
    outline: drawn && outlineOf(profile, drawn.max),
    figures,
    told: `${who}: ${figures.join(", ")}.`,
  };
}

/** The body of a fish of that total length, where somebody states how deep it is. */
function outlineOf(profile: SpeciesProfile, total: number): Outline | undefined {
  const depthShare = factAt(profile, "size.bodyDepthShare")?.value;
  if (depthShare === undefined || profile.taxonomy.kind !== "fish") return undefined;
  const { min, max } = standardLength(total, factAt(profile, "size.standardShare")?.value);
  const body = (min + max) / 2;
  return { body, depth: body * depthShare };
}
