import { speciesById } from "vivary/catalog";
import {
  assessPair,
  assessPlan,
  type PairRule,
  type PlanRule,
  type RuleId,
  type Verdict,
} from "../../../src/compatibility";
import type { Group, Party, Plan } from "../../../src/plan";
import type { SpeciesProfile } from "../../../src/species";

/**
 * Of each rule cases, one a line. Two kinds of animals are judged as a pair: `male betta-splendens, pangio-kuhlii`; in a
 * tank as a plan, then what it has: `80x35x40: 10 paracheirodon-innesi, 4 young hoplisoma-panda; temperature 24, wood 3`.
 */
export type Cases = Partial<Record<RuleId, { readonly silent: string; readonly speaks: string }>>;

export const linesOf = (text: string): readonly string[] => text.trim().split("\n");

/** What a rule alone finds in a case that weighs; of a rule that never weighs more, what it tells. */
export function weighing(rule: PairRule | PlanRule, line: string): readonly string[] {
  const { findings } = verdictOf(rule, line);
  const onlyTells = rule.mayYield.every((weight) => weight === "advisory");
  return findings
    .filter((found) => onlyTells || "couldBe" in found || !["advisory", "favourable"].includes(found.weight))
    .map((found) => ("condition" in found ? `${found.weight} ${found.condition.on}` : found.weight));
}

function verdictOf(rule: PairRule | PlanRule, line: string): Verdict {
  const [tank, kept = "", facts = ""] = line.includes(":") ? line.split(/[:;]/) : ["", line];
  if (tank) return assessPlan(planOf(tank, groupsOf(kept), facts), { rules: [rule] });
  const [one, other] = kept.split(",").map(partyOf);
  if (!one || !other) throw new Error(`Not two kinds of animals: ${line}`);
  return assessPair(one, other, { rules: [rule] });
}

function speciesOf(id: string): SpeciesProfile {
  const species = speciesById(id);
  if (!species) throw new Error(`The catalog has no ${id}.`);
  return species;
}

function partyOf(text: string): Party {
  const words = text.trim().split(" ");
  const [sex, id = ""] = words.length > 1 ? words : [undefined, ...words];
  return { species: speciesOf(id), ...(sex && { sex: sex === "male" ? "male" : "female" }) };
}

const counted = { male: "males", female: "females", young: "juveniles" } as const;

/** Groups as they are named; those of one species are one. */
function groupsOf(text: string): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const named of text.split(",")) {
    const [count = "1", ...words] = named.trim().split(" ");
    const of = words.find((word) => word in counted) as keyof typeof counted | undefined;
    const id = words.find((word) => word.includes("-")) ?? "";
    const before = groups.get(id) ?? { species: speciesOf(id) };
    const raises = words.includes("raises") && { raises: true };
    groups.set(id, { ...before, [of ? counted[of] : "unsexed"]: Number(count), ...raises });
  }
  return [...groups.values()];
}

/** Where what a case says of a tank stands in a plan. */
const sections = {
  water: ["temperature", "pH", "generalHardness", "carbonateHardness", "salinity", "hottest", "coolest"],
  hides: ["caves", "shells", "wood", "leaves", "rocks"],
  flow: ["calmest", "strongest"],
} as const;

function planOf(size: string, groups: readonly Group[], facts: string): Plan {
  const [length = 0, width = 0, height = 0] = size.split("x").map(Number);
  const said = facts
    .split(",")
    .map((fact) => fact.trim().split(" "))
    .filter(([name]) => name);
  const among = (names: readonly string[]) =>
    said
      .filter(([name = ""]) => names.includes(name))
      .map(([name = "", value = ""]) => [name, wordOf(value)]);
  const elsewhere = [...sections.water, ...sections.hides, ...sections.flow, "media", "food"];
  const own = said.flatMap(([name = ""]) => (elsewhere.some((other) => other === name) ? [] : [name]));
  const media = said.find(([name]) => name === "media");
  const [hides, flow] = [among(sections.hides), among(sections.flow)];
  const offerings = said.flatMap(([name, food, place, light]) =>
    name === "food" ? [{ food, place, light }] : [],
  );
  return {
    tank: {
      base: { shape: "rectangle", length, width },
      height,
      ...Object.fromEntries(among(own)),
      ...(hides.length > 0 && { hides: Object.fromEntries(hides) }),
      ...(flow.length > 0 && { flow: Object.fromEntries(flow) }),
      ...(media && { filter: { mediaArea: Number(media[1]), age: 200 } }),
    },
    water: Object.fromEntries(among(sections.water)),
    groups,
    ...(offerings.length > 0 && { offerings: offerings as Plan["offerings"] }),
  };
}

function wordOf(text: string): number | boolean | string {
  if (text === "true" || text === "false") return text === "true";
  return Number.isNaN(Number(text)) ? text : Number(text);
}
