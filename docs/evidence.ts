// The page of the evidence: how well each trait is supported, where sources differ most, and the weakest records.
import { allSpecies } from "vivary/catalog";
import { allRecords } from "vivary/evidence";
import { jaccard } from "vivary/ranges";
import {
  bases,
  basisOf,
  disagreement,
  essentialTraits,
  factAt,
  type SpeciesProfile,
  type SpeciesRecord,
  statementsOf,
  type TraitPath,
  traitPaths,
  traitTable,
} from "vivary/species";
import { italic, page, table } from "./markdown";

const figures = ["water.temperature", "water.pH", "water.generalHardness"] as const;

export function evidencePage(): string {
  const disputes = figures
    .flatMap((path) => allRecords.flatMap((record) => disputesOf(record, path)))
    .sort((a, b) => a.shared - b.shared || inOrder(a.record.id, b.record.id));
  return page(
    "# The state of the evidence",
    `Written from the records by \`npm run pages\`: ${allSpecies.length} species. *Published* was read at its source; *curated* blends several; *observed* is a keeper's signed observation; *memory* was recalled and waits to be read; *common practice* is what experienced keepers agree on and no source states; *derived* was computed, estimated, or stands in for what nobody stated.`,
    "## Statements",
    table(["support", "statements"], supports()),
    "## Traits",
    "Species that have each trait, by the weakest basis of the adopted fact, and those whose sources differ.",
    table(
      ["trait", "path", "species", ...bases.map((basis) => basis.replace("-", " ")), "disputed"],
      traitPaths.map(traitRow),
    ),
    "## Where sources differ most",
    "Kept spans of temperature, pH and hardness; *shared* is the part of the two ranges that both have, from 0 to 1.",
    table(["sources", "figures compared", "shared on average"], rivals(disputes).slice(0, 12)),
    "The twenty that share least:",
    table(
      ["species", "trait", "adopted and other", "shared"],
      disputes
        .slice(0, 20)
        .map(({ record, path, sources, shared }) => [
          italic(record.taxonomy.name),
          traitTable[path].label,
          sources.join(", "),
          shared.toFixed(2),
        ]),
    ),
    "## Weakest records",
    "The thirty whose essential traits and water rest most on common practice, or on what stands in: the first to look for sources for.",
    table(["species", "on common practice, derived or unknown", "traits unknown"], weakest().slice(0, 30)),
  );
}

const inOrder = (a: string, b: string) => (a < b ? -1 : 1);
const share = (count: number, all: number) => `${count} (${Math.round((count / all) * 100)} %)`;

/** How many statements stand on each basis. */
function supports(): readonly (readonly [support: string, statements: string])[] {
  const kinds = allRecords.flatMap((record) =>
    traitPaths.flatMap((path) =>
      statementsOf(record, path).map((statement) => basisOf(statement, record.sources)),
    ),
  );
  return bases.map((basis) => [
    basis.replace("-", " "),
    share(kinds.filter((found) => found === basis).length, kinds.length),
  ]);
}

/** A trait with the number of species that have it, by the basis of the adopted fact. */
function traitRow(path: TraitPath): readonly (string | number)[] {
  const facts = allSpecies.flatMap((profile) => factAt(profile, path) ?? []);
  const counts = bases.map((basis) => facts.filter((fact) => fact.basis === basis).length);
  const disputed = facts.filter(({ also }) => also).length;
  return [traitTable[path].label, `\`${path}\``, share(facts.length, allSpecies.length), ...counts, disputed];
}

interface Dispute {
  readonly record: SpeciesRecord;
  readonly path: TraitPath;
  readonly sources: readonly [adopted: string, other: string];
  readonly shared: number;
}

/** The kept spans of water that two sources give one species, with the part they share. */
function disputesOf(record: SpeciesRecord, path: (typeof figures)[number]): readonly Dispute[] {
  const kept = disagreement(record, path).filter(({ as }) => as === "kept");
  return kept.flatMap(({ standing: [adopted, ...others] }) =>
    others.flatMap((other) => {
      const shared = adopted && jaccard(adopted.value, other.value);
      return !adopted || shared === undefined
        ? []
        : [{ record, path, sources: [adopted.root, other.root], shared }];
    }),
  );
}

/** Whose figures differ from whose, and by how much on average. */
function rivals(disputes: readonly Dispute[]): readonly (readonly [string, number, string])[] {
  const pairs = new Map<string, readonly number[]>();
  for (const { sources, shared } of disputes) {
    const names = [...sources].sort().join(" and ");
    pairs.set(names, [...(pairs.get(names) ?? []), shared]);
  }
  return [...pairs]
    .map(([names, found]) => [names, found.length, mean(found).toFixed(2)] as const)
    .sort((a, b) => b[1] - a[1] || Number(a[2]) - Number(b[2]));
}

const mean = (numbers: readonly number[]) =>
  numbers.reduce((sum, number) => sum + number, 0) / numbers.length;

/** A record is the weaker the more of its essential and water facts rest on common practice, are derived or unknown. */
function weakest(): readonly (readonly (string | number)[])[] {
  const weighed = [...new Set([...essentialTraits, ...figures])];
  const isWeak = (profile: SpeciesProfile) => (path: TraitPath) =>
    ["common-practice", "derived"].includes(factAt(profile, path)?.basis ?? "derived");
  return allSpecies
    .map((profile) => ({
      profile,
      weak: weighed.filter(isWeak(profile)),
      unknown: traitPaths.filter((path) => !factAt(profile, path)).length,
    }))
    .sort(
      (a, b) => b.weak.length - a.weak.length || b.unknown - a.unknown || inOrder(a.profile.id, b.profile.id),
    )
    .map(({ profile, weak, unknown }) => [
      italic(profile.taxonomy.name),
      weak.map((path) => traitTable[path].label).join(", "),
      unknown,
    ]);
}
