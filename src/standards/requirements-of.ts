import { comparisonOf } from "./comparison-of";
import type { Jurisdiction } from "./jurisdiction";
import type { OfficialRequirement } from "./official-requirement";
import type { SurveyedPlan } from "./surveyed-plan";

/** The rows of one jurisdiction, in the order of its file. */
export function requirementsOf(
  { id, name, instruments }: Jurisdiction,
  plan: SurveyedPlan,
): readonly OfficialRequirement[] {
  return instruments.flatMap(({ title, date, caution, requirements }) =>
    requirements
      .filter(({ covers }) => covers === "animals" || plan.fish.length > 0)
      .flatMap(({ rule, covers: _, id: requirement, note, ...said }) => {
        const comparison = comparisonOf(rule, plan);
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
