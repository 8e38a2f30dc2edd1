import type { Measurable, Requirement, SpeciesTable } from "./jurisdiction";

/** A requirement that compares one thing. */
type Single = Omit<Requirement, "rule"> & { readonly rule: Measurable };

/** A requirement by itself; one with a table as one for each line, named after its species. */
export function singlesOf({ rule, ...said }: Requirement): readonly Single[] {
  if (!("table" in rule)) return [{ ...said, rule }];
  return linesOf(rule).map(({ at, ...line }) => ({
    ...said,
    id: `${said.id}/${line.species}`,
    article: `${said.article}, ${at}`,
    rule: line,
  }));
}

function linesOf(rule: SpeciesTable) {
  return rule.kind === "front-edges"
    ? rule.table.map((line) => ({ kind: "front-edge", ...line }) as const)
    : rule.table.map((line) => ({ kind: "own-group", ...line }) as const);
}
