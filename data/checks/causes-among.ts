import type { Problem } from "vivary/schema";
import { nearest } from "../reading/spelling";

/**
 * The problems of a record without those that follow from another one, which are told when that is mended, if they are still
 * there: what contradicts a line of a misspelt source, or a figure out of all measure; and a source that no line names, where
 * one names it misspelt.
 */
export function causesAmong(problems: readonly Problem[]): readonly Problem[] {
  const misspelt = problems.filter(isUnknownSource);
  const wild = problems.filter(({ code, path }) => code === "range" && path.includes("value"));
  const unclear = new Set([...misspelt, ...wild].map(({ path }) => traitAt(path)));
  const meant = new Set(misspelt.map(({ found }) => nearest(String(found), keysUnused(problems))));
  return problems.filter(
    (problem) =>
      !(problem.code === "conflict" && unclear.has(traitAt(problem.path))) &&
      !(isUnused(problem) && meant.has(String(problem.found))),
  );
}

/** A statement that names nobody who is known. */
const isUnknownSource = ({ path, code, found }: Problem) =>
  code === "word" && path.at(-1) === "by" && typeof found === "string";

/** A source by its key alone: no line names it. */
const isUnused = ({ path, code, found }: Problem) =>
  code === "word" && path.length === 2 && path[0] === "sources" && found === path[1];

const keysUnused = (problems: readonly Problem[]) =>
  problems.filter(isUnused).map(({ found }) => String(found));

/** The trait that a path leads to or into, of the species or of a form. */
const traitAt = (path: Problem["path"]) => path.slice(0, path[0] === "forms" ? 4 : 2).join("/");
