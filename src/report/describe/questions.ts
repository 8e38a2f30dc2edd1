import type { OpenQuestion, Verdict } from "../../compatibility";
import type { FactName } from "../../plan";
import { couldRuleOut } from "../matters/matters";
import { isOfSharedWater } from "../matters/water-rules";
import type { Messages } from "../messages/messages";
import type { Questions } from "./question-told";
import type { Teller } from "./teller";

/** How many questions of a sort a report names, of a suitable plan fewer: more would hide the decisive ones. */
const named = 4;
const namedWhereSuitable = 2;

/** A sentence on what is not certain, and whether it could rule the plan out. */
interface Doubt {
  readonly text: string;
  readonly isGrave: boolean;
}

/** What is not certain, a sentence for each reason and gravity; without what a list of demands names already. */
export function openQuestions(
  verdict: Verdict,
  told: ReadonlySet<FactName>,
  teller: Teller,
  messages: Messages,
): readonly Doubt[] {
  const topics = grouped(
    stillOpen(verdict, told).map((question): Questions => [question]),
    ([question]) => topicOf(question),
  );
  const sorts = new Map<string, Questions[]>();
  for (const topic of topics) {
    const [{ reason, couldBe }] = topic;
    const key = `${reason} ${reason === "not-given" ? "" : couldBe === "blocking"}`;
    sorts.set(key, [...(sorts.get(key) ?? []), topic]);
  }
  return [...sorts.values()].flatMap((ofSort) => {
    const [first] = ofSort;
    if (!first) return [];
    const texts = [...new Set(ofSort.map((topic) => teller.question(topic)))].filter(Boolean);
    const [{ reason, couldBe }] = first;
    const most = verdict.outcome === "suitable" ? namedWhereSuitable : named;
    const further = texts.length - most;
    const text = messages.open.all(reason, texts.slice(0, most), couldBe, Math.max(further, 0));
    return [{ text: teller.capital(text), isGrave: reason !== "not-given" && couldBe === "blocking" }];
  });
}

/** The questions, but for those that deciding findings or demands tell. */
function stillOpen({ findings, open }: Verdict, told: ReadonlySet<FactName>): readonly OpenQuestion[] {
  const deciding = new Set(findings.filter(couldRuleOut).map(({ from }) => from));
  return open.filter((question) => {
    const { rule, reason, of, couldBe } = question;
    if ("on" in question && told.has(question.on)) return false;
    if (reason === "individual" && isOfSharedWater({ rule })) return false;
    if (reason !== "individual") return true;
    const isToldGraver = open.some(
      (one) => one.reason === reason && one.of === of && isGraver(one, question),
    );
    return !isToldGraver && !(couldBe === "blocking" && deciding.has(of));
  });
}

const isGraver = (one: OpenQuestion, other: OpenQuestion) =>
  one.couldBe === "blocking" && other.couldBe !== "blocking";

/** What sources dispute or nobody knows is told of each; what the plan does not say, of all. */
function topicOf(question: OpenQuestion): string {
  const { reason, of, couldBe } = question;
  if (reason === "missing") return `${reason} ${of} ${couldBe}`;
  if (reason === "disputed") return `${reason} ${question.trait} ${of}`;
  return reason === "individual" ? `${reason} ${couldBe}` : reason;
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

const isSame = (one: OpenQuestion, other: OpenQuestion) =>
  one.of === other.of &&
  ("on" in one ? "on" in other && one.on === other.on : true) &&
  ("trait" in one ? "trait" in other && one.trait === other.trait : true);
