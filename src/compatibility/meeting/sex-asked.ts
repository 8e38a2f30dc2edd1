import type { Sex } from "../../species";
import { sexes } from "../../species/inner";
import type { Verdict } from "../verdict/verdict";

/** Of which sex a group of a plan has to be, or to stay, as a verdict has it; undefined where that is free. */
export function sexAsked({ findings, met }: Pick<Verdict, "findings" | "met">, of: number): Sex | undefined {
  for (const finding of [...met, ...findings]) {
    if (finding.weight !== "restricting" || finding.condition.on !== "group.sex") continue;
    const { of: about, wanted } = finding.condition;
    if (about === of && "oneOf" in wanted) return sexes.find((sex) => wanted.oneOf.includes(sex));
  }
  return undefined;
}
