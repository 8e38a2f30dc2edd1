import type { AimedCondition } from "../../compatibility";
import type { FactName } from "../../plan";
import { type Figure, type WriteQuantity, within } from "../figure";
import type { ToldWater } from "../messages/messages";

const waterFacts: Readonly<Partial<Record<FactName, "temperature" | "pH" | "hardness" | "salinity">>> = {
  "water.temperature": "temperature",
  "water.pH": "pH",
  "water.generalHardness": "hardness",
  "water.salinity": "salinity",
};

/** Whether a condition is on the water as it usually is. */
export const isOfWater = ({ on }: AimedCondition) => waterFacts[on] !== undefined;

/** What to aim at, else what is wanted, past whose ends nothing may be told; nothing for a word. */
export function figureOf({ aim, wanted }: AimedCondition): Figure | undefined {
  if ("oneOf" in wanted) return undefined;
  return within({ ...(aim ?? wanted), unit: wanted.unit });
}

/** The water that conditions ask for together. */
export function waterAsked(
  conditions: readonly AimedCondition[],
  figure: WriteQuantity,
): Omit<ToldWater, "kinds" | "current"> {
  const water = Object.fromEntries(
    conditions.flatMap((condition) => {
      const kind = waterFacts[condition.on];
      return kind ? [[kind, figure(figureOf(condition))]] : [];
    }),
  );
  return { temperature: "", pH: "", hardness: "", salinity: "", ...water };
}
