import { finite, listOf, notNegative, objectOf, oneOf } from "../../../checks";
import { ofPart, refusal } from "../../../errors";
import type { Plan } from "../../../plan";
import { ends } from "../../../ranges/inner";
import type { Asked, Has, OfficialRequirement, Untold } from "../../../standards";
import type { RequirementMessages } from "../../messages/requirement-messages";
import { checkSize, checkTexts } from "../checked-verdict";

/** Answers, the gravest first. */
export const answers: readonly OfficialRequirement["answer"][] = [
  "not-met",
  "depends",
  "undetermined",
  "met",
];
const reasons: readonly Untold["reason"][] = ["missing", "not-given", "no-figure", "not-read"];
const units = ["L", "cm", "m2", "dH"];
const lengths: readonly NonNullable<Asked["by"]>[] = [
  "present standard length",
  "present total length",
  "adult total length",
];
/** What is had in a number, with its unit. */
const unitsHad: Readonly<Record<Exclude<Has["of"], "shape of the base">, string | undefined>> = {
  "gross volume": "L",
  "water volume": "L",
  "water volume to gross volume": "L",
  length: "cm",
  width: "cm",
  depth: "cm",
  "water depth": "cm",
  "front edge": "cm",
  floor: "m2",
  "general hardness": "dH",
  animals: undefined,
};

/** The requirements themselves, or an InvalidInputError where they are none that can be told, or are of another plan. */
export const checkedRequirements = (
  requirements: readonly OfficialRequirement[],
  { groups }: Plan,
  messages: RequirementMessages,
): readonly OfficialRequirement[] => {
  const ids = groups.map(({ species }) => species.id);
  for (const [index, one] of listOf(requirements, "requirements").entries())
    ofPart(["requirements", index], () => checkRequirement(one, ids, messages));
  return requirements;
};

function checkRequirement(
  one: OfficialRequirement,
  ids: readonly string[],
  messages: RequirementMessages,
): void {
  const { jurisdiction, instrument, article, asks, caution, date = "", note = "" } = objectOf(one, "");
  for (const [name, text] of Object.entries({ jurisdiction, instrument, article, asks, caution, date, note }))
    checkTexts([text], name);
  const { species, asked, has, answer, open, force, basis } = one;
  oneOf(force, Object.keys(messages.requirements.forces), "force");
  oneOf(basis, ["read", "memory"], "basis");
  oneOf(answer, answers, "answer");
  if (species !== undefined) checkSpecies(species, ids, "species");
  if (asked !== undefined) ofPart(["asked"], () => checkAsked(objectOf(asked, "")));
  if (has !== undefined) ofPart(["has"], () => checkHas(objectOf(has, ""), messages));
  if (answer === "undetermined" || open !== undefined)
    ofPart(["open"], () => checkOpen(objectOf(open as Untold, ""), ids, messages));
  if ((answer === "not-met" || answer === "depends") && has === undefined)
    throw refusal("has", "what the plan has, since it was compared", has, "conflict");
}

function checkSpecies(species: readonly string[], ids: readonly string[], at: string): void {
  for (const [index, id] of listOf(species, at).entries()) oneOf(id, ids, `${at}[${index}]`);
}

function checkAsked(asked: Asked): void {
  const { min, max = min, unit, by } = asked;
  notNegative(min, "min");
  finite(max, "max");
  ends(asked, "");
  checkSize(asked, "");
  if (unit !== undefined) oneOf(unit, units, "unit");
  if (by !== undefined) oneOf(by, lengths, "by");
}

function checkHas(has: Has, { requirements }: RequirementMessages): void {
  if (has.of === "shape of the base") {
    oneOf(has.value, Object.keys(requirements.shapes), "value");
    return;
  }
  oneOf(has.of, Object.keys(unitsHad), "of");
  finite(has.min, "min");
  finite(has.max, "max");
  ends(has, "");
  checkSize(has, "");
  if (has.unit !== unitsHad[has.of])
    throw refusal("unit", unitsHad[has.of] ?? "no unit for a number of animals", has.unit, "word");
  if ("sizes" in has) oneOf(has.sizes, ["outer", "inner"], "sizes");
}

function checkOpen(open: Untold, ids: readonly string[], { traits }: RequirementMessages): void {
  oneOf(open.reason, reasons, "reason");
  if (open.reason !== "missing") return;
  oneOf(open.trait, Object.keys(traits), "trait");
  checkSpecies(open.species, ids, "species");
}
