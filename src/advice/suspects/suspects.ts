import { listOf, oneOf } from "../../checks";
import { type AssessOptions, assessPlan, type Finding } from "../../compatibility";
import { excludeEachOther } from "../../compatibility/inner";
import { type Condition, isMet, type Plan } from "../../plan";
import { conditionsOf } from "../conditions-of";
import { gravityOfFinding } from "../gravity";
import { type OfIndividuals, ofIndividuals } from "./individuals";
import { type Look, lookFor } from "./looks";
import { mending } from "./mending";
import { harmInWater, type SeenSign, seenSigns, signsOf } from "./signs";

/** What may be behind what is seen. */
export interface Suspect {
  /** The finding that explains it; its parties are the groups of the plan. */
  readonly finding: Finding;
  /** Which of the signs that were seen it explains. */
  readonly explains: readonly SeenSign[];
  /**
   * `stands`: the rules have it against the plan. `met`: the plan meets its condition, so that it should not be.
   * `individual`: it would be so if these individuals differ from their kind.
   */
  readonly state: "stands" | "met" | "individual";
  /** Whose temper it would be; absent where it is not about individuals. */
  readonly individual?: OfIndividuals["individual"];
  readonly look: Look;
  readonly act: SuspectAct;
  /** It may be illness all the same, of which no rule knows: that is for a vet. */
  readonly mayBeIllness: true;
}

/** What to do if it is so. */
export type SuspectAct =
  /** Meet what the finding asks for, or what mends it; `check`: see whether the tank really does, as the plan says. */
  | { readonly do: "meet" | "check"; readonly condition: Condition }
  /**
   * `part`: these two for good, at once. `rehouse`: it in a tank or water that suits it. `change-water`: a part of it at
   * once, and each day until no ammonia and no nitrite is found (common practice). `watch`: keepers accept it, or it passes.
   */
  | { readonly do: "part" | "rehouse" | "change-water" | "watch" };

/**
 * What may be behind what a keeper sees in a tank: the findings of the rules that explain it, those whose condition the
 * plan meets and those that hang on individuals included, each with what to look at and what to do.
 *
 * The likeliest come first: those that explain most of the signs; of these what stands against the plan, then what the plan
 * meets, last what individuals that differ from their kind would do, shyer, bolder or bullies; of these the ones of which
 * it is the first sign, then the gravest, what the plan does not say behind what it says. Which sign a rule shows by is
 * common practice, without a source, and knows no illness: what is seen of animals may be illness whatever is told, and an
 * empty answer does not say that all is well: then ask a vet first. What a keeper would have to do first, such as to salt
 * the water, is no suspect.
 *
 * @param signs What is seen, of {@link seenSigns}.
 * @param options The rules and numbers to judge by, as in `assessPlan`.
 * @returns The likeliest first; none where no rule explains it.
 * @throws InvalidInputError for what `assessPlan` refuses, and a sign that is none.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { suspects } from "vivary/advice";
 *
 * const plan = {
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 }, lid: false },
 *   groups: [{ species: danioRerio, unsexed: 10 }],
 * } as const;
 * const [likeliest] = suspects(plan, ["missing-animals"]);
 * likeliest?.finding.rule; // => "lid"
 * likeliest?.look; // => "around-the-tank"
 * ```
 */
export function suspects(
  plan: Plan,
  signs: readonly SeenSign[],
  options: AssessOptions = {},
): readonly Suspect[] {
  const seen = listOf(signs, "signs").map((sign, index) => oneOf(sign, seenSigns, `signs[${index}]`));
  const { findings, met } = assessPlan(plan, options);
  const told: readonly Told[] = [
    ...findings.map((finding): Told => ({ finding, state: "stands" })),
    ...met.map((finding): Told => ({ finding, state: "met" })),
    ...ofIndividuals(plan, options).map((one): Told => ({ ...one, state: "individual" })),
  ];
  const asked = conditionsOf([...findings, ...met]);
  return told
    .filter(({ finding }) => finding.weight !== "favourable")
    .map((one): Suspect => {
      const { finding } = one;
      return {
        ...one,
        explains: signsOf(finding).filter((sign) => seen.includes(sign)),
        look: lookFor(finding),
        act: actOn(one, asked),
        mayBeIllness: true,
      };
    })
    .filter(({ explains }) => explains.length > 0)
    .sort((one, other) => byLikelihood(one, other, plan));
}

type Told = Pick<Suspect, "finding" | "state" | "individual">;

function actOn({ finding, state }: Told, asked: readonly Condition[]): SuspectAct {
  if (finding.weight === "restricting") {
    const { condition } = finding;
    if (state === "met") return { do: "check", condition };
    const harmsOthers = asked.some((other) => excludeEachOther(other, condition));
    if (!harmsOthers) return { do: "meet", condition };
  }
  if (gravityOfFinding(finding) > 0) return { do: finding.to === undefined ? "rehouse" : "part" };
  const harm = harmInWater(finding);
  if (harm) return { do: harm === "soft-water" ? "rehouse" : "change-water" };
  const mends = mending(finding, asked);
  if (mends === undefined) return { do: "watch" };
  if (mends === "never") return { do: "rehouse" };
  return { do: "meet", condition: mends };
}

function byLikelihood(one: Suspect, other: Suspect, plan: Plan): number {
  return (
    other.explains.length - one.explains.length ||
    states.indexOf(one.state) - states.indexOf(other.state) ||
    Number(isFirst(other)) - Number(isFirst(one)) ||
    gravityOf(one, plan) - gravityOf(other, plan)
  );
}

const states: readonly Suspect["state"][] = ["stands", "met", "individual"];

/** The gravest first, with what is said to be amiss before what nobody has said. */
function gravityOf({ finding, state }: Suspect, plan: Plan): number {
  if (finding.weight === "blocking") return 0;
  if (finding.weight === "restricting")
    return state === "stands" && isMet(finding.condition, plan) === undefined ? 2 : 1;
  return "couldBe" in finding && finding.couldBe !== undefined ? 3 : 4;
}

/** Whether one of the signs seen is the first that it shows by. */
const isFirst = ({ finding, explains }: Suspect) => explains.some((sign) => sign === signsOf(finding)[0]);
