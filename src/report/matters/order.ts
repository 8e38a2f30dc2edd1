import type { Finding, RuleId } from "../../compatibility";
import { type FindingBy, isBy } from "./by-rule";
import { isPastLimit } from "./water-rules";

/** The rules in the order in which a keeper must hear of them, the gravest harm first. */
const order: readonly RuleId[] = [
  "predation",
  "acts-own-kind",
  "acts-look-alike",
  "acts-others",
  "fin-nipping",
  "mucus-grazing",
  "water-temperature",
  "temperature",
  "oxygen",
  "carbon-dioxide",
  "filter-nitrogen",
  "water-salinity",
  "salinity",
  "water-ph",
  "ph",
  "water-hardness",
  "general-hardness",
  "cool-season",
  "season",
  "longest-run",
  "footprint",
  "zones",
  "height",
  "territories",
  "territory-contest",
  "group-size",
  "sex-ratio",
  "feeding-competition",
  "feeding",
  "size-and-pace",
  "shyness",
  "settling-company",
  "furnishing",
  "planting",
  "flow",
  "flow-places",
  "lid",
  "ground",
  "hiding-places",
  "cover",
  "open-water",
  "plants",
  "conditions-exclude",
  "plants-at-risk",
  "sensitive",
  "interbreeding",
  "both-sexes",
];

const places: ReadonlyMap<string, number> = new Map(order.map((rule, index) => [rule, index]));

/** The rules that say how long and how wide a tank must be. */
const roomRules = ["longest-run", "footprint"] as const satisfies readonly RuleId[];

type RoomRule = (typeof roomRules)[number];

/** Whether a finding says how much room is needed. */
export const isOfRoom = (finding: Finding): finding is FindingBy<RoomRule> => isBy(finding, roomRules);

/** These and the rule that says how much of a part of the tank is needed. */
const spaceRules = [...roomRules, "zones"] as const satisfies readonly RuleId[];

/** Whether a finding says how much room is needed, in the tank or in a part of it. */
export const isOfSpace = (finding: Finding) => isBy(finding, spaceRules);

/** Whether a finding says that an animal is longer than the tank is wide. */
export const isTooLong = (finding: Finding) =>
  finding.rule === "footprint" && finding.measures?.width !== undefined;

/** Whether a finding says that the tank is no place for it, for its length or its floor. */
export const isFarTooSmall = (finding: Finding) =>
  finding.weight === "blocking" && isOfRoom(finding) && !isTooLong(finding);

/** Young and eggs that are lost harm no animal of the plan. */
export const isOfYoung = (finding: Finding) =>
  finding.rule === "predation" && finding.measures?.of !== undefined;

/** Where a finding stands among others of its weight: the lower, the earlier. */
export function rankOf(finding: Finding): number {
  if (isPastLimit(finding)) return -2;
  if (finding.weight === "blocking" && isOfSpace(finding)) return -1;
  if (isOfYoung(finding)) return order.length + 1;
  return places.get(finding.rule) ?? order.length;
}

/** The findings with the gravest harm first; those alike keep their order. */
export const gravestFirst = (findings: readonly Finding[]): readonly Finding[] =>
  [...findings].sort((a, b) => rankOf(a) - rankOf(b));
