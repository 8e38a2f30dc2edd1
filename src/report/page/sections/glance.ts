import { lengthsMeant } from "../../../species/inner";
import { harmfulReach } from "../company/reach";
import { list, type Part, paragraph, type Section, section, type Term, terms } from "../parts";
import type { Telling } from "../telling";
import { graveActs } from "./acts";
import { roomOf } from "./room";

/** Lengths from which on a fish outgrows most homes, and ages to which few keepers look ahead: common practice. */
const large = 25;
const old = 15;

/** What there is to know before anything else, and the figures that a keeper looks up. */
export function glance(telling: Telling): readonly Section[] {
  const { messages } = telling;
  const { page } = messages;
  return section("glance", page.headings.glance, summary(telling), figures(telling), know(telling));
}

const usualLength = ({ known, size }: Telling) => {
  const lengths = known("size.adultLength");
  if (!lengths || lengths.length === 0) return "";
  const usual = lengthsMeant(lengths, "usual").map(({ length }) => length);
  return size("size.adultLength", { min: Math.min(...usual), max: Math.max(...usual) });
};

function summary(telling: Telling): readonly Part[] {
  const { profile, known, size, messages } = telling;
  return paragraph(
    messages.page.glance.summary({
      kind: profile.taxonomy.kind,
      living: known("social.living"),
      zones: known("space.zones") ?? [],
      length: usualLength(telling),
      temperature: size("water.temperature", known("water.temperature")?.kept),
    }),
  );
}

function figures(telling: Telling): readonly Part[] {
  const { known, size, messages } = telling;
  const { terms: names, tank, number } = messages.page.glance;
  const room = roomOf(telling);
  const least = known("social.group")?.least ?? (known("social.living") ? 1 : undefined);
  const { usual, greatest } = known("size.lifespan") ?? {};
  const salinity = known("water.salinity")?.kept;
  const told: readonly (readonly [keyof typeof names, string])[] = [
    ["pH", size("water.pH", known("water.pH")?.kept)],
    ["hardness", size("water.generalHardness", known("water.generalHardness")?.kept)],
    ["salinity", salinity && (salinity.max ?? 1) > 0 ? size("water.salinity", salinity) : ""],
    ["tank", room ? tank(room.sides || room.length, room.animals) : ""],
    ["number", least === undefined ? "" : number(least, known("social.living"))],
    ["life", size("size.lifespan", usual ?? greatest)],
  ];
  return terms(told.flatMap(([name, text]): readonly Term[] => (text ? [[names[name], text]] : [])));
}

/** What should be known before anybody buys one, the gravest first. */
function know(telling: Telling): readonly Part[] {
  const { profile, known, size, messages } = telling;
  const { glance: words } = messages.page;
  const { incomplete = [], listings = [] } = profile;
  const greatest = Math.max(0, ...(known("size.adultLength") ?? []).map(({ total }) => total.max));
  const { usual, greatest: oldest } = known("size.lifespan") ?? {};
  const age = usual ?? oldest ?? 0;
  const reach = harmfulReach(profile);
  const status = known("origin.conservation")?.status;
  const threatened = status && ["CR", "EN", "VU"].includes(status) && known("origin.supply") !== "farmed";
  const rehoming = known("care.rehoming");
  const items = [
    incomplete.length > 0 && words.incomplete(incomplete.map((path) => messages.traits[path])),
    ...(known("care.hazards") ?? [])
      .filter((hazard) => hazard !== "spines")
      .map((hazard) => words.hazards[hazard]),
    greatest >= large && words.grows(size("size.adultLength", Math.round(greatest))),
    graveActs(telling) && words.harms,
    reach !== undefined && words.hunts(size("size.adultLength", reach)),
    age >= old && words.lives(size("size.lifespan", age)),
    threatened && words.threatened(messages.words.conservation[status]),
    listings.length > 0 &&
      words.laws([...new Set(listings.map(({ jurisdiction }) => messages.page.jurisdiction(jurisdiction)))]),
    rehoming !== undefined && messages.page.readsNotes && rehoming,
  ];
  return list(
    items.filter((item) => typeof item === "string"),
    words.know,
  );
}
