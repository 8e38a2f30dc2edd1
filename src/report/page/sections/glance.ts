import type { Words } from "../../../compatibility";
import { headcount } from "../../../plan/inner";
import { lengthsMeant, mostFresh } from "../../../species/inner";
import { commonSides, sidesNeeded } from "../../matters/room";
import { traitText } from "../../profile/trait-text";
import { harmfulReach } from "../company/reach";
import { leastRoom } from "../company/room-of";
import { isGroupKnown, usualGroup } from "../company/usual-group";
import { list, type Part, paragraph, type Section, section, type Term, terms } from "../parts";
import type { Telling } from "../telling";
import { isGrave, toldActs } from "./acts";

/** Lengths in cm from which on it outgrows most homes, and ages to which few keepers look ahead: common practice. */
const large = 25;
const old = 15;

/** What there is to know before anything else, and the figures that a keeper looks up. */
export function glance(telling: Telling): readonly Section[] {
  const { page } = telling.messages;
  return section("glance", page.headings.glance, summary(telling), figures(telling), know(telling));
}

function summary(telling: Telling): readonly Part[] {
  const { profile, known, span, messages } = telling;
  return paragraph(
    messages.page.glance.summary({
      kind: profile.taxonomy.kind,
      living: known("social.living"),
      zones: known("space.zones") ?? [],
      length: usualLength(telling),
      temperature: span("water.temperature", known("water.temperature")?.kept),
    }),
  );
}

function usualLength({ known, size }: Telling): string {
  const lengths = known("size.adultLength") ?? [];
  if (lengths.length === 0) return "";
  const ends = lengths.filter(({ measure }) => measure !== "disc");
  const usual = lengthsMeant(ends.length > 0 ? ends : lengths, "usual").map(({ total }) => total.max);
  return size("size.adultLength", { min: Math.min(...usual), max: Math.max(...usual) });
}

function figures({ profile, known, size, span, messages, write }: Telling): readonly Part[] {
  const { terms: names, tank, number } = messages.page.glance;
  const isNumbered = isGroupKnown(profile);
  const animals = headcount(usualGroup(profile));
  const room = leastRoom(profile, animals);
  const living = known("social.living");
  const avoid = known("social.group")?.avoid;
  const amiss = avoid && avoid.max >= animals ? write(avoid) : "";
  const { usual, greatest } = known("size.lifespan") ?? {};
  const salinity = known("water.salinity")?.kept;
  const isSalty = salinity && (salinity.max ?? 1) > mostFresh;
  const sides = room.length === undefined ? commonSides(room.floor) : sidesNeeded(room, {});
  const told: readonly (readonly [keyof typeof names, string])[] = [
    ["pH", span("water.pH", known("water.pH")?.kept)],
    ["hardness", span("water.generalHardness", known("water.generalHardness")?.kept)],
    ["salinity", isSalty ? span("water.salinity", salinity) : ""],
    ["tank", sides && isNumbered ? tank(write(sides), animals) : ""],
    ["number", living && isNumbered ? number(animals, living, amiss) : ""],
    ["life", size("size.lifespan", usual ?? greatest)],
  ];
  return terms(told.flatMap(([name, text]): readonly Term[] => (text ? [[names[name], text]] : [])));
}

/** What should be known before anybody buys one, the gravest first. */
function know({ profile, known, size, messages, noted, write }: Telling): readonly Part[] {
  const { glance: words, behaviour, jurisdiction } = messages.page;
  const { incomplete = [], listings = [] } = profile;
  const greatest = Math.max(0, ...(known("size.adultLength") ?? []).map(({ total }) => total.max));
  const { usual, greatest: oldest } = known("size.lifespan") ?? {};
  const age = usual ?? oldest ?? 0;
  const reach = harmfulReach(profile);
  const rehoming = known("care.rehoming");
  const status = known("origin.conservation")?.status;
  const isRare = status && ["CR", "EN", "VU"].includes(status) && known("origin.supply") !== "farmed";
  const hazards = (...of: readonly Words["hazard"][]) =>
    of.filter((hazard) => known("care.hazards")?.includes(hazard)).map((hazard) => words.hazards[hazard]);
  const items = [
    incomplete.length > 0 && words.incomplete(incomplete.map((path) => messages.traits[path])),
    ...hazards("venom", "shock"),
    greatest >= large && words.grows(size("size.adultLength", Math.round(greatest))),
    reach !== undefined && words.hunts(size("size.adultLength", reach)),
    ...toldActs(known("temperament.acts") ?? [])
      .filter(isGrave)
      .map(behaviour.act),
    ...hazards("bite"),
    age >= old && words.lives(size("size.lifespan", age)),
    isRare && words.threatened(status),
    listings.length > 0 && words.laws([...new Set(listings.map((law) => jurisdiction(law.jurisdiction)))]),
    rehoming && noted("care.rehoming", traitText("care.rehoming", rehoming, messages, write)),
  ];
  return list(
    items.filter((item) => typeof item === "string" && item !== "") as readonly string[],
    words.know,
  );
}
