import { outcomes } from "../../../compatibility";
import { preyReach } from "../../../compatibility/inner";
import { factAt, type SpeciesProfile } from "../../../species";
import type { CompanionReason } from "../../messages/page-messages";
import { type Companion, companionsOf, sharedHome } from "../company/companions";
import { relationsTo } from "../company/relations";
import { sharedTemperature } from "../company/shared-water";
import { typicalTank } from "../company/typical-tank";
import { headcount, usualGroup } from "../company/usual-group";
import { type Cell, list, type Part, paragraph, type Section, section, table } from "../parts";
import { namedAnimal, type Telling } from "../telling";

/** So many are named; of the others only how many there are. */
const mostNamed = 8;

/** Young and eggs among prey. */
const unborn = ["egg", "fry", "shrimplet", "young-snail", "young-crayfish", "young-crab", "tadpole"] as const;

/** Whom it goes with, whom it would eat, and who would leave it hungry; companions only from the candidates given. */
export function company(telling: Telling, candidates: readonly SpeciesProfile[]): readonly Section[] {
  const { headings } = telling.messages.page;
  return section(
    "company",
    headings.company,
    among(telling, candidates),
    prey(telling),
    others(telling, candidates),
  );
}

function among(telling: Telling, candidates: readonly SpeciesProfile[]): readonly Part[] {
  const { profile, messages, write, who } = telling;
  const { company: words } = messages.page;
  if (candidates.length === 0 || profile.incomplete) return [];
  const own = usualGroup(profile);
  const tank = typicalTank(profile, headcount(own));
  if (!tank) return [];
  const { base } = tank;
  const sides = base.shape === "rectangle" ? write({ value: base.length, by: base.width, unit: "cm" }) : "";
  const many = headcount(own);
  const told = {
    who: many === 1 ? messages.page.one(telling.name) : `${messages.page.count(many)} ${who}`,
    tank: sides,
    among: candidates.length,
  };
  const found = companionsOf(own, tank, candidates, outcomes([profile, ...candidates]));
  if (found.length === 0) return paragraph(words.none(told));
  const rows = found.map(({ species, plan, reason }): readonly Cell[] => [
    namedAnimal(species, messages),
    String(headcount(plan.groups[1] ?? { species })),
    words.why(reasonOf(telling, species, reason)),
  ]);
  return [...paragraph(words.chosen(told)), ...table(words.table, words.columns, rows)];
}

function reasonOf(
  { profile, messages, size }: Telling,
  species: SpeciesProfile,
  why: Companion["reason"],
): CompanionReason {
  if (why === "elsewhere") return { why, zones: factAt(species, "space.zones")?.value ?? [] };
  if (why === "same-home") return { why, region: messages.page.region(sharedHome(profile, species) ?? "") };
  if (why === "same-water")
    return { why, temperature: size("water.temperature", sharedTemperature(profile, species)) };
  return { why };
}

/** What it eats of tank mates, and up to which length. */
function prey({ profile, known, messages, size }: Telling): readonly Part[] {
  const { company: words } = messages.page;
  const eats = known("predation.eats");
  if (!eats) return [];
  if (eats.length === 0) return paragraph(words.eatsNothing);
  const named = new Set(eats.map((one) => one.prey));
  const young = unborn.filter((one) => named.has(one));
  const reach = preyReach(profile).filter(({ kind }) => kind !== "frog" || named.has("frog"));
  const write = (length: number) => (Number.isFinite(length) ? size("predation.eats", length) : "");
  return paragraph(
    ...reach.map(({ kind, eats: eaten, tries }) =>
      words.eats(kind, write(eaten), tries > eaten ? write(tries) : ""),
    ),
    young.length > 0 && words.eatsYoung(young),
  );
}

function others(telling: Telling, candidates: readonly SpeciesProfile[]): readonly Part[] {
  const { profile, messages } = telling;
  const { company: words } = messages.page;
  if (candidates.length === 0) return [];
  const {
    settlers,
    settled,
    prey: eaten,
    hunters,
    robbers,
    lookAlikes,
  } = relationsTo(profile, candidates, outcomes([profile, ...candidates]));
  const named = (title: string, species: readonly SpeciesProfile[]) => {
    const names = species
      .map((one) => namedAnimal(one, messages))
      .sort((a, b) => a.name.localeCompare(b.name, messages.language));
    const shown = names.length > mostNamed + 1 ? names.slice(0, mostNamed) : names;
    return list(
      [...shown, ...(names.length > shown.length ? [words.more(names.length - shown.length)] : [])],
      title,
    );
  };
  return [
    ...named(words.settlers, settlers),
    ...named(words.settled, settled),
    ...named(words.prey, eaten),
    ...named(words.hunters, hunters),
    ...named(words.hungry, robbers),
    ...named(words.lookAlikes, lookAlikes),
  ];
}
