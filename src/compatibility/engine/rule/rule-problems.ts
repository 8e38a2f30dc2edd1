import type { Problem } from "../../../errors";
import { isReading } from "../../../plan/inner";
import { traitPaths } from "../../../species";
import { counting } from "../../animals/crowd";
import { weighing } from "../../animals/stock";
import { numbers } from "../../threshold-values";
import type { Rule, RuleWay } from "./rule";
import { isWeight } from "./weight";

type Path = Problem["path"];

const ways: Readonly<Record<RuleWay, readonly string[]>> = {
  mutual: ["from", "to"],
  "each-way": ["from", "to"],
  "each-group": ["from"],
  "all-groups": ["from"],
  once: [],
};

const kinds: readonly unknown[] = ["one-species", "two-species"] satisfies Rule["between"][];

/** What is missing or wrong in what should be a rule. */
export function ruleProblems(rule: unknown, path: Path): readonly Problem[] {
  const {
    id,
    way,
    between,
    sums,
    judge,
    mayAsk,
    mayYield,
    measures,
    reads = [],
    mayAdd = [],
    mayRestrict = [],
    decidesBy = [],
    ...traits
  } = Object(rule);
  const isWay = typeof way === "string" && Object.hasOwn(ways, way);
  const roles = isWay ? ways[way as RuleWay] : ["from", "to"];
  return [
    refuse(!isId(id), [...path, "id"], "lower-case words joined by hyphens", id),
    refuse(!isWay, [...path, "way"], `one of ${Object.keys(ways).join(", ")}`, way),
    refuse(
      between !== undefined && !(roles.includes("to") && kinds.includes(between)),
      [...path, "between"],
      `of a rule of pairs one of ${kinds.join(", ")}`,
      between,
    ),
    refuse(
      sums !== undefined && (roles.includes("to") || !isSumming(sums)),
      [...path, "sums"],
      "of a rule of plans weighing or counting",
      sums,
    ),
    refuse(typeof judge !== "function", [...path, "judge"], "a function", judge),
    refuse(
      mayAsk !== undefined && typeof mayAsk !== "function",
      [...path, "mayAsk"],
      "a function that gives conditions",
      mayAsk,
    ),
    refuse(
      !Array.isArray(mayYield) || mayYield.length === 0 || !mayYield.every(isWeight),
      [...path, "mayYield"],
      "a list of blocking, restricting, advisory, favourable",
      mayYield,
    ),
    refuse(!isTable(measures), [...path, "measures"], "a unit or kind of words by name", measures),
    refuse(
      !Array.isArray(reads) || !reads.every(isReading),
      [...path, "reads"],
      "names of facts of a plan such as tank.footprint",
      reads,
    ),
    refuse(!isTraits(mayAdd), [...path, "mayAdd"], "a list of trait paths such as water.temperature", mayAdd),
    refuse(
      !isTraits(mayRestrict),
      [...path, "mayRestrict"],
      "a list of trait paths such as water.temperature",
      mayRestrict,
    ),
    refuse(
      !Array.isArray(decidesBy) ||
        !decidesBy.every((name: unknown) => typeof name === "string" && Object.hasOwn(numbers, name)),
      [...path, "decidesBy"],
      "names of thresholds",
      decidesBy,
    ),
    ...(["needs", "uses", "tells"] as const).flatMap((name) =>
      traitProblems(traits[name], roles, [...path, name]),
    ),
  ].flat();
}

const isId = (id: unknown) => typeof id === "string" && /^[a-z]+(-[a-z0-9]+)*$/.test(id);

const isTable = (measures: unknown) =>
  measures === undefined ||
  (typeof measures === "object" &&
    measures !== null &&
    Object.values(measures).every((kind) => typeof kind === "string" || Array.isArray(kind)));

const isSumming = (sums: unknown) => sums === weighing || sums === counting;

const isTraits = (paths: unknown) =>
  Array.isArray(paths) && paths.every((trait) => traitPaths.includes(trait));

function traitProblems(sides: unknown, roles: readonly string[], path: Path): readonly Problem[] {
  if (sides === undefined) return [];
  return Object.entries(Object(sides)).flatMap(([role, paths]) => [
    ...refuse(
      !roles.includes(role),
      [...path, role],
      roles.join(" and ") || "nothing, since it sees no party",
      role,
    ),
    ...refuse(!isTraits(paths), [...path, role], "a list of trait paths such as water.temperature", paths),
  ]);
}

function refuse(wrong: boolean, path: Path, expected: string, found: unknown): readonly Problem[] {
  return wrong ? [{ path, code: "type", expected, found }] : [];
}
