import type { Finding, OpenQuestion, Sign, Verdict } from "../../compatibility";
import type { Basis } from "../../species";
import type { Block } from "../layout";
import type { Messages } from "../messages/messages";
import { headline } from "./headline";
import { type Demand, demandsOf, folded, isRoom, mayQuarrel, reasonsFor, reasonsOf } from "./matters";
import { isOfRoom } from "./order";
import { commonSides, roomNeeded, roomThere, sidesOf } from "./room";
import { strengths } from "./strengths";
import type { Alike, Teller } from "./teller";

type Lines = readonly string[];

/** A reason in words, with what it rests on. */
interface Reason {
  readonly text: string;
  readonly basis?: Basis | undefined;
}

/** An item of a list: what must be done, if it says so, and reasons. */
type Item = readonly Reason[];

/** The parts of a report on a verdict, in the order in which a keeper reads them: what decides comes first. */
export function blocksOf(verdict: Verdict, teller: Teller, messages: Messages): readonly Block[] {
  const { titles } = messages;
  const blocking = blockingItems(verdict, teller);
  const asked = demandsOf(verdict)
    .filter(({ conditions }) => !(conditions.some(isRoom) && verdict.findings.some(isFarTooSmall)))
    .map((demand) => demandItem(demand, verdict, teller, messages));
  const demands = joined(asked);
  const toKnow = reasonsOf(verdict, "advisory");
  const itemsOf = (list: readonly Alike[]) => list.map((alike) => [reasonOf(alike, teller)]);
  const deciding = itemsOf(toKnow.filter(([finding]) => decides(finding)));
  const advisory = itemsOf(toKnow.filter(([finding]) => !decides(finding)));
  const usual = usualBasis([...blocking, ...deciding, ...demands, ...advisory]);
  const written = (items: readonly Item[]) => onceEach(items.map((item) => linesOf(item, usual, messages)));
  const good = {
    title: titles.favourable,
    items: strengths(verdict, teller, messages).map((line) => [line]),
  };
  const suits = verdict.outcome === "suitable";
  return [
    { lead: headline(verdict, teller, messages) },
    { title: titles.parties, items: verdict.parties.map((party) => [teller.party(party)]) },
    ...(suits ? [good] : []),
    { title: titles.blocking, items: written(blocking) },
    { title: titles.deciding, items: written(deciding) },
    {
      title: verdict.outcome === "unsuitable" ? titles.besides : titles.restricting,
      items: written(demands),
    },
    { title: titles.advisory, items: written(advisory) },
    { title: titles.watchFor, items: signs(verdict.findings, teller) },
    { title: titles.ifItStarts, items: mayQuarrel(verdict) ? messages.ifItStarts.map((line) => [line]) : [] },
    { title: titles.open, items: mostDecisive(stillOpen(verdict), teller, messages) },
    ...(suits ? [] : [good]),
    { title: titles.cautions, items: cautions(verdict, teller, messages) },
    { lead: [...(usual ? [messages.unlessMarked(usual)] : []), messages.closing] },
  ];
}

const reasonOf = (alike: Alike, teller: Teller): Reason => ({
  text: teller.findings(alike),
  basis: weakest(alike),
});

/** Of findings told together the basis that stands furthest from print. */
const weakest = (alike: readonly Finding[]) =>
  alike.map(({ basis }) => basis).sort((a, b) => bases.indexOf(b) - bases.indexOf(a))[0];

const bases: readonly Basis[] = ["published", "curated", "observed", "memory", "common-practice", "derived"];

/** What reasons rest on that are not marked: common practice, or print where more of them rest on that. */
function usualBasis(items: readonly Item[]): Basis | undefined {
  const told = items.flat().flatMap(({ basis }) => basis ?? []);
  const count = (basis: Basis) => told.filter((one) => one === basis).length;
  if (told.length === 0) return undefined;
  return count("published") > count("common-practice") ? "published" : "common-practice";
}

const linesOf = (item: Item, usual: Basis | undefined, messages: Messages): Lines => [
  ...new Set(
    item.map(({ text, basis }) =>
      basis === undefined || basis === usual ? text : text + messages.support(basis),
    ),
  ),
];

/** Items told alike are told once. */
const onceEach = (items: readonly Lines[]): readonly Lines[] => [
  ...new Map(items.map((lines) => [lines.join("\n"), lines])).values(),
];

/** Whether a finding says that the tank is no place for it, for its length or its floor. */
const isFarTooSmall = (finding: Finding) =>
  finding.weight === "blocking" && isOfRoom(finding) && !isTurning(finding);

const isTurning = ({ measures = {} }: Finding) => "width" in measures;

function blockingItems(verdict: Verdict, teller: Teller): readonly Item[] {
  const small = verdict.findings.filter(isFarTooSmall);
  const reasons = reasonsOf(verdict, "blocking").filter(([finding]) => !isFarTooSmall(finding));
  const room = small.length > 0 ? [[roomReason(small, verdict, teller)]] : [];
  return [...room, ...reasons.map((alike) => [reasonOf(alike, teller)])];
}

/** How large a tank some findings ask for, beside that which is planned. */
function roomReason(asking: readonly Finding[], verdict: Verdict, teller: Teller): Reason {
  const { figure } = teller;
  const [first] = asking;
  const needed = roomNeeded(verdict, asking);
  const own = roomThere(verdict);
  const isLengthAsked = asking.some(({ rule }) => rule === "longest-run");
  const length = isLengthAsked || needed.floor !== undefined ? needed.length : undefined;
  const known = { ...needed, ...(length !== undefined && { length }) };
  const floor = (area: number | undefined) =>
    figure(area === undefined ? undefined : { value: area, unit: "cm2" });
  const run = (cm: number | undefined) => figure(cm === undefined ? undefined : { value: cm, unit: "cm" });
  const text = teller.room({
    ...teller.named(asking.filter(isOfRoom).map(({ from }) => from)),
    weight: first?.weight ?? "restricting",
    neededSides: figure(sidesOf(known)),
    exampleSides: figure(commonSides(needed.floor)),
    neededLength: isLengthAsked ? run(needed.length) : "",
    neededFloor: floor(needed.floor),
    ownSides: figure(sidesOf(own)),
    ownLength: run(own.length),
    ownFloor: floor(own.floor),
  });
  return { text, basis: weakest(asking) };
}

/** What must change about one matter, and why. */
function demandItem(demand: Demand, verdict: Verdict, teller: Teller, messages: Messages): Item {
  const { conditions, findings } = demand;
  const reasons = reasonsFor(demand);
  const why = (told: readonly Alike[]) => told.slice(0, mostReasons).map((alike) => reasonOf(alike, teller));
  if (conditions.some(isRoom)) {
    const further = reasons.filter(([finding]) => !isOfRoom(finding));
    return [roomReason(findings, verdict, teller), ...why(further)];
  }
  const [only, ...further] = reasons;
  const saysIt = only && Object.hasOwn(messages.sayWhatToDo, only[0].rule);
  if (saysIt && further.length === 0) return why(reasons);
  return [...conditions.map((condition) => ({ text: teller.condition(condition) })), ...why(reasons)];
}

/** Demands for the same reasons as one. */
function joined(items: readonly Item[]): readonly Item[] {
  const byReasons = new Map<string, Item>();
  for (const item of items) {
    const demands = item.filter(({ basis }) => basis === undefined);
    const reasons = item.filter(({ basis }) => basis !== undefined);
    const key = JSON.stringify(reasons);
    byReasons.set(key, [...demandsIn(byReasons.get(key)), ...demands, ...reasons]);
  }
  return [...byReasons.values()];
}

const demandsIn = (item: Item = []) => item.filter(({ basis }) => basis === undefined);

/** How many reasons are told for one demand: those that count most. */
const mostReasons = 3;

/** Every sign to look for once, with those who would show it. */
function signs(findings: readonly Finding[], teller: Teller): readonly Lines[] {
  const shown = new Map<Sign, Finding[]>();
  for (const finding of findings) {
    const { watchFor } = finding;
    if (watchFor) shown.set(watchFor, [...(shown.get(watchFor) ?? []), finding]);
  }
  return [...shown].map(([sign, ofSign]) => [teller.sign(sign, ofSign)]);
}

/** How many laws on one species are told in full. */
const mostLaws = 2;

/** The cautions, each once: venom tells of spines too. */
function cautions({ findings, parties }: Verdict, teller: Teller, messages: Messages): readonly Lines[] {
  const all = findings.filter(({ rule }) => rule.startsWith("caution-"));
  const hazardOf = ({ measures = {} }: Finding) =>
    (measures as { readonly hazard?: { readonly value: string } }).hazard?.value;
  const venomous = new Set(all.filter((finding) => hazardOf(finding) === "venom").map(({ from }) => from));
  const told = all.filter((finding) => hazardOf(finding) !== "spines" || !venomous.has(finding.from));
  const lawsOn = (from: number | undefined) =>
    told.filter((finding) => finding.rule === "caution-law" && speciesAt(finding.from) === speciesAt(from));
  const speciesAt = (index: number | undefined) => (index === undefined ? undefined : parties[index]?.id);
  return onceEach(
    folded(told, (finding) => ({ ...finding, from: undefined, basis: undefined })).map((alike) => {
      const [finding] = alike;
      const laws = finding.rule === "caution-law" ? lawsOn(finding.from) : [];
      if (laws.length <= mostLaws) return [teller.findings(alike)];
      const places = laws.flatMap(({ measures = {} }) => {
        const { jurisdiction } = measures as { readonly jurisdiction?: { readonly value: string } };
        return jurisdiction?.value ?? [];
      });
      return [messages.laws(teller.named([finding.from]).who, teller.listed(places))];
    }),
  );
}

/** Whether nobody can tell in advance, and it would rule the plan out. */
const decides = (finding: Finding) => "couldBe" in finding && finding.couldBe === "blocking";

/** The questions, but for those that the deciding findings tell. */
const stillOpen = ({ findings, open }: Verdict) =>
  open.filter(
    ({ reason, of, couldBe }) =>
      !(
        reason === "individual" &&
        couldBe === "blocking" &&
        findings.some((one) => decides(one) && one.from === of)
      ),
  );

/** How many questions a report names: more would hide the decisive ones. */
const named = 4;

function mostDecisive(open: readonly OpenQuestion[], teller: Teller, messages: Messages): readonly Lines[] {
  const questions = onceEach(questionsAlike(open).map((alike) => [teller.questions(alike)]));
  const further = questions.length - named;
  return further > 0 ? [...questions.slice(0, named), [messages.open.further(further)]] : questions;
}

type Questions = readonly [OpenQuestion, ...OpenQuestion[]];

/** The questions, those of one topic as one; what is not known of the same parties is one topic too. */
function questionsAlike(open: readonly OpenQuestion[]): readonly Questions[] {
  const topics = grouped(
    open.map((question) => [question]),
    ([question]) => topicOf(question),
  );
  return grouped(topics, (alike) => {
    const [question] = alike;
    const about = new Set(alike.map(({ of }) => of));
    return question.reason === "missing" ? `${question.couldBe} ${[...about]}` : topicOf(question);
  });
}

function grouped(all: readonly Questions[], keyOf: (alike: Questions) => string): readonly Questions[] {
  const groups = new Map<string, Questions>();
  for (const alike of all) {
    const key = keyOf(alike);
    const known = groups.get(key);
    const further = alike.filter((question) => !known?.some((one) => isSame(one, question)));
    groups.set(key, known ? [...known, ...further] : alike);
  }
  return [...groups.values()];
}

/** What sources dispute is told of each; what is not known or not said, of all. */
function topicOf(question: OpenQuestion): string {
  const { reason, of } = question;
  if (reason === "missing") return `${reason} ${question.trait}`;
  if (reason === "disputed") return `${reason} ${question.trait} ${of}`;
  return reason === "individual" ? `${reason} ${question.couldBe}` : reason;
}

const isSame = (one: OpenQuestion, other: OpenQuestion) =>
  one.of === other.of &&
  ("input" in one ? "input" in other && one.input === other.input : true) &&
  ("trait" in one ? "trait" in other && one.trait === other.trait : true);
