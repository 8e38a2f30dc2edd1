import type { NoSetPoint, SetPoint, WaterAxis } from "../../../advice";
import { waterAxes } from "../../../compatibility/inner";
import { decimal } from "../../../decimal";
import { factUnits } from "../../../plan/inner";
import type { PartialRange } from "../../../ranges";
import { within } from "../../figure";
import type { Block } from "../../layout";
import type { AdviceMessages, ToldAim, ToldBetween } from "../../messages/advice-messages";
import type { Adviser } from "../advice-written";

/** The water for some animals in the parts of a report; where none serves all, why, and that of those that can stay. */
export function setPointBlocks(
  found: SetPoint | NoSetPoint,
  all: readonly number[],
  messages: AdviceMessages,
  adviser: Adviser,
): readonly Block[] {
  const { words, named } = adviser;
  const { conflict, largest, apart, closing } = words.setPoint;
  const end: Block = { lead: [closing, messages.closing] };
  if (!found.conflict) return [...pointTold(found, all, messages, adviser), end];
  const { stay, leave, setPoint } = found.largest;
  const { on, between, isCertain } = found.conflict;
  const proof = conflict(on, betweenTold(between, adviser), isCertain);
  if (!setPoint || stay.length === 0) return [{ lead: [proof, apart] }, end];
  return [
    { lead: [proof, largest(named(stay), named(leave))] },
    ...pointTold(setPoint, stay, messages, adviser),
    end,
  ];
}

/** The figures of water to aim at for the species of some places, and what is to be known of them. */
function pointTold(
  found: SetPoint,
  places: readonly number[],
  messages: AdviceMessages,
  adviser: Adviser,
): readonly Block[] {
  const { words, named, figure } = adviser;
  const { lead, none, swing, open, beyondKept, forAWhile, doubtful, hotEnd } = words.setPoint;
  const { water, hotEnd: hot } = found;
  const figures = waterAxes.flatMap((axis) => figureTold(axis, found, adviser) ?? []);
  const unknown = waterAxes.flatMap((axis) => {
    const those = found.open.filter(({ on }) => on === axis).map(({ of }) => of);
    return those.length > 0 ? [open(axis, named(those), water[axis] === undefined)] : [];
  });
  const { coolest, hottest } = water;
  return [
    { lead: [figures.length > 0 ? lead(named(places).whom) : none] },
    {
      items: [
        ...figures,
        ...(coolest !== undefined && hottest !== undefined
          ? [swing(figure(within({ min: coolest, max: hottest, unit: "degC" })))]
          : []),
        ...(hot ? [hotEnd(hotEndTold(hot, messages, adviser))] : []),
        ...unknown,
        ...found.beyondKept
          .filter(({ on, when }) => when === undefined || on !== "temperature")
          .map(({ on, of, kept, when }) => {
            const told = figure(within({ ...kept, unit: unitOf(on) }));
            return beyondKept(on, named([of]), told, when !== undefined, isPast(water[on], kept));
          }),
        ...seasons.flatMap((season) => {
          const those = found.beyondKept.filter(({ when }) => when === season).map(({ of }) => of);
          return those.length > 0 ? [forAWhile(season, named(those))] : [];
        }),
        ...found.doubtful.map(({ on, between, reason }) =>
          doubtful(on, betweenTold(between, adviser), reason),
        ),
      ],
    },
  ];
}

/** When the temperature is farthest from the usual one. */
const seasons = ["hottest", "coolest"] as const;

/** A figure of water; undefined where there is none. */
function figureTold(
  on: WaterAxis,
  { water, margin, limiting }: SetPoint,
  { words, named, figure }: Adviser,
): string | undefined {
  const at = water[on];
  if (at === undefined) return undefined;
  const unit = unitOf(on);
  const moves = margin[on] ?? 0;
  const { least, most } = limiting[on] ?? {};
  const isFresh = on === "salinity" && at === 0;
  const lower = isFresh ? {} : { min: decimal(at - moves) };
  const aim = isFresh ? undefined : { value: at, unit };
  const span = moves > 0 ? within({ ...lower, max: decimal(at + moves), unit }) : undefined;
  const told: ToldAim = {
    on,
    figure: figure(aim, span),
    within: figure(span, aim),
    ...(least !== undefined && { least: named([least]) }),
    ...(most !== undefined && { most: named([most]) }),
  };
  return words.setPoint.figure(told);
}

/** Whether a figure lies past an end of a span. */
const isPast = (at: number | undefined, { min = -Infinity, max = Infinity }: PartialRange) =>
  at !== undefined && (at < min || at > max);

const unitOf = (on: WaterAxis) => (on === "pH" ? undefined : factUnits[`water.${on}`]);

const betweenTold = ([one, other]: readonly [number, number], { named }: Adviser): ToldBetween => ({
  higher: named([one]),
  lower: named([other]),
  isOne: one === other,
});

/** What water holds at its far end; ammonia to two digits, since a little is much. */
function hotEndTold(
  { temperature, pH, unionizedAmmonia, oxygen }: NonNullable<SetPoint["hotEnd"]>,
  { language, beforeUnit, units }: AdviceMessages,
  { figure }: Adviser,
) {
  const digits = new Intl.NumberFormat(language, { maximumSignificantDigits: 2 });
  return {
    temperature: figure({ value: temperature, unit: "degC" }),
    pH: figure({ value: pH }),
    ammonia: digits.format(unionizedAmmonia) + beforeUnit + units["mg/L"],
    oxygen: figure({ value: oxygen, unit: "mg/L" }),
  };
}
