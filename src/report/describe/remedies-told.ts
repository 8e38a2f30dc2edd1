import type { Move, Remedies, Remedy } from "../../advice";
import type { Changed, Verdict } from "../../compatibility";
import type { Group, Plan } from "../../plan";
import { headcount } from "../../plan/inner";
import type { RectangleBase } from "../../tank";
import { convert } from "../../units";
import type { Block } from "../layout";
import { isOfLawThere } from "../matters/by-rule";
import type { Messages } from "../messages/messages";
import { nameIn } from "../names";
import { partTold } from "./part-told";
import type { Teller } from "./teller";
import { figureOf, isOfWater, waterAsked } from "./water-asked";

/** Tells of a verdict, and why whoever leaves a plan may have to. */
interface LeavingTeller extends Teller {
  /** Whether the animals of a party kill or wound each other, whatever the tank. */
  readonly areRivals: (of: number | undefined) => boolean;
  /** Whether a law of the place where the tank stands names a party. */
  readonly isNamedByLaw: (of: number | undefined) => boolean;
}

/** What would help, in words. Its groups are the parties of the verdict. */
export function remediesTold(
  remedies: Remedies,
  { findings }: Verdict,
  teller: Teller,
  messages: Messages,
): Block {
  const { remedies: all, obstacle } = remedies;
  const { titles, remedy: words } = messages;
  const leaving: LeavingTeller = {
    ...teller,
    areRivals: (of) =>
      findings.some(
        ({ rule, weight, from, to }) =>
          rule === "acts-own-kind" && weight === "blocking" && from === of && to === of,
      ),
    isNamedByLaw: (of) => findings.some((finding) => finding.from === of && isOfLawThere(finding)),
  };
  const told = all.flatMap((remedy) => remedyTold(remedy, leaving, messages));
  if (told.length > 0)
    return { title: told.length > 1 ? titles.remedies : titles.remedy, items: [...new Set(told)] };
  return { title: titles.remedy, items: obstacle ? [words.none(partTold(obstacle, teller, messages))] : [] };
}

/** A remedy as a sentence; none where it only sees to what the plan does not say, which is told by itself. */
function remedyTold(remedy: Remedy, teller: LeavingTeller, messages: Messages): readonly string[] {
  const steps = remedy.moves.flatMap((move) => stepsOf(move, remedy, teller, messages));
  if (steps.length === 0) return [];
  return [teller.capital(messages.remedy.all([...new Set(steps)], remedy.outcome))];
}

/** What a move of a remedy does, as clauses that command. */
function stepsOf(move: Move, remedy: Remedy, teller: LeavingTeller, messages: Messages): readonly string[] {
  const { remedy: words } = messages;
  const { kind, of, moved, change, meets } = move;
  if (kind === "form") return [formTaken(move, remedy, teller, messages)];
  if (kind === "rehome") {
    const left = of === undefined ? undefined : change.groups?.[of];
    const [apart, lawful] = [teller.areRivals(of), teller.isNamedByLaw(of)];
    const all = left === null;
    return [words.rehome({ ...teller.kinds(of), moved, all, apart, lawful, ...whoLeaves(left) })];
  }
  if (kind === "company") return (change.add ?? []).map((group) => words.add(joining(group, messages)));
  const base = change.tank?.base;
  const isRoom = ({ on }: Move["meets"][number]) => on === "tank.longestRun" || on === "tank.footprint";
  const sides = base?.shape === "rectangle" ? sidesTold(base, remedy.plan, teller) : "";
  const height = sides ? meets.find(({ on }) => on === "tank.height") : undefined;
  const further = meets.filter((condition) => condition !== height && !(sides && isRoom(condition)));
  const water = further.filter(isOfWater);
  const isOne = water.length < 2;
  return [
    ...(sides ? [words.tank(sides, height && teller.figure(figureOf(height)))] : []),
    ...(isOne ? [] : [words.water(waterAsked(water, teller.figure))]),
    ...further
      .filter((condition) => isOne || !isOfWater(condition))
      .map((condition) => teller.clause(condition)),
  ];
}

/**
 * Who leaves a group, by what becomes of it; absent where all go, or nobody knows of which sex they are. Where some of both
 * go, or all of one and some of the other, who stays.
 */
function whoLeaves(
  left: Changed<Group> | null | undefined,
): Pick<Parameters<Messages["remedy"]["rehome"]>[0], "who" | "stay"> {
  const sorts = (["males", "females", "juveniles"] as const).flatMap((who) => {
    const count = left?.[who];
    return count === undefined ? [] : [{ who, count }];
  });
  const [first, ...others] = sorts;
  if (first && others.length === 0 && left?.unsexed === undefined) return { who: first.who };
  return { stay: sorts.filter(({ count }) => count > 0) };
}

/** Of which form other animals are taken, by its name; where it is the usual one, by what tells it: short fins. */
function formTaken(
  { of = -1, change }: Move,
  { moves, plan }: Remedy,
  teller: Teller,
  { language, remedy: words }: Messages,
): string {
  const form = change.groups?.[of]?.form;
  if (form === undefined) return teller.clause({ on: "group.longFins", of, wanted: { oneOf: [false] } });
  const gone = moves.filter((move) => move.of !== undefined && move.change.groups?.[move.of] === null);
  const place = of - gone.filter((move) => Number(move.of) < of).length;
  const { names = {} } = plan.groups[place]?.species.forms?.[form] ?? {};
  return words.form({ ...teller.kinds(of), form: nameIn(language, names, form) });
}

/** The sides of a tank to have, which are in the unit of its plan. */
function sidesTold(
  { length, width }: RectangleBase,
  { tank: { unit = "cm" } }: Plan,
  teller: Teller,
): string {
  const inCm = (side: number) => convert(side, unit, "cm");
  return teller.figure({ min: inCm(length), by: inCm(width), unit: "cm" });
}

function joining(group: Group, messages: Messages) {
  const { names, taxonomy } = group.species;
  const name = nameIn(messages.language, names, taxonomy.name);
  const several = name === taxonomy.name ? name : messages.several(name);
  return { name, several, count: headcount(group) };
}
