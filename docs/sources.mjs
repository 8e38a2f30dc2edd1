// Writes docs/sources.md: every source, what was taken from it, and its own terms where it states them.
import { readdir, readFile } from "node:fs/promises";
import { allRecords } from "vivary/evidence";
import { traitPaths, traitTable } from "vivary/species";
import { written } from "./written.mjs";

const folder = new URL("../data/sources/", import.meta.url);
const sources = await Promise.all(
  (await readdir(folder))
    .sort()
    .map(async (file) => JSON.parse(await readFile(new URL(file, folder), "utf8"))),
);

/** What records took from each source: traits and species. */
const taken = new Map(
  sources.map(({ id }) => [id, { traits: new Set(), species: new Set(), statements: 0, read: 0 }]),
);
for (const record of allRecords) {
  for (const path of traitPaths) {
    const [section, name] = path.split(".");
    for (const { by } of record[section]?.[name] ?? []) {
      const source = record.sources[by];
      const from = source && taken.get(source.cite);
      if (!from) continue;
      from.traits.add(traitTable[path].label);
      from.species.add(record.taxonomy.name);
      from.statements += 1;
      if (!source.memory) from.read += 1;
    }
  }
}

const plain = (text) => String(text).replaceAll("|", "\\|");
const authors = ({ author = [] }) =>
  author.map(({ family, given, literal }) => literal ?? [family, given].filter(Boolean).join(" ")).join(", ");
const year = ({ issued }) => issued?.["date-parts"]?.[0]?.[0];
const place = ({ DOI, URL: url }) => (DOI ? `<https://doi.org/${DOI}>` : url ? `<${url}>` : "");

function entry(source) {
  const { traits, species, statements, read } = taken.get(source.id);
  const named = [...species].sort();
  const who = named.length > 4 ? `${named.length} species` : named.map((name) => `*${name}*`).join(", ");
  const container = source["container-title"];
  const volume = [source.volume, source.page].filter(Boolean).join(":");
  const head = [
    authors(source),
    year(source) && `(${year(source)})`,
    `**${plain(source.title)}**.`,
    container && `*${plain(container)}* ${volume}.`,
    !container && source.publisher,
    place(source),
  ].filter(Boolean);
  return [
    `### ${source.id}`,
    head.join(" "),
    `Taken: ${[...traits].sort().join(", ")}; ${who}; ${statements} statements, ${read === statements ? "all read" : `${read} read, ${statements - read} recalled`}.`,
    source.note && `${plain(source.note)}`,
  ]
    .filter(Boolean)
    .join("\n\n");
}

const text = `${[
  "# Sources",
  `Written from data/sources and the records by \`npm run pages\`: ${sources.length} sources. Facts and figures were taken, no sentences. Each keeps its own terms; where a source states them they stand with it. Bibliographic details are in part recalled.`,
  ...sources.map(entry),
].join("\n\n")}\n`;

await written("sources.md", text);
