import type { PartialRange } from "../../../ranges";
import { type CoolSeason, type FigurePath, factAt, figurePaths } from "../../../species";
import { mostFresh } from "../../../species/inner";
import { beyond } from "../../messages/sentences";
import { type Part, paragraph, type Section, section, table } from "../parts";
import { sayings } from "../sayings";
import { type Telling, unitOf } from "../telling";
import { nameOf } from "../water-figures";

/** The water to keep it in, and what sources say of it beside each other. */
export function water(telling: Telling): readonly Section[] {
  const { known, messages, noted, remarks } = telling;
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
      noted("water.flow", flow && words.flow(flow.min, flow.max)),
      noted("water.oxygenNeed", oxygen && words.oxygen[oxygen]),
      noted("water.airBreathing", air && words.air(air.kind, air.from)),
      noted("water.coolSeason", cool !== undefined && cool !== "none" && coolSeason(telling, cool)),
    ),
    sayings(telling, figurePaths),
    remarks(["water.coolSeason", "water.flow", "water.oxygenNeed", "water.airBreathing"]),
  );
}

const coolSeason = ({ messages, size, span }: Telling, { min, max, months }: CoolSeason) =>
  messages.page.water.coolSeason(span("water.coolSeason", { min, max }), size("size.grownAt", months));

/** A row for each figure of water that is known. */
function kept({ profile, messages, span, write }: Telling): readonly Part[] {
  const { water: words } = messages.page;
  const rows = figurePaths.flatMap((path): readonly (readonly string[])[] => {
    const fact = factAt(profile, path);
    if (!fact || isFresh(path, fact.value.kept)) return [];
    const { kept: own, standIn, optimum, limit } = fact.value;
    const adopted = span(path, own);
    const others = (fact.also ?? [])
      .map((other) => span(path, other.kept))
      .filter((other) => other !== adopted);
    const row = [
      words.rows[nameOf(path)],
      standIn ? "" : adopted,
      span(path, optimum),
      limit ? beyond({ ...limit, ...unitOf(path) }, write, messages.ranges) : "",
      [...new Set(others)].join("; "),
    ];
    return row.slice(1).some(Boolean) ? [row] : [];
  });
  return table(words.table, words.columns, rows);
}

/** Fresh water needs no row of its own. */
const isFresh = (path: FigurePath, { max = Number.POSITIVE_INFINITY }: PartialRange) =>
  path === "water.salinity" && max <= mostFresh;
