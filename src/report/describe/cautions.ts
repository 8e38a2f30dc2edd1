import type { Finding, RuleId, Verdict } from "../../compatibility";
import { numberOf } from "../figure";
import { type Alike, alikeIn } from "../matters/alike";
import { isBy, isCaution } from "../matters/by-rule";
import type { Messages } from "../messages/messages";
import { hazardsTold } from "./hazards-told";
import type { Teller } from "./teller";

/** What every keeper is told, whatever lives in the tank: told last, as one. */
const generalRules = [
  "caution-electricity",
  "caution-zoonoses",
  "caution-release",
] as const satisfies readonly RuleId[];

const hazardOf = (finding: Finding) =>
  finding.rule === "caution-hazards" ? finding.measures?.hazard?.value : undefined;

/** How many entries in the law a finding tells of, where it tells none by itself. */
const entriesOf = (finding: Finding) =>
  finding.rule === "caution-law" ? numberOf(finding.measures?.laws) : undefined;

/** Cautions about these animals and this tank, and what is said of every tank. */
interface Cautions {
  readonly own: readonly string[];
  readonly general: string;
}

/** The cautions, those of one kind in one sentence: venom tells of spines too. */
export function cautions(verdict: Verdict, teller: Teller, messages: Messages): Cautions {
  const all = verdict.findings.filter(({ rule }) => isCaution(rule));
  const venomous = new Set(all.filter((one) => hazardOf(one) === "venom").map(({ from }) => from));
  const own = all.filter(
    (finding) =>
      !isBy(finding, generalRules) && !(hazardOf(finding) === "spines" && venomous.has(finding.from)),
  );
  const usual = generalRules.flatMap((rule) => {
    const [first] = all.filter((finding) => finding.rule === rule);
    return first ? [teller.findings([first])] : [];
  });
  const kinds = alikeIn(own, (finding) => ({
    rule: finding.rule,
    hazard: hazardOf(finding),
    device: finding.rule === "caution-devices" ? finding.measures?.device?.value : undefined,
    from: lawAt(verdict, finding),
  }));
  return {
    own: [...new Set(kinds.flatMap((alike) => told(alike, verdict, teller, messages)))],
    general: usual.join(" "),
  };
}

/** The species whose laws are told apart: where the plan says where the tank stands. */
function lawAt({ parties }: Verdict, finding: Finding): string | undefined {
  const isOne = finding.rule === "caution-law" && entriesOf(finding) === undefined;
  return isOne && finding.from !== undefined ? parties[finding.from]?.id : undefined;
}

/**
 * How many entries in the law name the species that findings are about: those of a species once, however many groups of it
 * there are. The entries of a form hold those of its species.
 */
function entriesOn(laws: readonly Finding[], { parties }: Verdict): number {
  const most = new Map<string | undefined, number>();
  for (const finding of laws) {
    const id = finding.from === undefined ? undefined : parties[finding.from]?.id;
    most.set(id, Math.max(most.get(id) ?? 0, entriesOf(finding) ?? 0));
  }
  return [...most.values()].reduce((sum, next) => sum + next, 0);
}

function told(alike: Alike, verdict: Verdict, teller: Teller, messages: Messages): readonly string[] {
  const hazards = alike.filter((finding) => isBy(finding, ["caution-hazards"]));
  if (hazards.length > 0) return [hazardsTold(hazards, messages, teller)];
  const laws = alike.filter((finding) => isBy(finding, ["caution-law"]));
  if (laws.length === 0) return [teller.findings(alike)];
  const { whom } = teller.named(laws.map(({ from }) => from));
  const entries = entriesOn(laws, verdict);
  if (entries > 0) return [messages.lawsSomewhere(whom, entries)];
  return [...new Set(laws.map((finding) => teller.findings([finding])))];
}
