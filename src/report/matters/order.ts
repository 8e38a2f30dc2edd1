import type { Finding, RuleId } from "../../compatibility";

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
  "filter-nitrogen",
  "water-salinity",
  "salinity",
  "water-ph",
  "ph",
  "water-hardness",
  "general-hardness",
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
];

const places: ReadonlyMap<string, number> = new Map(order.map((rule, index) => [rule, index]));

/** The rules that say how much room is needed. */
export const isOfRoom = ({ rule }: Finding) => rule === "longest-run" || rule === "footprint";

/** Whether a finding says that an animal is longer than the tank is wide. */
export const isTooLong = ({ rule, measures = {} }: Finding) => rule === "footprint" && "width" in measures;

/** Whether a finding says that the tank is no place for it, for its length or its floor. */
export const isFarTooSmall = (finding: Finding) =>
  finding.weight === "blocking" && isOfRoom(finding) && !isTooLong(finding);

/** Whether a finding tells of water past what its animals survive. */
export const isPastLimit = ({ rule, measures = {} }: Finding) =>
  rule.startsWith("water-") && "limit" in measures;

/** What waters two can share: no matter of what individuals are like. */
export const isOfSharedWater = ({ rule }: { readonly rule: string }) => sharedWaters.has(rule);

const sharedWaters: ReadonlySet<string> = new Set([
  "temperature",
  "ph",
  "general-hardness",
  "salinity",
] satisfies readonly RuleId[]);

/** Young and eggs that are lost harm no animal of the plan. */
export const isOfYoung = ({ rule, measures = {} }: Finding) => rule === "predation" && "of" in measures;

/** Where a finding stands among others of its weight: the lower, the earlier. */
export function rankOf(finding: Finding): number {
  if (isPastLimit(finding)) return -2;
  if (finding.weight === "blocking" && (isOfRoom(finding) || finding.rule === "zones")) return -1;
  if (isOfYoung(finding)) return order.length + 1;
  return places.get(finding.rule) ?? order.length;
}

/** The findings with the gravest harm first; those alike keep their order. */
export const gravestFirst = (findings: readonly Finding[]): readonly Finding[] =>
  [...findings].sort((a, b) => rankOf(a) - rankOf(b));
