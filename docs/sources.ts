// The page of the sources: each, what was taken from it, and its own terms where it states them.
import { Cite } from "@citation-js/core";
import "@citation-js/plugin-csl";
import { allRecords } from "vivary/evidence";
import type { Source } from "vivary/schema";
import { type Statement, type Statements, statementsOf, traitPaths, traitTable } from "vivary/species";
import { readFolder, root } from "../data/reading/files";
import { italic, page, plain } from "./markdown";

/** What records took from a source, for species and their forms. */
interface Taken {
  readonly traits: Set<string>;
  readonly species: Set<string>;
  statements: number;
  read: number;
}

export async function sourcesPage(): Promise<string> {
  const sources = (await readFolder(root, "sources")).map(({ json }) => json as Source);
  const taken = takenFrom();
  return page(
    "# Sources",
    "Written from data/sources and the records by `npm run pages`. Facts and figures were taken, no sentences. Each keeps its own terms; where a source states them they stand with it. Bibliographic details are in part recalled.",
    ...sources.map((source) => entry(source, taken.get(source.id))),
  );
}

function takenFrom(): ReadonlyMap<string, Taken> {
  const taken = new Map<string, Taken>();
  for (const record of allRecords) {
    const stated: readonly Statements[] = [record, ...Object.values(record.forms ?? {})];
    for (const path of traitPaths) {
      for (const { by } of stated.flatMap((one): readonly Statement[] => statementsOf(one, path))) {
        const source = record.sources[by];
        if (!source) continue;
        const from = taken.get(source.cite) ?? {
          traits: new Set(),
          species: new Set(),
          statements: 0,
          read: 0,
        };
        from.traits.add(traitTable[path].label);
        from.species.add(record.taxonomy.name);
        from.statements += 1;
        if (!source.memory) from.read += 1;
        taken.set(source.cite, from);
      }
    }
  }
  return taken;
}

function entry(source: Source, taken: Taken | undefined): string {
  const { note, ...cited } = source;
  const citation = new Cite(cited).format("bibliography", { format: "text", template: "apa", lang: "en-US" });
  return [
    `## ${source.id}`,
    plain(citation.trim()),
    ...(taken ? [takenText(taken)] : []),
    ...(note === undefined ? [] : [plain(note)]),
  ].join("\n\n");
}

function takenText({ traits, species, statements, read }: Taken): string {
  const named = [...species].sort();
  const who = named.length > 4 ? `${named.length} species` : named.map(italic).join(", ");
  const how = read === statements ? "all read" : `${read} read, ${statements - read} recalled`;
  return `Taken: ${[...traits].sort().join(", ")}; ${who}; ${statements} statements, ${how}.`;
}
