import type { PartialRange } from "../../../ranges";
import type { Figures, TraitPath } from "../../../species";
import { factAt } from "../../../species";
import type { PageSource } from "../page-source";
import { type Cell, type Part, paragraph, type Section, section, table } from "../parts";
import { sayings } from "../sayings";
import type { Telling } from "../telling";

const figures = [
  "water.temperature",
  "water.pH",
  "water.generalHardness",
  "water.carbonateHardness",
  "water.salinity",
] as const;

/** The water to keep it in, and what sources say of it beside each other. */
export function water(telling: Telling, sources: readonly PageSource[]): readonly Section[] {
  const { known, messages, remarks, size } = telling;
  const { headings, water: words } = messages.page;
  const flow = known("water.flow");
  const oxygen = known("water.oxygenNeed");
  const air = known("water.airBreathing");
  const cool = known("water.coolSeason");
  return section(
    "water",
    headings.water,
    kept(telling),
    paragraph(
      flow && words.flow(flow.min, flow.max),
      oxygen && words.oxygen[oxygen],
      air && words.air(air.kind, air.from),
      cool !== undefined &&
        cool !== "none" &&
        words.coolSeason(
          size("water.coolSeason", { min: cool.min, max: cool.max }),
          cool.months === undefined ? "" : size("size.grownAt", cool.months),
        ),
    ),
    sayings(telling, figures, sources),
    remarks(["water.coolSeason", "water.flow", "water.oxygenNeed", "water.airBreathing"]),
  );
}

/** A row for each figure of water that is known. */
function kept({ profile, messages, size }: Telling): readonly Part[] {
  const { water: words } = messages.page;
  const capital = (text: string) => text.charAt(0).toLocaleUpperCase(messages.language) + text.slice(1);
  const rows = figures.flatMap((path): readonly (readonly Cell[])[] => {
    const fact = factAt(profile, path);
    if (!fact) return [];
    const { kept: span, standIn, optimum, limit } = fact.value;
    const row = [
      capital(messages.traits[path]),
      standIn ? "" : size(path, span),
      size(path, optimum),
      size(path, limit),
      (fact.also ?? [])
        .map((other) => alsoSaid(path, other, fact.value, size))
        .filter(Boolean)
        .join("; "),
    ];
    return row.slice(1).some(Boolean) ? [row] : [];
  });
  return table(words.table, words.columns, rows);
}

/** What another source gives in place of the span to keep it in. */
const alsoSaid = (
  path: TraitPath,
  other: Figures<PartialRange>,
  adopted: Figures<PartialRange>,
  size: Telling["size"],
): string => {
  const said = size(path, other.kept);
  return said === size(path, adopted.kept) ? "" : said;
};
