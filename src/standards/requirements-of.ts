import { comparisonOf } from "./comparison-of";
import type { Jurisdiction, Requirement } from "./jurisdiction";
import type { OfficialRequirement } from "./official-requirement";
import { singlesOf } from "./singles-of";
import type { SurveyedPlan } from "./surveyed-plan";

/** The rows of one jurisdiction, in the order of its file. */
export function requirementsOf(
  { id, name, instruments }: Jurisdiction,
  plan: SurveyedPlan,
): readonly OfficialRequirement[] {
  return instruments.flatMap(({ title, date, caution, requirements }) =>
    requirements
      .filter(({ covers }) => isAbout(covers, plan))
      .flatMap(singlesOf)
      .flatMap(({ rule, covers, id: requirement, note, ...said }) => {
        const comparison = comparisonOf(rule, plan, covers);
        if (!comparison) return [];
        return {
          id: `${id}/${requirement}`,
          jurisdiction: name,
          instrument: title,
          ...(date && { date }),
          ...said,
          ...comparison,
          ...(note && { note }),
          caution,
        };
      }),
  );
}

/** Whether any animals of a plan are of those that a text is about. */
function isAbout(covers: Requirement["covers"], { fish }: SurveyedPlan): boolean {
  if (covers === "animals") return true;
  return covers === "fish" ? fish.length > 0 : fish.some(({ young }) => young);
}
