import type { Group, Plan } from "../../../plan";
import type { Asked, Has, OfficialRequirement, Untold } from "../../../standards";
import type { TankBase } from "../../../tank";
import type { Figure } from "../../figure";
import type { Block } from "../../layout";
import { alikeIn } from "../../matters/alike";
import type {
  DependsOn,
  LengthsTaken,
  RequirementMessages,
  ToldAsked,
  ToldHas,
  ToldOpen,
} from "../../messages/requirement-messages";
import type { Sayer } from "../teller";
import { answers } from "./checked-requirements";

const gravestFirst = (some: readonly OfficialRequirement[]) =>
  answers.flatMap((answer) => some.filter((one) => one.answer === answer));

/** Forces that bind whom they reach. */
const binding: readonly OfficialRequirement["force"][] = ["binding", "municipal"];

/** Requirements of one instrument; at least one. */
type OfInstrument = readonly [OfficialRequirement, ...OfficialRequirement[]];

/** Official requirements in the parts of a report: by instrument, the gravest first, each with its caution; and the closing. */
export function requirementBlocks(
  requirements: readonly OfficialRequirement[],
  { groups }: Plan,
  messages: RequirementMessages,
  sayer: Sayer,
): readonly Block[] {
  const { lead, none, closing } = messages.requirements;
  if (requirements.length === 0) return [{ lead: [none] }, { lead: [closing] }];
  const instruments = alikeIn(gravestFirst(requirements), (one) => [
    one.jurisdiction,
    one.instrument,
    one.date,
    one.caution,
  ]);
  const teller = { groups, messages, ...sayer };
  return [
    { lead: [lead] },
    ...instruments.flatMap((some) => instrumentTold(some, teller)),
    { lead: [closing] },
  ];
}

/** What it takes to tell requirements. */
type RequirementTeller = Sayer & {
  readonly groups: readonly Group[];
  readonly messages: RequirementMessages;
};

function instrumentTold(some: OfInstrument, teller: RequirementTeller): readonly Block[] {
  const { instrument, note, caution } = teller.messages.requirements;
  const [first] = some;
  const forces = [...new Set(some.map(({ force }) => force))];
  const notes = some.flatMap((one) => one.note ?? []);
  const shared = [...new Set(notes.filter((text, index) => notes.indexOf(text) !== index))];
  return [
    {
      title: instrument({ ...first, forces }),
      items: some.map((one) => requirementTold(one, forces.length > 1, shared, teller)),
    },
    { lead: [...shared.map((text, index) => note(index + 1, text)), caution(first.caution)] },
  ];
}

function requirementTold(
  one: OfficialRequirement,
  isMixed: boolean,
  shared: readonly string[],
  teller: RequirementTeller,
): string {
  const { answer, asks, article, force, basis, species, note, open, has } = one;
  const isUnread = open?.reason === "not-read" && basis === "read";
  const asked = one.asked && askedTold(one.asked, one, teller);
  const number = note === undefined ? 0 : shared.indexOf(note) + 1;
  return teller.messages.requirements.requirement({
    ...{ answer, asks, article },
    ...(species && { animals: teller.named(placesOf(species, teller)) }),
    ...(asked && { asked }),
    ...(has && { has: hasTold(has, one.asked, teller) }),
    dependsOn: answer === "depends" ? dependsOn(one) : [],
    ...(open && { open: openTold(open, one, teller) }),
    ...(isMixed && { binds: binding.includes(force) }),
    ...(!isUnread && { basis }),
    ...(note !== undefined && { note: number || note }),
  });
}

/** The places of the groups that are of these species. */
const placesOf = (species: readonly string[], { groups }: RequirementTeller): readonly number[] =>
  [...groups.keys()].filter((index) => species.includes(groups[index]?.species.id ?? ""));

function askedTold(
  asked: Asked,
  { has, species }: OfficialRequirement,
  { figure, groups }: RequirementTeller,
): ToldAsked {
  const { min, unit, by, beyond = false } = asked;
  const extent = extentOf(asked);
  const isUnknown = extent === "open" && min === 0;
  const concerned = groups.filter(
    (group) => group.species.taxonomy.kind === "fish" && (!species || species.includes(group.species.id)),
  );
  return {
    figure: isUnknown ? "" : figure(spanOf(asked), isMeasured(has) ? has : undefined),
    ...{ extent, beyond },
    isCount: unit === undefined,
    ...(by && { by: { length: by, taken: lengthsTaken(concerned) } }),
  };
}

function extentOf({ min, max }: Asked): ToldAsked["extent"] {
  if (max === undefined) return "open";
  return min === max ? "one" : "span";
}

/** What is asked as a figure: from the least to the most that it may be. */
const spanOf = ({ min, max, unit }: Asked): Figure => ({ min, max, unit });

/** How long fish are taken to be. */
function lengthsTaken(groups: readonly Group[]): LengthsTaken {
  const unsaid = groups.filter(({ length }) => length === undefined);
  if (unsaid.some(({ juveniles = 0 }) => juveniles > 0)) return "any";
  return unsaid.length > 0 ? "grown" : "planned";
}

type Measured = Exclude<Has, { readonly of: "shape of the base" }>;

const isMeasured = (has: Has | undefined): has is Measured => has !== undefined && "min" in has;

function hasTold(has: Has, asked: Asked | undefined, { figure, messages }: RequirementTeller): ToldHas {
  if (!isMeasured(has))
    return { of: has.of, figure: messages.requirements.shapes[has.value as TankBase["shape"]], isOne: false };
  return {
    of: has.of,
    figure: figure(has, asked && spanOf(asked)),
    isOne: has.max === 1,
    ...("sizes" in has && { sizes: has.sizes }),
  };
}

/** What a requirement depends on: lengths where what is asked is a span, sizes where what the plan has is one. */
function dependsOn({ asked, has }: OfficialRequirement): readonly DependsOn[] {
  const lengths: readonly DependsOn[] =
    asked?.by && asked.min !== asked.max ? [{ on: "lengths", length: asked.by }] : [];
  const sizes: readonly DependsOn[] =
    has && "sizes" in has && has.min !== has.max ? [{ on: "sizes", of: has.of }] : [];
  return [...lengths, ...sizes];
}

function openTold(open: Untold, { asked, has }: OfficialRequirement, teller: RequirementTeller): ToldOpen {
  if (open.reason === "missing")
    return {
      reason: open.reason,
      trait: teller.messages.traits[open.trait],
      of: teller.named(placesOf(open.species, teller)),
    };
  if (open.reason !== "not-given" || !asked || has) return { reason: open.reason };
  return { reason: open.reason, lacks: asked.unit === "dH" ? "hardness" : "height" };
}
