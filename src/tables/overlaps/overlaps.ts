import { listOf, objectOf, oneOf, refuseOthers } from "../../checks";
import { decimal } from "../../decimal";
import { refusal } from "../../errors";
import { frozen } from "../../frozen";
import { profilesOf } from "../../plan/inner";
import { gap, overlap } from "../../ranges";
import type { WidthFormula, Widths } from "../../ranges/inner";
import { bases, type FigurePath, figurePaths, type SpeciesProfile, type SpeciesRecord } from "../../species";
import { weakestBasis } from "../../species/inner";
import { inOrder, listed, type RowWith } from "../table";
import { ets } from "../terms";
import { adoptedBox, type Change, changedBoxes, choicesOn, countBoxes, outermostBoxes } from "./choices";
import { formulas, type OverlapMeasure } from "./measures";
import { type Standing, standingSpans } from "./standing-spans";

const columns = {
  overlapID: { type: "string", about: "Tells the row from all others.", required: true },
  taxonID: { type: "string", about: "The first species.", required: true },
  form: {
    type: "string",
    about: "The form of it that was compared; empty for the species.",
    term: ets("morphotype"),
  },
  otherID: { type: "string", about: "The second species.", required: true },
  otherForm: { type: "string", about: "The form of it that was compared; empty for the species." },
  axis: {
    type: "string",
    about: "The trait compared; box for all the axes together that both have.",
    required: true,
  },
  axes: { type: "string", about: "The traits that went into it.", required: true },
  measure: { type: "string", about: "The measure of overlap.", required: true, words: Object.keys(formulas) },
  value: {
    type: "number",
    about: "The measure by the adopted spans, 0 to 1; empty where it has no value.",
    within: { min: 0, max: 1 },
  },
  least: {
    type: "number",
    about: "The least that it is by any spans that stand.",
    within: { min: 0, max: 1 },
  },
  greatest: {
    type: "number",
    about: "The greatest that it is by any spans that stand.",
    within: { min: 0, max: 1 },
  },
  worlds: {
    type: "integer",
    about: "In how many ways the spans that stand can be chosen.",
    required: true,
    within: { min: 1 },
  },
  withoutValue: {
    type: "integer",
    about: "In how many of these ways the measure has no value.",
    required: true,
    within: { min: 0 },
  },
  sharedMin: {
    type: "number",
    about: "Of one axis, the lower end of what both share, in the unit of the trait.",
  },
  sharedMax: {
    type: "number",
    about: "Of one axis, the upper end of what both share, in the unit of the trait.",
  },
  gap: {
    type: "number",
    about: "Of one axis, how far both lie apart, in the unit of the trait.",
    within: { min: 0 },
  },
  basis: {
    type: "string",
    about: "The weakest basis of the facts compared.",
    required: true,
    words: [...bases],
  },
  movedTo: {
    type: "number",
    about: "The value that lies farthest from the adopted one, of those that a single other span gives.",
    within: { min: 0, max: 1 },
  },
  moverID: { type: "string", about: "The species of that span." },
  moverTrait: { type: "string", about: "The trait of that span." },
  moverMin: { type: "number", about: "Its lower end, in the unit of the trait." },
  moverMax: { type: "number", about: "Its upper end, in the unit of the trait." },
  moverSaidBy: { type: "string", about: "The keys of the sources that state it, where records were given." },
} as const;

/** How much the spans of two species overlap. */
export const overlaps = /* @__PURE__ */ frozen({
  name: "overlaps",
  about: "How much the spans of two species overlap, on one axis or on several together.",
  columns,
  key: ["overlapID"],
  refers: { taxonID: "taxa", otherID: "taxa" },
} as const);

/** An overlap of two species as a row; `tables.overlaps` says what each cell holds. */
export type OverlapRow = RowWith<typeof columns>;

/** What is compared, and how. */
export interface OverlapOptions {
  /** The traits to compare, one or several. */
  readonly axes: readonly FigurePath[];
  /** The measures to compare them by; all are told from the same two numbers, and one will do. */
  readonly measures: readonly OverlapMeasure[];
  /** The record of a species, such as `recordById` of `vivary/evidence`, to name the sources of the spans that stand. */
  readonly recordOf?: ((id: string) => SpeciesRecord | undefined) | undefined;
}

/**
 * How much the spans of every two species overlap: a row for each pair, axis and measure, and with several axes one more
 * for the box, the axes together that both have. Pairs without a common axis have no rows. Of `containment`, which depends
 * on the order, there are two rows a pair: what share of the first lies within the second.
 *
 * A span open below reaches down to the floor of its trait, 0 of hardness and salinity. A box takes the products of
 * widths for widths, as if each species used its box evenly; two boxes lie apart where one axis keeps them apart.
 *
 * `least` and `greatest` are over all choices of one span that stands for each species and axis. The measures hold for one
 * use of evidence, not for several: they all follow from the share that each species has in common with the other.
 *
 * @param profiles - Profiles of the catalog, or those that `resolve` makes of records, by other sources alone for instance.
 * @throws InvalidInputError for what is no list of profiles, without an axis or a measure, for one that is not known or
 * named twice, and where two profiles are of one species and form.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
 * import { overlapRows } from "vivary/tables";
 *
 * const axes = ["water.temperature", "water.pH"] as const;
 * const rows = overlapRows([danioRerio, pterophyllumScalare], { axes, measures: ["schoener"] });
 * rows.map(({ axis }) => axis); // => ["water.temperature", "water.pH", "box"]
 * rows[0]?.value; // => 0.25
 * ```
 */
export function overlapRows(
  profiles: readonly SpeciesProfile[],
  options: OverlapOptions,
): readonly OverlapRow[] {
  const { axes, measures, recordOf, ...others } = objectOf(options, "options");
  refuseOthers(others);
  chosen(axes, figurePaths, "options.axes");
  if (recordOf !== undefined && typeof recordOf !== "function")
    throw refusal("options.recordOf", "a function", recordOf);
  chosen(measures, Object.keys(formulas), "options.measures");
  const compared = profilesOf(profiles, ["profiles"]).map((profile) => ({
    profile,
    name: nameOf(profile),
    standing: new Map(axes.map((axis) => [axis, standingSpans(profile, axis, recordOf?.(profile.id))])),
  }));
  const names = compared.map(({ name }) => name);
  if (new Set(names).size < names.length)
    throw refusal("profiles", "each species and form once", names, "conflict");
  return compared.flatMap((a, index) =>
    compared
      .slice(index + 1)
      .flatMap((b) => [
        ...rowsOf({ a, b }, axes, measures),
        ...rowsOf({ a: b, b: a }, axes, measures.includes("containment") ? ["containment"] : []),
      ]),
  );
}

const nameOf = ({ id, form }: SpeciesProfile) => (form === undefined ? id : `${id}:${form}`);

/** A list of words, each known and none twice, and at least one. */
function chosen(list: readonly string[], known: readonly string[], subject: string): void {
  if (listOf(list, subject).length === 0) throw refusal(subject, "at least one", list, "range");
  for (const word of list) oneOf(word, known, subject);
  if (new Set(list).size < list.length) throw refusal(subject, "each once", list, "conflict");
}

/** A species with its spans on each axis. */
interface Compared {
  readonly profile: SpeciesProfile;
  readonly name: string;
  readonly standing: ReadonlyMap<FigurePath, Standing | undefined>;
}

/** Two species to be compared. */
interface Pair {
  readonly a: Compared;
  readonly b: Compared;
}

/** What is compared of a pair: one axis, or the box of all that both have. */
interface Scope {
  readonly axis: FigurePath | "box";
  readonly common: readonly Common[];
}

/** What both have on one axis. */
interface Common {
  readonly axis: FigurePath;
  readonly a: Standing;
  readonly b: Standing;
}

function rowsOf(
  pair: Pair,
  axes: readonly FigurePath[],
  measures: readonly OverlapMeasure[],
): readonly OverlapRow[] {
  const common = axes.flatMap((axis): readonly Common[] => {
    const [a, b] = [pair.a.standing.get(axis), pair.b.standing.get(axis)];
    return a && b ? [{ axis, a, b }] : [];
  });
  const alone = common.map((each): Scope => ({ axis: each.axis, common: [each] }));
  const box: readonly Scope[] = axes.length > 1 && common.length > 0 ? [{ axis: "box", common }] : [];
  return [...alone, ...box].flatMap((scope) => scopeRows(pair, scope, measures));
}

function scopeRows({ a, b }: Pair, scope: Scope, measures: readonly OverlapMeasure[]): readonly OverlapRow[] {
  const { axis, common } = scope;
  const axes = common.map((each) => choicesOn(each.axis, { a: each.a.spans, b: each.b.spans }));
  const boxes = { adopted: adoptedBox(axes), outermost: outermostBoxes(axes), changed: changedBoxes(axes) };
  const { all, unmeasured } = countBoxes(axes);
  const told = {
    taxonID: a.profile.id,
    form: a.profile.form ?? null,
    otherID: b.profile.id,
    otherForm: b.profile.form ?? null,
    axis,
    axes: common.map((each) => each.axis).join(" | "),
    worlds: all,
    withoutValue: unmeasured,
    ...metOn(scope),
    basis: weakestBasis(common.flatMap((each) => [each.a.basis, each.b.basis])),
  };
  return measures.map((measure) => {
    const formula: WidthFormula = (widths) => decimal(formulas[measure](widths));
    return inOrder(columns, {
      overlapID: [a.name, b.name, axis, measure].join("/"),
      ...told,
      measure,
      ...measuredBy(formula, boxes),
      ...movedBy(formula, boxes, { a, b }),
    });
  });
}

/** What two share on one axis, or how far they lie apart; nothing of a box. */
function metOn({ axis, common }: Scope): Pick<OverlapRow, "sharedMin" | "sharedMax" | "gap"> {
  const [only] = common;
  if (axis === "box" || !only) return { sharedMin: null, sharedMax: null, gap: null };
  const [a, b] = [only.a.spans[0].span, only.b.spans[0].span];
  const [shared, between] = [overlap(a, b), gap(a, b)];
  return {
    sharedMin: shared?.min ?? null,
    sharedMax: shared?.max ?? null,
    gap: between ? decimal(between.max - between.min) : null,
  };
}

/** The boxes of a pair that a measure is taken of. */
interface Boxes {
  readonly adopted: Widths | undefined;
  readonly outermost: readonly Widths[];
  readonly changed: readonly (Change<FigurePath> & { readonly box: Widths })[];
}

/** A measure by the adopted spans, and its bounds over all that stand. */
function measuredBy(
  formula: WidthFormula,
  { adopted, outermost }: Boxes,
): Pick<OverlapRow, "value" | "least" | "greatest"> {
  const value = adopted ? formula(adopted) : null;
  const values = [...(value === null ? [] : [value]), ...outermost.map(formula)];
  if (values.length === 0) return { value, least: null, greatest: null };
  return { value, least: Math.min(...values), greatest: Math.max(...values) };
}

type Moved = Pick<OverlapRow, "movedTo" | "moverID" | "moverTrait" | "moverMin" | "moverMax" | "moverSaidBy">;

const unmoved: Moved = {
  movedTo: null,
  moverID: null,
  moverTrait: null,
  moverMin: null,
  moverMax: null,
  moverSaidBy: null,
};

/** The single other span by which a measure lies farthest from its adopted value, the first of equals. */
function movedBy(formula: WidthFormula, { adopted, changed }: Boxes, pair: Pair): Moved {
  if (!adopted) return unmoved;
  const value = formula(adopted);
  const moves = changed.map((change) => ({ change, to: formula(change.box) }));
  const [first, ...others] = moves.filter(({ to }) => to !== value);
  if (!first) return unmoved;
  const distance = (move: { readonly to: number }) => Math.abs(move.to - value);
  const { change, to } = others.reduce(
    (most, move) => (distance(move) > distance(most) ? move : most),
    first,
  );
  return {
    movedTo: to,
    moverID: pair[change.of].profile.id,
    moverTrait: change.axis,
    moverMin: change.to.span.min ?? null,
    moverMax: change.to.span.max ?? null,
    moverSaidBy: listed(change.to.said),
  };
}
