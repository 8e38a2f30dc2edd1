import type { Finding, RuleId, Sign } from "../../compatibility";
import { frozen } from "../../frozen";

/**
 * What a keeper may see. `torn-fins`: pieces of fins gone. `damaged-skin`: scrapes, bare flanks, worn barbels.
 * `missing-animals`: fewer than there were, without a body or with one. `missing-young`: eggs or young gone.
 * `gasping`: at the surface, gills going fast. `hiding`: out of sight all day. `thin`: hollow bellies, though all are fed.
 * `chasing`: chases that do not end. `listless`: fins clamped, pale or dark, off their food. `dug-up-plants` and
 * `eaten-plants`.
 */
export const seenSigns = /* @__PURE__ */ frozen([
  "torn-fins",
  "damaged-skin",
  "missing-animals",
  "missing-young",
  "gasping",
  "hiding",
  "thin",
  "chasing",
  "listless",
  "dug-up-plants",
  "eaten-plants",
] as const);

/** One of {@link seenSigns}. */
export type SeenSign = (typeof seenSigns)[number];

/** What a keeper sees of what a finding says to watch for: that first, then what comes of it. */
const sequels: Readonly<Record<Sign, readonly SeenSign[]>> = {
  "torn-fins": ["torn-fins", "damaged-skin", "hiding", "chasing", "missing-animals"],
  "damaged-skin": ["damaged-skin", "torn-fins", "hiding"],
  "missing-animals": ["missing-animals", "hiding"],
  "missing-young": ["missing-young"],
  chasing: ["chasing", "torn-fins", "damaged-skin", "hiding", "thin", "missing-animals"],
  hiding: ["hiding", "thin", "listless"],
  thin: ["thin"],
  gasping: ["gasping", "listless", "missing-animals"],
};

/** What shows by a rule besides what its findings say to watch for. */
export const besides = /* @__PURE__ */ frozen({
  temperature: ["listless", "gasping"],
  ph: ["listless"],
  "general-hardness": ["listless"],
  salinity: ["listless"],
  flow: ["listless"],
  predation: [],
  "acts-own-kind": [],
  "acts-look-alike": [],
  "acts-others": [],
  "fin-nipping": [],
  "mucus-grazing": [],
  "territory-contest": [],
  "size-and-pace": ["thin"],
  "feeding-competition": [],
  shyness: ["thin"],
  interbreeding: [],
  planting: ["dug-up-plants", "eaten-plants"],
  "water-temperature": ["listless", "gasping"],
  "water-ph": ["listless"],
  "water-hardness": ["listless"],
  "water-salinity": ["listless"],
  "carbon-dioxide": ["listless"],
  oxygen: [],
  "filter-nitrogen": ["listless"],
  "longest-run": ["listless"],
  footprint: ["chasing", "hiding"],
  zones: ["chasing", "hiding"],
  territories: [],
  "group-size": ["chasing", "hiding"],
  "sex-ratio": ["hiding"],
  "both-sexes": [],
  cover: ["chasing"],
  "open-water": ["listless"],
  ground: ["damaged-skin"],
  "hiding-places": ["chasing"],
  plants: [],
  "plants-at-risk": ["dug-up-plants", "eaten-plants"],
  "settling-company": [],
  feeding: [],
  lid: [],
  "flow-places": ["listless"],
  sensitive: ["listless"],
} as const satisfies Partial<Record<RuleId, readonly SeenSign[]>>);

/** A rule whose findings a keeper may see at work. */
export type ShownRule = keyof typeof besides;

/** Rules whose findings show by none of the signs. */
export const shownByNone = /* @__PURE__ */ frozen([
  "furnishing",
  "height",
  "cool-season",
  "season",
  "caution-floor",
  "caution-electricity",
  "caution-devices",
  "caution-hazards",
  "caution-zoonoses",
  "caution-law",
  "caution-release",
  "conditions-exclude",
] as const satisfies readonly Exclude<RuleId, ShownRule>[]);

/** Whether findings of a rule of the library show by some sign. */
export const isShown = (rule: string): rule is ShownRule => Object.hasOwn(besides, rule);

/** What may be in the water already that harms an animal sooner than others; no remedy, and no move with a net. */
export function harmInWater(finding: Finding): "ammonia-nitrite" | "soft-water" | undefined {
  const harm = finding.rule === "sensitive" ? finding.measures?.to?.value : undefined;
  return harm === "ammonia-nitrite" || harm === "soft-water" ? harm : undefined;
}

/** What shows where a finding is at work, what it says to watch for first; nothing of what a keeper would have to do first. */
export function signsOf(finding: Finding): readonly SeenSign[] {
  const { rule, watchFor } = finding;
  if (rule === "sensitive" && !harmInWater(finding)) return [];
  const own: readonly SeenSign[] = isShown(rule) ? besides[rule] : [];
  return [...new Set([...(watchFor ? sequels[watchFor] : []), ...own])];
}
