import { version } from "../../../package.json";
import { frozen, ownCopy } from "../../frozen";
import { gathered } from "../../gathered";
import { dataVersion } from "../../generated";
import { type CheckedParty, isUnchangeable } from "../../plan/inner";
import { rankQuestions } from "../engine/answers/rank-questions";
import type { AssessWith } from "../engine/rule/rule";
import type { Subject } from "../engine/sides/subject";
import { askedBy, jointConditions } from "./joint-conditions";
import type { Said } from "./said";
import { mayBeLost, type Together } from "./taken-together";
import type { Finding, Verdict, VerdictParty } from "./verdict";
import { withExcludes } from "./with-excludes";

/** The verdict that the judgements of all rules come to. */
export function verdictOf(
  subjects: readonly Subject[],
  said: readonly Said[],
  { outcome, bounds, excluding }: Together,
  { rules, thresholds }: AssessWith,
): Verdict {
  const judged = gathered(said, ({ findings }) => findings);
  const met = gathered(said, (each) => each.met);
  const joint = jointConditions([...judged, ...met.filter(mayBeLost)]);
  const asked = askedBy(joint, judged.length);
  const mayExclude = outcome === "unsuitable" || outcome === "undetermined";
  return frozen({
    outcome,
    bounds,
    parties: subjects.map(({ party }) => verdictParty(party)),
    // The engine runs any rule; that a finding is of one of the library's or of an app's was checked with the rules.
    findings: [...judged, ...excluding] as readonly Finding[],
    conditions: mayExclude ? withExcludes(asked) : asked,
    met: met as readonly Finding[],
    open: rankQuestions(gathered(said, ({ judgements }) => judgements)),
    made: { version, data: dataVersion, rules: rules.map(({ id }) => id), thresholds },
  });
}

/** How a verdict names a party. By what it shows nobody can change a profile. */
function verdictParty({ animals, species, groupId }: CheckedParty): VerdictParty {
  const { kind: _, family: __, order: ___, kin: ____, listings: _____, some: ______, ...told } = animals;
  return {
    ...(groupId !== undefined && { groupId }),
    ...told,
    name: species.taxonomy.name,
    names: isUnchangeable(species) ? species.names : ownCopy(species.names),
  };
}
