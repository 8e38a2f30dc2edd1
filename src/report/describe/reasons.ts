import type { Finding, Verdict, Weight } from "../../compatibility";
import type { Basis } from "../../species";
import { type Figure, noLess, numberOf } from "../figure";
import type { Alike } from "../matters/alike";
import { isOfRoom, isTooLong } from "../matters/order";
import { commonSides, roomNeeded, roomThere, sidesNeeded, sidesOf } from "../matters/room";
import type { Teller } from "./teller";

/** A reason as a sentence without a capital, with what it rests on. */
export interface Reason {
  readonly text: string;
  readonly basis?: Basis | undefined;
}

/** An item of a list: what must be done, if it says so, and why. */
export interface Item {
  readonly clauses: readonly string[];
  readonly reasons: readonly Reason[];
}

export const reasonOf = (alike: Alike, teller: Teller): Reason => ({
  text: teller.clauseOf(alike),
  basis: weakest(alike),
});

const bases: readonly Basis[] = ["published", "curated", "observed", "memory", "common-practice", "derived"];

/** Of findings told together the basis that stands furthest from print. */
export const weakest = (alike: readonly Finding[]) =>
  alike.map(({ basis }) => basis).sort((a, b) => bases.indexOf(b) - bases.indexOf(a))[0];

/** How long the longest of those is that are longer than the tank is wide. */
function greatestLength(tooLong: readonly Finding[]): Figure | undefined {
  const lengths = tooLong.flatMap((finding) =>
    finding.rule === "footprint" ? (numberOf(finding.measures?.length) ?? []) : [],
  );
  return lengths.length > 0 ? { value: Math.max(...lengths), unit: "cm" } : undefined;
}

/** How large a tank some findings ask for, beside that which is planned; of one species alone how long it grows. */
export function roomItem(asking: readonly Finding[], weight: Weight, verdict: Verdict, teller: Teller): Item {
  const { figure } = teller;
  const needed = roomNeeded(verdict, asking);
  const own = roomThere(verdict);
  const isLengthAsked = asking.some(({ rule }) => rule === "longest-run");
  const length = isLengthAsked || needed.floor !== undefined ? needed.length : undefined;
  const known = { ...needed, ...(length !== undefined && { length }) };
  const floor = (area: number | undefined) =>
    figure(area === undefined ? undefined : { value: area, unit: "cm2" });
  const run = (cm: number | undefined) => figure(cm === undefined ? undefined : { value: cm, unit: "cm" });
  const askers = asking.filter(isOfRoom).map(({ from }) => from);
  const isYoung = (index: number | undefined) =>
    index !== undefined && verdict.parties[index]?.stage === "juvenile";
  const isOneKind = new Set(askers.map((index) => verdict.parties[index ?? -1]?.id)).size === 1;
  const tooLong = verdict.findings.filter(
    (finding) => isOneKind && isTooLong(finding) && askers.includes(finding.from),
  );
  const text = teller.room({
    ...teller.named(askers),
    growing: askers.length > 0 && askers.every(isYoung),
    grownTo: figure(greatestLength(tooLong)),
    weight,
    neededSides: figure(sidesNeeded(known, own)),
    exampleSides: figure(commonSides(needed.floor)),
    neededLength:
      isLengthAsked && needed.length !== undefined
        ? figure(noLess({ value: needed.length, unit: "cm" }))
        : "",
    neededFloor: floor(needed.floor),
    ownSides: figure(sidesOf(own)),
    ownLength: run(own.length),
    ownFloor: floor(own.floor),
  });
  return askers.length > 0
    ? { clauses: [], reasons: [{ text, basis: weakest(asking) }] }
    : { clauses: [text], reasons: [] };
}
