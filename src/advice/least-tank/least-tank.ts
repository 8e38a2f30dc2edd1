import { objectOf, wholeNumber } from "../../checks";
import type { Finding, LibraryFinding, Planner, WitnessOptions } from "../../compatibility";
import type { Group, Plan } from "../../plan";
import type { TankDimensions } from "../../tank";
import { againstIn, furnishedFor, suitableIn } from "./furnished";
import { bySize, fitsInto, type MeasuredTank } from "./measured-tank";
import { standardTanks } from "./standard-tanks";

/** How the least tank is sought. */
export interface LeastTankOptions extends WitnessOptions {
  /** The tanks to choose from, in any order. Default {@link standardTanks}. */
  readonly shapes?: readonly TankDimensions[] | undefined;
  /** How many are told at most. Default 3. */
  readonly most?: number | undefined;
}

/** A tank that will do, and within which no smaller one of those to choose from will. Its lengths are those of the shape. */
export interface LeastTank extends TankDimensions {
  /** By the measures given, as tanks are sold, L. */
  readonly litres: number;
  /** Of water and panes, kg; of the water alone where no `glass` is given. Ground, stones, lid and stand come on top. */
  readonly filledMass: number;
  /** What speaks against the next smaller tank within it, furnished alike; empty where there is none. */
  readonly limitedBy: readonly Finding[];
  /** The plan that was judged suitable: with the water, furnishing and food that the animals need, all of them met. */
  readonly plan: Plan;
  /** The groups, by their places, that must move in as long as `plan` says, which was not given: others harm shorter ones. */
  readonly longer: readonly number[];
  /** The caution of its weight on the floor, where there is one. */
  readonly caution?: Extract<LibraryFinding, { readonly rule: "caution-floor" }>;
}

/**
 * The smallest tanks in which some animals are judged suitable and have no less room than they need, the smallest floor
 * first: those that hold no smaller one of those to choose from that will do as well.
 *
 * Each is judged by itself, since more room does not always help. What else the animals ask of water, cover, ground,
 * current, filter, food and company is taken as met, as `witness` meets it; `plan` says how, and stands or falls by
 * `assessPlan`. Company comes in only where a tank does not do without. Groups may grow there to the number that belongs
 * together, and never lose an animal; who others would eat or harm moves in longer, and `longer` says who. A tank that is
 * refused might still do with a furnishing that was not tried; none that is told was not judged.
 *
 * @param groups As in a plan.
 * @returns None where no tank to choose from will do: `assessPlan` of the largest says why.
 * @throws InvalidInputError for groups that no plan may have, no shapes or what is no tank, `most` that is no count,
 * company that is no list of profiles.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { leastTank } from "vivary/advice";
 *
 * const [least] = leastTank([{ species: danioRerio, unsexed: 10 }]);
 * least?.base; // => { shape: "rectangle", length: 80, width: 40 }
 * ```
 */
export function leastTank(groups: readonly Group[], options: LeastTankOptions = {}): readonly LeastTank[] {
  const { shapes = standardTanks, most = 3, ...seeking } = objectOf(options, "options");
  wholeNumber(most, "options.most");
  const furnished = furnishedFor(groups, seeking);
  const refused: MeasuredTank[] = [];
  const found: Found[] = [];
  for (const tank of bySize(shapes)) {
    if (found.length === most) break;
    if (found.some((smaller) => fitsInto(smaller.tank, tank))) continue;
    const judged = suitableIn(furnished, tank.shape);
    if (judged) found.push({ tank, judged });
    else refused.push(tank);
  }
  return found.map((one) => told(one, groups, refused));
}

/** A tank that will do, and the plan in it. */
interface Found {
  readonly tank: MeasuredTank;
  readonly judged: Planner;
}

/** A tank that will do, beside those that will not. */
function told(
  { tank, judged }: Found,
  groups: readonly Group[],
  refused: readonly MeasuredTank[],
): LeastTank {
  const { shape, litres, filledMass } = tank;
  const smaller = refused.filter((one) => fitsInto(one, tank)).at(-1);
  const caution = judged.verdict.findings.find(isCautionOfFloor);
  return {
    ...shape,
    litres,
    filledMass,
    limitedBy: smaller ? againstIn(judged, smaller.shape) : [],
    plan: judged.plan,
    longer: [...groups.keys()].filter((of) => judged.plan.groups[of]?.length !== groups[of]?.length),
    ...(caution && { caution }),
  };
}

const isCautionOfFloor = (finding: Finding): finding is NonNullable<LeastTank["caution"]> =>
  finding.rule === "caution-floor";
