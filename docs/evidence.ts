// The page of the evidence: how well each trait is supported, where sources differ most, and the weakest records.
import { allSpecies } from "vivary/catalog";
import { allRecords, dataVersion } from "vivary/evidence";
import { jaccard } from "vivary/ranges";
import {
  type Basis,
  bases,
  basisOf,
  disagreement,
  essentialTraits,
  factAt,
  resolve,
  type SpeciesProfile,
  type SpeciesRecord,
  type Statements,
  statementsOf,
  type TraitPath,
  traitPaths,
  traitTable,
} from "vivary/species";
import { italic, page, table } from "./markdown";
import { recalled } from "./recalled";

const figures = ["water.temperature", "water.pH", "water.generalHardness"] as const;

export function evidencePage(): string {
  const disputes = figures
    .flatMap((path) => allRecords.flatMap((record) => disputesOf(record, path)))
    .sort((a, b) => a.shared - b.shared || inOrder(a.record.id, b.record.id));
  return page(
    "# The state of the evidence",
    `Written from the records by \`npm run pages\`: ${allSpecies.length} species and ${formsOf(allRecords).length} forms bred of them, data ${dataVersion}. *Published* was read at its source; *curated* blends several; *observed* is a keeper's signed observation; *memory* was recalled and waits to be read; *common practice* is what experienced keepers agree on and no source states; *derived* was computed, estimated, or stands in for what nobody stated.`,
    "## Statements",
    "Lines of the records, those with a note alone among them. A form states only what differs from its species. The share is that of all lines in the column.",
    table(["support", "of species", "of forms"], supports()),
    freeText(),
    "## Traits",
    "Species that have each trait, with their share of all species; how many of these by the weakest basis of the adopted fact; those whose sources differ; and forms that state it otherwise than their species.",
    table(
      ["trait", "path", "species", ...bases.map((basis) => basis.replace("-", " ")), "disputed", "forms"],
      traitPaths.map(traitRow),
    ),
    "## Where sources differ most",
    "Kept spans of temperature, pH and hardness of grown animals: the adopted one beside each other that stands. *Shared* is the width that both have over the width that they cover together (the Jaccard index): 1 where they are the same, 0 where they do not meet. It says how far two sources agree, not which is right; a wide span and a narrow one within it share little without contradicting each other. Averages are over such pairs; species with more sources weigh more. Spans that leave an end open are left out unless they do not meet.",
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
    "## What of the equations rests on memory",
    "Figures and references in the code that were recalled and not read, and what would settle each.",
    table(
      ["where", "what", "settled by"],
      recalled.map(({ file, what, settledBy }) => [`\`${file}\``, what, settledBy]),
    ),
  );
}

const inOrder = (a: string, b: string) => (a < b ? -1 : 1);
const share = (count: number, all: number) => `${count} (${Math.round((count / all) * 100)} %)`;

/** The forms of records, each with the record it belongs to. */
const formsOf = (records: readonly SpeciesRecord[]) =>
  records.flatMap((record) => Object.values(record.forms ?? {}).map((form) => ({ record, form })));

/** How many statements of species and of forms stand on each basis. */
function supports(): readonly (readonly string[])[] {
  const ofSpecies = allRecords.flatMap((record) => basesIn(record, record));
  const ofForms = formsOf(allRecords).flatMap(({ record, form }) => basesIn(form, record));
  const counted = (basis: Basis, found: readonly Basis[]) =>
    share(found.filter((one) => one === basis).length, found.length);
  return [
    ...bases.map((basis) => [basis.replace("-", " "), counted(basis, ofSpecies), counted(basis, ofForms)]),
    ["together", String(ofSpecies.length), String(ofForms.length)],
  ];
}

/** The basis of every statement that a record or a form makes. */
const basesIn = (stated: Statements, { sources }: SpeciesRecord): readonly Basis[] =>
  traitPaths.flatMap((path) => statementsOf(stated, path).map((statement) => basisOf(statement, sources)));

/** How much is left to those who may not use what forbids commercial use. */
function freeText(): string {
  const known = (profiles: readonly SpeciesProfile[]) =>
    profiles.flatMap((profile) => traitPaths.filter((path) => factAt(profile, path))).length;
  const free = allRecords.map((record) => resolve(record, { only: { commercial: true } }));
  const whole = free.filter(({ incomplete }) => !incomplete).length;
  return `Without the sources that forbid commercial use ${share(known(free), known(allSpecies))} of the facts of species are left, and ${share(whole, allSpecies.length)} of the species keep every essential trait.`;
}

/** A trait with the number of species that have it, by the basis of the adopted fact. */
function traitRow(path: TraitPath): readonly (string | number)[] {
  const facts = allSpecies.flatMap((profile) => factAt(profile, path) ?? []);
  const counts = bases.map((basis) => facts.filter((fact) => fact.basis === basis).length);
  const disputed = facts.filter(({ also }) => also).length;
  const forms = formsOf(allRecords).filter(({ form }) => statementsOf(form, path).length > 0).length;
  return [
    traitTable[path].label,
    `\`${path}\``,
    share(facts.length, allSpecies.length),
    ...counts,
    disputed,
    forms,
  ];
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
