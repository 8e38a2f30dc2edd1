import { type AdultLength, factAt, type Sex } from "../../../species";
import { lengthsOfSex, sexes } from "../../../species/inner";
import { measuredAlike, totalOf } from "../../total-length";
import { paragraph, type Section, section } from "../parts";
import type { Telling } from "../telling";

/** How large each sex grows, how soon, and how old it gets. */
export function size(telling: Telling): readonly Section[] {
  const { messages, noted, remarks, age } = telling;
  const { headings, size: words } = messages.page;
  const grownAt = ageWhenGrown(telling);
  return section(
    "size",
    headings.size,
    paragraph(
      noted("size.adultLength", lengthsTold(telling)),
      grownAt !== undefined && noted("size.grownAt", words.grownAt(age(grownAt))),
      noted("size.lifespan", lifespanTold(telling)),
    ),
    remarks([
      "size.adultLength",
      ...(grownAt === undefined ? [] : ["size.grownAt" as const]),
      "size.lifespan",
    ]),
  );
}

/**
 * At how many months it is grown. A curve that has it grow for more than half its life is not told: it is of slow fish in the
 * wild, or of a length that few reach, and nothing to look for in a tank.
 */
function ageWhenGrown({ profile, known }: Telling): number | undefined {
  const { value, basis } = factAt(profile, "size.grownAt") ?? {};
  const { usual, greatest } = known("size.lifespan") ?? {};
  const years = usual ?? greatest;
  const isLate = value !== undefined && years !== undefined && value > years * 6;
  return basis === "derived" && isLate ? undefined : value;
}

/** How long each sex grows; nothing where nobody knows. */
export function lengthsTold(telling: Telling): string {
  const lengths = telling.known("size.adultLength") ?? [];
  if (lengths.length === 0) return "";
  const told = sexes.filter((sex) => lengths.some((length) => length.sex === sex));
  const subjects: readonly (Sex | undefined)[] = told.length > 0 ? told : [undefined];
  return subjects.map((sex) => lengthOf(telling, sex, lengthsOfSex(lengths, sex))).join(" ");
}

/** How old it gets; nothing where nobody knows. */
export function lifespanTold({ known, messages, size: write }: Telling): string {
  const { usual, greatest } = known("size.lifespan") ?? {};
  if (usual === undefined && greatest === undefined) return "";
  return messages.page.size.lifespan(
    write("size.lifespan", usual),
    greatest === usual ? "" : write("size.lifespan", greatest),
  );
}

function lengthOf(
  { messages, write }: Telling,
  sex: Sex | undefined,
  lengths: readonly AdultLength[],
): string {
  const [alike, measure] = measuredAlike(lengths, sex);
  const usual = totalOf(alike, "usual", sex);
  const most = totalOf(alike, "greatest", sex);
  const isBeyond = most && (!usual || most.max > usual.max);
  return messages.page.size.length({
    ...(sex && { sex }),
    usual: write(usual && { min: usual.min, max: usual.max, unit: "cm" }),
    greatest: isBeyond ? write({ value: most.max, unit: "cm" }) : "",
    of: measure === "shell" || measure === "disc" ? measure : "whole",
  });
}
