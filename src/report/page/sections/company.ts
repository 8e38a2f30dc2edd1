import { preyReach } from "../../../compatibility/inner";
import { factAt, type SpeciesProfile } from "../../../species";
import type { CompanionReason, PreyLengths } from "../../messages/page-messages";
import { type Companion, sharedHome } from "../company/companions";
import { type FoundCompany, foundCompany } from "../company/found-company";
import { sharedTemperature } from "../company/shared-water";
import { usualGroup } from "../company/usual-group";
import { type Cell, list, type Part, paragraph, type Section, section } from "../parts";
import { isOfKeepers, notedStatements, notesOf } from "../remarks";
import { groupTold, namedAnimal, type Telling } from "../telling";

/** So many are named; of the others only how many there are. */
const mostNamed = 8;

/** Young and eggs among prey. */
const unborn = ["egg", "fry", "shrimplet", "young-snail", "young-crayfish", "young-crab", "tadpole"] as const;

/** Whom it goes with, whom it would eat, and who would leave it hungry; others are named only of the candidates. */
export function company(telling: Telling): readonly Section[] {
  const { profile, candidates, messages, remarks } = telling;
  const found = candidates.length > 0 ? foundCompany(profile, candidates) : undefined;
  return section(
    "company",
    messages.page.headings.company,
    found ? companions(telling, found) : [],
    paragraph(prey(telling)),
    found ? others(telling, found) : [],
    remarks(["predation.eats", "appearance.looks"]),
  );
}

function companions(telling: Telling, { own, tank, companions: found }: FoundCompany): readonly Part[] {
  const { candidates, messages, write } = telling;
  const { company: words } = messages.page;
  if (tank?.base.shape !== "rectangle") return [];
  const told = {
    who: groupTold(own, messages),
    tank: write({ value: tank.base.length, by: tank.base.width, unit: "cm" }),
    among: candidates.length,
  };
  if (found.length === 0) return paragraph(words.none(told));
  const titled = (title: string, companions: readonly Companion[]) =>
    list(
      companions.map((companion) => companionTold(telling, companion)),
      title,
    );
  return [
    ...paragraph(words.chosen(told)),
    ...titled(
      words.good,
      found.filter(({ mayBite }) => !mayBite),
    ),
    ...titled(
      words.watched,
      found.filter(({ mayBite }) => mayBite),
    ),
  ];
}

function companionTold(telling: Telling, { species, plan, reason }: Companion): Cell {
  const { messages } = telling;
  const { why, listed } = messages.page.company;
  const group = plan.groups[1] ?? usualGroup(species);
  const law = species.listings?.length ? `; ${listed}` : "";
  return [
    namedAnimal(species, messages, groupTold(group, messages)),
    `: ${why(reasonOf(telling, species, reason))}${law}.`,
  ];
}

function reasonOf(
  { profile, span }: Telling,
  species: SpeciesProfile,
  why: Companion["reason"],
): CompanionReason {
  switch (why) {
    case "elsewhere":
      return { why, zones: factAt(species, "space.zones")?.value ?? [] };
    case "same-home":
      return { why, region: sharedHome(profile, species) ?? "" };
    case "same-water":
      return { why, temperature: span("water.temperature", sharedTemperature(profile, species)) };
    default:
      return { why };
  }
}

/** What it eats of tank mates, up to which length, and what keepers remark on each. */
function prey({ profile, record, known, messages, size }: Telling): string {
  const { company: words } = messages.page;
  const eats = known("predation.eats");
  if (!eats) return "";
  const stated = notedStatements({ record, form: profile.form, messages }, "predation.eats").filter(
    isOfKeepers,
  );
  const notesOn = (...prey: readonly string[]) =>
    notesOf(stated.filter(({ value }) => prey.includes(preyOf(value))));
  const write = (length: number) => (Number.isFinite(length) ? size("predation.eats", length) : "");
  const told = new Map<string, PreyTold>();
  for (const { kind, eats: eaten, tries, eatsEelLike } of preyReach(profile)) {
    const lengths = {
      eaten: write(eaten),
      ...(tries > eaten && { tried: write(tries) }),
      ...(eatsEelLike > Math.max(eaten, tries) && { eelLike: write(eatsEelLike) }),
    };
    const notes = notesOn(kind);
    const key = JSON.stringify([lengths, notes]);
    told.set(key, { ...lengths, notes, kinds: [...(told.get(key)?.kinds ?? []), kind] });
  }
  const young = unborn.filter((one) => eats.some(({ prey: named }) => named === one));
  return [
    ...(eats.length > 0 ? [] : [words.eatsNothing]),
    ...[...told.values()].flatMap(({ notes, ...lengths }) => [words.eats(lengths), ...notes]),
    ...(young.length > 0 ? [words.eatsYoung(young)] : []),
    ...notesOn("", "none", ...unborn),
  ].join(" ");
}

/** Kinds of which the same is told. */
interface PreyTold extends PreyLengths {
  readonly notes: readonly string[];
}

/** The class of prey that a statement names; empty where it names none. */
function preyOf(value: unknown): string {
  if (typeof value === "object" && value !== null && "prey" in value) return String(value.prey);
  return typeof value === "string" ? value : "";
}

function others({ messages }: Telling, { relations }: FoundCompany): readonly Part[] {
  const { company: words } = messages.page;
  const named = (title: string, species: readonly SpeciesProfile[]) => {
    const names = species
      .map((one) => namedAnimal(one, messages))
      .sort((a, b) => a.name.localeCompare(b.name, messages.language));
    const shown = names.length > mostNamed + 1 ? names.slice(0, mostNamed) : names;
    const further = names.length - shown.length;
    return list([...shown.map((name) => [name]), ...(further > 0 ? [words.more(further)] : [])], title);
  };
  const { settlers, settled, prey: eaten, hunters, robbers, lookAlikes } = relations;
  return [
    ...named(words.settlers, settlers),
    ...named(words.settled, settled),
    ...named(words.prey, eaten),
    ...named(words.hunters, hunters),
    ...named(words.hungry, robbers),
    ...named(words.lookAlikes, lookAlikes),
  ];
}
