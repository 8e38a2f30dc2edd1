import type {
  Condition,
  FactName,
  Finding,
  OpenQuestion,
  Quantity,
  Verdict,
  VerdictParty,
} from "../compatibility";
import { refusal } from "../errors";
import { jointCondition } from "./joint-condition";
import { type Block, markdown, plainText } from "./layout";
import { english } from "./messages/english";
import type { Messages, Told } from "./messages/messages";
import { type Quantities, quantities, type UnitSystem } from "./units";

/** How a verdict is written. */
export interface DescribeOptions {
  /** Plain text in lines of at most 80 columns, or Markdown. Default `text`. */
  readonly format?: "text" | "markdown" | undefined;
  /** Default `metric`. */
  readonly units?: UnitSystem | undefined;
  /** The words of another language, in place of English. */
  readonly messages?: Messages | undefined;
}

/**
 * A verdict in words: the answer, its reasons with their figures and conditions, what is not certain, what is already
 * met, and the cautions. Text from records is escaped in Markdown.
 *
 * @throws InvalidInputError for an unknown format or unit system.
 *
 * @example
 * ```ts
 * import { assessPair } from "vivary/compatibility";
 * import bettaSplendens from "vivary/catalog/betta-splendens";
 * import { describe } from "vivary/report";
 *
 * const male = { species: bettaSplendens, sex: "male" } as const;
 * describe(assessPair(male, male)).split(":")[0]; // => "Unsuitable"
 * ```
 */
export function describe(verdict: Verdict, options: DescribeOptions = {}): string {
  const { format = "text", units = "metric", messages = english } = options;
  const formats = { text: plainText, markdown };
  if (!Object.hasOwn(formats, format)) throw refusal("format", "text or markdown", format);
  return formats[format](blocksOf(new Teller(verdict, messages, quantities(units))));
}

/** Puts the parts of one verdict into sentences. */
class Teller {
  constructor(
    readonly verdict: Verdict,
    readonly messages: Messages,
    private readonly quantities: Quantities,
  ) {}

  party(index: number | undefined): string {
    const party = index === undefined ? undefined : this.verdict.parties[index];
    return party ? nameOf(party) : "";
  }

  /** One sentence for findings that differ only in the party they fall on. */
  findings(alike: Alike): string {
    const { rules, otherRule, list } = this.messages;
    const [finding] = alike;
    const { measures = {} } = finding;
    const measure = (name: string): Quantity | undefined =>
      Object.hasOwn(measures, name) ? measures[name] : undefined;
    const told: Told = {
      weight: finding.weight,
      from: list(distinct(alike.map(({ from }) => this.party(from))).filter(Boolean)),
      to: list(alike.map(({ to }) => this.party(to)).filter(Boolean)),
      measure: (name) => this.measure(measure(name)),
      value: (name) => {
        const found = measure(name);
        return found && "value" in found ? found.value : undefined;
      },
    };
    const say = Object.hasOwn(rules, finding.rule) ? rules[finding.rule as keyof typeof rules] : undefined;
    return capitalised(say ? say(told) : otherRule(finding.rule, told));
  }

  condition(condition: Condition): string {
    const unit = units[condition.on];
    const choices = "is" in condition ? [condition.is].flat().map(String) : [];
    const wanted =
      "within" in condition
        ? this.measure({ ...condition.within, ...(unit && { unit }) })
        : choices.join(", ");
    const most = "within" in condition ? condition.within.max : undefined;
    return this.messages.worksIf(
      this.messages.conditions[condition.on]({ of: this.party(condition.of), wanted, choices, most }),
    );
  }

  open(question: OpenQuestion): string {
    const { missing, disputed, notGiven, outsideDomain, traits, couldBe } = this.messages;
    const of = this.party(question.of);
    const trait = question.trait ? (traits[question.trait] ?? question.trait) : "";
    const sentence = {
      missing: () => missing(trait, of),
      disputed: () => disputed(trait, of),
      "not-given": () => [of, question.input && notGiven(question.input)].filter(Boolean).join(": "),
      "outside-domain": () => outsideDomain(of),
    }[question.reason]();
    return capitalised(`${sentence}; ${couldBe[question.couldBe]}.`);
  }

  private measure(measure: Quantity | undefined): string {
    return measure ? this.quantities.text(measure) : "";
  }
}

/** The units of the facts that a condition may be about; counts and pH have none. */
const units: Readonly<Partial<Record<FactName, string>>> = {
  "tank.longestRun": "cm",
  "tank.footprint": "cm2",
  "tank.height": "cm",
  "tank.cover": "1",
  "tank.openWater": "1",
  "tank.openSurface": "1",
  "tank.filter.ripeArea": "m2",
  "water.temperature": "degC",
  "water.hottest": "degC",
  "water.coolest": "degC",
  "water.generalHardness": "dH",
  "water.salinity": "g/kg",
  "group.length": "cm",
};

function blocksOf(teller: Teller): readonly Block[] {
  const { verdict, messages } = teller;
  const { titles } = messages;
  const reasons = folded(verdict.findings.filter(({ rule }) => !rule.startsWith("caution-")));
  const cautions = folded(
    verdict.findings.filter(({ rule }) => rule.startsWith("caution-")),
    "whoever it starts from",
  );
  const sentences = (weight: Finding["weight"]) =>
    reasons.filter(([{ weight: found }]) => found === weight).map((alike) => [reasonText(teller, alike)]);
  return [
    { lead: headline(teller) },
    { title: titles.parties, items: verdict.parties.map((party) => [partyText(party, messages)]) },
    { title: titles.blocking, items: sentences("blocking") },
    {
      title: verdict.outcome === "unsuitable" ? titles.besides : titles.restricting,
      items: conditions(teller, reasons),
    },
    { title: titles.advisory, items: sentences("advisory") },
    {
      title: titles.open,
      items: mostDecisive(teller),
    },
    { title: titles.met, items: verdict.met.length > 0 ? [[messages.metSummary(verdict.met.length)]] : [] },
    { title: titles.cautions, items: cautions.map((alike) => [teller.findings(alike)]) },
    { lead: [messages.closing] },
  ];
}

type Alike = readonly [Finding, ...Finding[]];

/** Findings that differ only in the party they fall on, or also in the one they start from, together. */
function folded(
  findings: readonly Finding[],
  over: "whomever it falls on" | "whoever it starts from" = "whomever it falls on",
): readonly Alike[] {
  const alike = new Map<string, Alike>();
  for (const finding of findings) {
    const parties =
      over === "whoever it starts from"
        ? { from: undefined, basis: undefined }
        : { to: finding.to !== undefined };
    const key = JSON.stringify({ ...finding, ...parties });
    alike.set(key, [...(alike.get(key) ?? []), finding] as unknown as Alike);
  }
  return [...alike.values()];
}

/** Every condition once, after the reasons for it. */
function conditions(teller: Teller, reasons: readonly Alike[]): readonly (readonly string[])[] {
  const byText = new Map<string, readonly string[]>();
  for (const requirement of reasons.reduce(withReason, [])) {
    const text = teller.condition(requirement.condition);
    const lines = requirement.reasons.map((alike) => reasonText(teller, alike));
    byText.set(text, distinct([...(byText.get(text) ?? []), ...lines]));
  }
  return [...byText].map(([text, lines]) => [...lines, text]);
}

/** A condition with the findings that ask for it. */
interface Requirement {
  readonly condition: Condition;
  readonly reasons: readonly Alike[];
}

/** The requirements with one reason more; of conditions that can be met together one that meets both is left. */
function withReason(done: readonly Requirement[], alike: Alike): readonly Requirement[] {
  const [finding] = alike;
  if (finding.weight !== "restricting") return done;
  const asked = finding.condition;
  const at = done.findIndex(({ condition }) => jointCondition(condition, asked));
  if (at < 0) return [...done, { condition: asked, reasons: [alike] }];
  return done.map((requirement, index) => {
    const condition = index === at ? jointCondition(requirement.condition, asked) : undefined;
    return condition ? { condition, reasons: [...requirement.reasons, alike] } : requirement;
  });
}

function reasonText(teller: Teller, alike: Alike): string {
  const [{ basis }] = alike;
  const support = basis !== "published" ? ` (${teller.messages.basis[basis]})` : "";
  return teller.findings(alike) + support;
}

function headline({ verdict, messages }: Teller): readonly string[] {
  const { outcome, bounds } = verdict;
  const certain = bounds.atBest === bounds.atWorst && bounds.atBest === outcome;
  return [messages.outcome[outcome], ...(certain ? [] : [messages.bounds(bounds.atBest, bounds.atWorst)])];
}

function nameOf({ names, name }: VerdictParty): string {
  return names.en?.[0] ?? name;
}

function partyText(party: VerdictParty, messages: Messages): string {
  const { count, males, females, stage, sex, name } = party;
  const sexes = males !== undefined && females !== undefined && messages.sexes(males, females);
  const detail = [sexes || sex, stage].filter(Boolean).join(", ");
  return [count && `${count} ×`, nameOf(party), `(${name})`, detail && `– ${detail}`]
    .filter(Boolean)
    .join(" ");
}

const capitalised = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** How many questions a report names: more would hide the decisive ones. */
const named = 5;

function mostDecisive(teller: Teller): readonly (readonly string[])[] {
  const questions = eachOnce(teller.verdict.open);
  const further = questions.length - named;
  const items = questions.slice(0, named).map((question) => [teller.open(question)]);
  return further > 0 ? [...items, [teller.messages.furtherOpen(further)]] : items;
}

/** The questions with the gravest of those about one trait or input only. */
function eachOnce(open: readonly OpenQuestion[]): readonly OpenQuestion[] {
  const topic = ({ of, trait, input, reason }: OpenQuestion) => JSON.stringify([of, trait, input, reason]);
  const topics = open.map(topic);
  return open.filter((question, index) => topics.indexOf(topic(question)) === index);
}

const distinct = (lines: readonly string[]) => [...new Set(lines)];
