// Writes docs/evidence.md: how well each trait is supported, where sources differ most, and the weakest records.
import { allSpecies } from "vivary/catalog";
import { allRecords } from "vivary/evidence";
import { jaccard } from "vivary/ranges";
import { disagreement, essentialTraits, traitPaths, traitTable } from "vivary/species";
import { table, written } from "./written.mjs";

const bases = ["published", "curated", "memory", "common-practice"];
const factOf = (profile, path) => {
  const [section, name] = path.split(".");
  return profile[section]?.[name];
};
const share = (count, all) => `${count} (${Math.round((count / all) * 100)} %)`;

/** Each trait with the number of species that have it, by the basis of the adopted fact. */
const byTrait = traitPaths.map((path) => {
  const facts = allSpecies.map((profile) => factOf(profile, path)).filter(Boolean);
  const counts = bases.map((basis) => facts.filter((fact) => fact.basis === basis).length);
  const disputed = facts.filter(({ also }) => also).length;
  return [traitTable[path].label, `\`${path}\``, share(facts.length, allSpecies.length), ...counts, disputed];
});

/** The kept spans of water that two sources give one species, with the part they share. */
const disputes = ["water.temperature", "water.pH", "water.generalHardness"]
  .flatMap((path) => allRecords.flatMap((record) => disputesOf(record, path)))
  .sort((a, b) => a.shared - b.shared || (a.record.id < b.record.id ? -1 : 1));

function disputesOf(record, path) {
  const kept = disagreement(record, path).filter(({ as }) => as === "kept");
  return kept.flatMap(({ standing }) =>
    standing.slice(1).flatMap((other) => {
      const [adopted] = standing;
      const shared = jaccard(adopted.value, other.value);
      return shared === undefined ? [] : [{ record, path, sources: [adopted.root, other.root], shared }];
    }),
  );
}

/** Whose figures differ from whose, and by how much on average. */
const pairs = new Map();
for (const { sources, shared } of disputes) {
  const names = [...sources].sort().join(" and ");
  pairs.set(names, [...(pairs.get(names) ?? []), shared]);
}
const rivals = [...pairs]
  .map(([names, found]) => [
    names,
    found.length,
    (found.reduce((sum, shared) => sum + shared, 0) / found.length).toFixed(2),
  ])
  .sort((a, b) => b[1] - a[1] || a[2] - b[2]);

/** A record is the weaker the more of its essential and water facts rest on common practice or are unknown. */
const weighed = [...new Set([...essentialTraits, "water.pH", "water.generalHardness"])];
const weakest = allSpecies
  .map((profile) => ({
    profile,
    weak: weighed.filter((path) => (factOf(profile, path)?.basis ?? "common-practice") === "common-practice"),
    unknown: traitPaths.filter((path) => !factOf(profile, path)).length,
  }))
  .sort(
    (a, b) =>
      b.weak.length - a.weak.length || b.unknown - a.unknown || (a.profile.id < b.profile.id ? -1 : 1),
  );

const statements = allRecords.flatMap((record) =>
  traitPaths.flatMap((path) => (factOf(record, path) ?? []).map((line) => ({ record, line }))),
);
const kindOf = ({ record, line }) => {
  if (line.by === "common-practice" || line.by === "curator") return line.by;
  return record.sources[line.by]?.memory ? "recalled" : "read";
};
const kinds = ["read", "recalled", "curator", "common-practice"].map((kind) => [
  kind,
  share(statements.filter((statement) => kindOf(statement) === kind).length, statements.length),
]);

const text = `${[
  "# The state of the evidence",
  `Written from the records by \`npm run pages\`: ${allSpecies.length} species, ${statements.length} statements. *Published* was read at its source; *memory* was recalled and waits to be read; *common practice* is what experienced keepers agree on and no source states.`,
  "## Statements",
  table(["support", "statements"], kinds),
  "## Traits",
  "Species that have each trait, by the weakest basis of the adopted fact, and those whose sources differ.",
  table(["trait", "path", "species", ...bases.map((basis) => basis.replace("-", " ")), "disputed"], byTrait),
  "## Where sources differ most",
  "Kept spans of temperature, pH and hardness; *shared* is the part of the two ranges that both have, from 0 to 1.",
  table(["sources", "figures compared", "shared on average"], rivals.slice(0, 12)),
  "The twenty that share least:",
  table(
    ["species", "trait", "adopted and other", "shared"],
    disputes
      .slice(0, 20)
      .map(({ record, path, sources, shared }) => [
        `*${record.taxonomy.name}*`,
        traitTable[path].label,
        sources.join(", "),
        shared.toFixed(2),
      ]),
  ),
  "## Weakest records",
  "The thirty whose essential traits and water rest most on common practice: the first to look for sources for.",
  table(
    ["species", "on common practice or unknown", "traits unknown"],
    weakest
      .slice(0, 30)
      .map(({ profile, weak, unknown }) => [
        `*${profile.taxonomy.name}*`,
        weak.map((path) => traitTable[path].label).join(", "),
        unknown,
      ]),
  ),
].join("\n\n")}\n`;

await written("evidence.md", text);
