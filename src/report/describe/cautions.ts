import type { Finding, Verdict } from "../../compatibility";
import { folded } from "../matters/matters";
import type { Messages } from "../messages/messages";
import type { Alike, Teller } from "./teller";

/** How many laws on one species are told in full. */
const mostLaws = 2;

type MeasuresOfCautions = Readonly<Record<string, { readonly value: string | number } | undefined>>;

const measured = ({ measures = {} }: Finding, name: string) => (measures as MeasuresOfCautions)[name]?.value;

/** What every keeper is told, whatever lives in the tank: told last, as one. */
const general: readonly string[] = ["caution-electricity", "caution-zoonoses", "caution-release"];

/** Cautions about these animals and this tank, and what is said of every tank. */
interface Cautions {
  readonly own: readonly string[];
  readonly general: string;
}

/** The cautions, those of one kind in one sentence: venom tells of spines too. */
export function cautions(verdict: Verdict, teller: Teller, messages: Messages): Cautions {
  const all = verdict.findings.filter(({ rule }) => rule.startsWith("caution-"));
  const venomous = new Set(all.filter((one) => measured(one, "hazard") === "venom").map(({ from }) => from));
  const own = all.filter(
    (finding) =>
      !general.includes(finding.rule) &&
      !(measured(finding, "hazard") === "spines" && venomous.has(finding.from)),
  );
  const usual = general.flatMap((rule) => {
    const [first] = all.filter((finding) => finding.rule === rule);
    return first ? [teller.findings([first])] : [];
  });
  const kinds = folded(own, (finding) => ({
    rule: finding.rule,
    hazard: measured(finding, "hazard"),
    device: measured(finding, "device"),
    from: lawAt(verdict, finding),
  }));
  return {
    own: [...new Set(kinds.flatMap((alike) => told(alike, teller, messages)))],
    general: usual.join(" "),
  };
}

/** The species whose laws are told apart: where the plan says where the tank stands. */
function lawAt({ parties }: Verdict, finding: Finding): string | undefined {
  const isOne = finding.rule === "caution-law" && measured(finding, "laws") === undefined;
  return isOne && finding.from !== undefined ? parties[finding.from]?.id : undefined;
}

function told(alike: Alike, teller: Teller, messages: Messages): readonly string[] {
  const [{ rule }] = alike;
  if (rule === "caution-hazards") return [teller.hazards(alike)];
  if (rule !== "caution-law") return [teller.findings(alike)];
  const { whom } = teller.named(alike.map(({ from }) => from));
  const entries = alike.flatMap((finding) => {
    const laws = measured(finding, "laws");
    return typeof laws === "number" ? laws : [];
  });
  if (entries.length > 0)
    return [
      messages.lawsSomewhere(
        whom,
        entries.reduce((sum, next) => sum + next),
      ),
    ];
  const each = [...new Set(alike.map((finding) => teller.findings([finding])))];
  if (each.length <= mostLaws) return each;
  const places = alike.map((one) => String(measured(one, "jurisdiction") ?? ""));
  return [messages.laws(whom, [...new Set(places)])];
}
