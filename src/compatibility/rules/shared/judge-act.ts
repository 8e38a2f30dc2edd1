import type { Animals } from "../../../plan";
import { mayHave } from "../../../plan/inner";
import type { Act, Sex } from "../../../species";
import { notYet, ofBrood } from "../../animals/acts";
import type { GivenCondition, Judged } from "../../engine/rule/finding";
import type { GivenMeasures, MeasureKinds } from "../../engine/rule/measures";

/** The measures of a finding about an act. `once` is the stage at which it begins, where that is still to come. */
export const actMeasures = {
  act: "does",
  when: "when",
  doer: "sex",
  once: "stage",
} as const satisfies MeasureKinds;

/** These measures, with those that only one rule gives; a call, so that bundlers can leave out whoever declares them. */
export const besideAct = <const Own extends MeasureKinds>(own: Own): typeof actMeasures & Own => ({
  ...actMeasures,
  ...own,
});

/** An answer about an act. */
export type ActAnswer = Judged<"blocking" | "restricting" | "advisory", typeof actMeasures>;

/** The measures of an act of some animals. Young grow up, so what they do not do yet counts too. */
const measuresOf = (act: Act, animals: Animals): GivenMeasures<typeof actMeasures> => ({
  act: act.does,
  when: act.when ?? "always",
  doer: act.doer,
  once: notYet(act, animals) ? "adult" : undefined,
});

/** An act that only disturbs: at food, and chases from a brood, which pass. */
export const onlyDisturbs = ({ does, when }: Act): boolean =>
  does === "robs-food" || when === "feeding" || (ofBrood(when) && does === "chases");

/** An act as worth knowing. */
export const toKnow = (act: Act, animals: Animals): ActAnswer => ({
  weight: "advisory",
  measures: measuresOf(act, animals),
  watchFor: act.does === "robs-food" ? "thin" : "chasing",
});

/** What a keeper sees of an act that kills or wounds. */
const signOf = ({ does }: Act) => (does === "kills" ? "missing-animals" : "torn-fins");

/** An act that nothing prevents. */
const blocks = (act: Act, animals: Animals, instead?: GivenCondition): ActAnswer => ({
  weight: "blocking",
  measures: measuresOf(act, animals),
  watchFor: signOf(act),
  ...(instead && { instead }),
});

/** An act that conditions prevent, one finding for each. */
export const restricts = (
  act: Act,
  animals: Animals,
  conditions: readonly GivenCondition[],
): readonly ActAnswer[] =>
  conditions.map((condition) => ({
    weight: "restricting",
    measures: measuresOf(act, animals),
    watchFor: "chasing",
    condition,
  }));

/** What mends an act towards another species. */
interface Mending {
  readonly removedBy: (when: NonNullable<Act["when"]>) => readonly GivenCondition[];
  /** What spares the other from wounds, beside a sex of the doers that does not deal them. */
  readonly spares?: GivenCondition | undefined;
  /** The form that would be spared. */
  readonly instead?: GivenCondition | undefined;
}

/**
 * What an act towards another species weighs: what kills, or wounds at any time, blocks, unless the plan leaves open a sex
 * that is spared; what disturbs, and chases that come of crowding, are worth knowing; the rest restricts to what removes
 * it.
 */
export function judgeTowards(
  act: Act,
  animals: Animals,
  { removedBy, spares, instead }: Mending,
): readonly ActAnswer[] {
  const { does, when = "always" } = act;
  if (onlyDisturbs(act)) return [toKnow(act, animals)];
  if (does === "kills" || (does === "bites" && when === "always"))
    return [deadly(act, animals, { spares, instead })];
  if (when === "crowded" && does !== "bites") return [toKnow(act, animals)];
  return restricts(act, animals, removedBy(when));
}

/** What kills or wounds blocks; where no sex is stated, it restricts to the sex that does neither, else to what is spared. */
export function deadly(
  act: Act,
  animals: Animals,
  { spares, instead }: Pick<Mending, "spares" | "instead"> = {},
): ActAnswer {
  const sex = sexThatSpares(act, animals);
  const condition = sex ? ({ on: "group.sex", of: "from", wanted: { oneOf: [sex] } } as const) : spares;
  if (!condition) return blocks(act, animals, instead);
  return { weight: "restricting", measures: measuresOf(act, animals), watchFor: signOf(act), condition };
}

/** Answers about several acts; what two of them come to alike is said once. */
export const saidOnce = (answers: readonly ActAnswer[]): readonly ActAnswer[] =>
  answers.length < 2
    ? answers
    : [...new Map(answers.map((answer) => [JSON.stringify(answer), answer])).values()];

/** Room and things that break the line of sight, for so many that would fight. */
export const roomAndSight = (rivals: number, area: number | undefined): readonly GivenCondition[] => [
  { on: "tank.sightBreaks", wanted: { min: Math.max(rivals - 1, 1) } },
  ...(area === undefined ? [] : [{ on: "tank.footprint", wanted: { min: rivals * area } } as const]),
];

/** Of which sex animals must be not to do an act, where the plan names none of the other. */
export function sexThatSpares({ doer }: Pick<Act, "doer">, animals: Animals): Sex | undefined {
  if (!doer || animals.sex !== undefined || animals.males !== undefined) return undefined;
  if (animals.some?.[doer]) return undefined;
  const other = doer === "male" ? "female" : "male";
  return mayHave(animals, other) ? other : undefined;
}
